import { describe, expect, it } from 'vitest';
import { foldStock } from '@/lib/stock/foldStock';
import { lastMoves } from '@/lib/stock/lastMoves';
import { onHand } from '@/lib/stock/onHand';
import { renamedStock } from '@/lib/stock/renamedStock';
import type { StockEntry } from '@/lib/stock/stockEntry';
import { stockOf, strayedSizes } from '@/lib/stock/stockOf';
import type { StockItem } from '@/shared/schemas/stock';
import { shirts, shop, van, writer } from './stockEntries';

const mug: StockItem = { kind: 'blank', blankId: 'mug', size: 'L', lot: null };
const isOf = (blankId: string) => (item: StockItem) => item.kind === 'blank' && item.blankId === blankId;

describe('onHand', () => {
  it('is what lies at home in first grade, and leaves out what nobody noted', () => {
    const pen = writer();
    const piles = foldStock([
      pen.move(10),
      pen.count(0, { item: shirts('M') }),
      pen.move(4, { item: shirts('S'), place: van }),
      pen.move(2, { grade: 'second' }),
      pen.move(9, { item: { kind: 'paper', sheetId: 'a4' } }),
    ]);
    expect(onHand(piles)).toEqual({ shirt: { L: 10, M: 0 } });
  });

  it('holds a size of any name', () => {
    const piles = foldStock([writer().move(3, { item: shirts('constructor') })]);
    expect(Object.entries(onHand(piles).shirt ?? {})).toEqual([['constructor', 3]]);
  });
});

describe('stockOf', () => {
  it('tells home from everywhere else', () => {
    const pen = writer();
    const piles = foldStock([
      pen.move(10),
      pen.transfer(4, { place: van }),
      pen.transfer(2, { place: shop }),
      pen.transfer(2, {}, { place: shop }),
      pen.transfer(1, { grade: 'second' }),
    ]);
    const { ready, others } = stockOf(piles, shirts('L'));
    expect(ready?.quantity).toBe(5);
    // What came back from the shop left none there.
    expect(others.map(({ place, grade, quantity }) => [place.kind, grade, quantity])).toEqual([
      ['van', 'first', 4],
      ['home', 'second', 1],
    ]);
    expect(stockOf(piles, shirts('M'))).toEqual({ ready: null, others: [] });
    expect(stockOf(piles, mug)).toEqual({ ready: null, others: [] });
  });
});

describe('a size that gets a new name', () => {
  it('takes everything with it, from every place and lot', () => {
    const pen = writer();
    const entries: readonly StockEntry[] = [
      pen.move(10, { item: shirts('L', 'A7') }),
      pen.move(-3),
      pen.move(4, { place: van }),
      pen.move(6, { item: shirts('M') }),
    ];
    const moved = renamedStock(foldStock(entries), { blankId: 'shirt', from: 'L', to: 'Large' });
    const after = foldStock([
      ...entries,
      ...moved.map(({ quantity, to, from }) => pen.transfer(quantity, to, from)),
    ]);
    expect(onHand(after)).toEqual({ shirt: { L: 0, Large: 7, M: 6 } });
    expect(stockOf(after, shirts('Large'))).toMatchObject({
      ready: {
        lots: expect.arrayContaining([
          { lot: 'A7', quantity: 10 },
          { lot: null, quantity: -3 },
        ]),
      },
      others: [{ place: van, quantity: 4 }],
    });
    expect(strayedSizes(after, 'shirt', ['Large', 'M'])).toEqual([]);
    expect(strayedSizes(after, 'shirt', ['L'])).toEqual(['M', 'Large']);
  });

  it('stays known to be none where it was none', () => {
    const pen = writer();
    const entries = [pen.count(0)];
    const [moved] = renamedStock(foldStock(entries), { blankId: 'shirt', from: 'L', to: 'Large' });
    if (moved === undefined) throw new Error('nothing was moved');
    const after = foldStock([...entries, pen.transfer(moved.quantity, moved.to, moved.from)]);
    expect(onHand(after)).toEqual({ shirt: { L: 0, Large: 0 } });
  });
});

it('lastMoves tells what was noted of one blank, the last first', () => {
  const pen = writer();
  const entries = [
    pen.move(10),
    pen.move(9, { item: { kind: 'paper', sheetId: 'a4' } }),
    pen.count(8),
    pen.transfer(1, { place: van }),
  ];
  expect(lastMoves(entries, isOf('shirt')).map(({ id }) => id)).toEqual([
    'aaaaaaaa-4',
    'aaaaaaaa-3',
    'aaaaaaaa-1',
  ]);
  expect(lastMoves(entries, isOf('mug'))).toEqual([]);
});
