import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { expectedOf, foldStock, type Pile } from '@/lib/stock/foldStock';
import { onHand } from '@/lib/stock/onHand';
import type { StockEntry } from '@/lib/stock/stockEntry';
import { entriesInForce } from '@/lib/stored/entriesInForce';
import { cases } from '@/tests/tools/cases';
import { home, shirts, shop, stockEntries, van, writer } from './stockEntries';

/** The only pile there is. */
function pile(entries: readonly StockEntry[]): Pile {
  const [only, ...others] = foldStock(entries);
  if (only === undefined || others.length > 0) throw new Error(`${others.length + 1} piles, not one`);
  return only;
}

const quantityAt = (entries: readonly StockEntry[], kind: 'home' | 'van' | 'shop') =>
  foldStock(entries).find(({ place }) => place.kind === kind)?.quantity;

describe('foldStock', () => {
  it('starts at the last count and adds what came and went since', () => {
    const pen = writer();
    expect(pile([pen.move(50), pen.count(12), pen.move(24), pen.move(-5)])).toMatchObject({
      quantity: 31,
      // 50 were said to be there, 12 were found.
      counted: { at: 2000, difference: -38 },
    });
  });

  it('knows nothing of what no entry speaks of, which is not the same as none', () => {
    const pen = writer();
    expect(foldStock([])).toEqual([]);
    expect(pile([pen.count(0)])).toMatchObject({ quantity: 0, lots: [], counted: { difference: 0 } });
  });

  it('takes a first count for no loss and no find', () => {
    expect(pile([writer().count(7)]).counted?.difference).toBe(0);
  });

  it('keeps places and grades apart', () => {
    const pen = writer();
    const piles = foldStock([
      pen.move(10),
      pen.move(4, { place: van }),
      pen.move(3, { place: shop }),
      pen.move(2, { grade: 'second' }),
    ]);
    expect(piles.map(({ place, grade, quantity }) => [place.kind, grade, quantity])).toEqual([
      ['home', 'first', 10],
      ['van', 'first', 4],
      ['shop', 'first', 3],
      ['home', 'second', 2],
    ]);
  });

  it('keeps lots apart and sums them', () => {
    const pen = writer();
    const entries = [
      pen.move(10, { item: shirts('L', 'A7') }),
      pen.move(6, { item: shirts('L', 'B2') }),
      pen.move(-4, { item: shirts('L', 'A7') }),
    ];
    expect(pile(entries)).toMatchObject({
      quantity: 12,
      lots: [
        { lot: 'A7', quantity: 6 },
        { lot: 'B2', quantity: 6 },
      ],
    });
    // A count of one lot leaves the other as it was.
    const counted = pile([...entries, pen.count(5, { item: shirts('L', 'A7') })]);
    expect(counted).toMatchObject({ quantity: 11, counted: { difference: -1 } });
    expect(expectedOf(counted, 'A7')).toBe(5);
    expect(expectedOf(counted, null)).toBe(11);
    expect(expectedOf(counted, 'C1')).toBe(0);
  });

  it('takes a count without a lot for a count of all lots', () => {
    const pen = writer();
    const entries = [
      pen.move(10, { item: shirts('L', 'A7') }),
      pen.move(6, { item: shirts('L', 'B2') }),
      pen.count(15),
    ];
    expect(pile(entries)).toMatchObject({
      quantity: 15,
      lots: [{ lot: null, quantity: 15 }],
      counted: { difference: -1 },
    });
  });

  it('goes below zero where more went out than was ever in', () => {
    const pen = writer();
    expect(pile([pen.move(3), pen.move(-5)]).quantity).toBe(-2);
  });

  it('corrects a loss when an older move arrives later from another device', () => {
    const [here, there] = [writer('aaaaaaaa'), writer('bbbbbbbb', -5000)];
    const entries = [here.move(10), here.count(7)];
    expect(pile(entries).counted?.difference).toBe(-3);
    expect(pile([...entries, there.move(-3)])).toMatchObject({ quantity: 7, counted: { difference: 0 } });
  });

  it('leaves at one end what arrives at the other', () => {
    const pen = writer();
    const entries = [pen.move(10), pen.transfer(4, { place: van })];
    expect([quantityAt(entries, 'home'), quantityAt(entries, 'van')]).toEqual([6, 4]);
  });
});

describe('the laws of stock', () => {
  it('any order of arrival gives the same', () => {
    const shuffled = stockEntries.chain((entries) =>
      fc.tuple(fc.constant(entries), fc.shuffledSubarray([...entries], { minLength: entries.length })),
    );
    fc.assert(
      fc.property(shuffled, ([entries, arrived]) => {
        expect(foldStock(arrived)).toEqual(foldStock(entries));
      }),
      cases(100),
    );
  });

  it('a transfer keeps the sum of all places', () => {
    const sum = (entries: readonly StockEntry[]) =>
      foldStock(entries).reduce((all, { quantity }) => all + quantity, 0);
    const places = fc.constantFrom(home, van, shop);
    fc.assert(
      fc.property(
        stockEntries,
        places,
        places,
        fc.integer({ min: 0, max: 30 }),
        (entries, from, to, quantity) => {
          const after = [
            ...entries,
            writer('cccccccc', 1e6).transfer(quantity, { place: to }, { place: from }),
          ];
          expect(sum(after)).toBe(sum(entries));
        },
      ),
      cases(100),
    );
  });

  it('a count that is taken back leaves what was before', () => {
    fc.assert(
      fc.property(stockEntries, fc.integer({ min: 0, max: 30 }), (entries, quantity) => {
        const pen = writer('cccccccc', 1e6);
        const count = pen.count(quantity);
        const takeBack = {
          ...pen.move(0),
          kind: 'takeBack',
          body: { entryId: count.id },
        } as const;
        const inForce = entriesInForce([...entries, count, takeBack]).filter(
          (entry): entry is StockEntry => entry.kind !== 'takeBack',
        );
        expect(foldStock(inForce)).toEqual(foldStock(entries));
      }),
      cases(100),
    );
  });

  it('a count is what is there right after it', () => {
    fc.assert(
      fc.property(stockEntries, fc.integer({ min: 0, max: 30 }), (entries, quantity) => {
        const after = foldStock([...entries, writer('cccccccc', 1e6).count(quantity)]);
        expect(onHand(after).shirt?.L).toBe(quantity);
      }),
      cases(100),
    );
  });
});
