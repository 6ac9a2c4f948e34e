import { describe, expect, it } from 'vitest';
import { formatterFor } from '@/app/_words/formatter';
import { countHint, entryWords, stockLine, stockNotes } from '@/app/_words/workshop/stockWords';
import { foldStock } from '@/lib/stock/foldStock';
import type { StockEntry } from '@/lib/stock/stockEntry';
import { stockOf } from '@/lib/stock/stockOf';
import { shirts, shop, van, writer } from '@/tests/lib/stock/stockEntries';

const formatter = formatterFor({
  locale: 'en-US',
  currency: 'USD',
  units: { length: 'in', temperature: 'F', pressure: 'psi', volume: 'mL', distance: 'mi' },
});
const stock = (entries: readonly StockEntry[]) => stockOf(foldStock(entries), shirts('L'));
const notes = (entries: readonly StockEntry[]) => stockNotes(stock(entries), formatter, () => '2026-11-26');

describe('the words of stock', () => {
  it('tell places and grades apart, and say where nobody has counted', () => {
    const pen = writer();
    expect(stockLine(stock([]), formatter)).toBe('not counted');
    expect(stockLine(stock([pen.count(0)]), formatter)).toBe('0 at home');
    expect(
      stockLine(
        stock([pen.move(1200), pen.move(4, { place: van }), pen.move(2, { place: shop, grade: 'second' })]),
        formatter,
      ),
    ).toBe('1,200 at home · 4 in the van · 2 of second grade at Corner shop');
  });

  it('name lots once one is known, and the rest nobody named', () => {
    const pen = writer();
    const named = [pen.move(10), pen.move(6, { item: shirts('L', 'A7') })];
    expect(notes([pen.move(10)])).toEqual({ wrong: [], more: [] });
    expect(notes(named).more).toEqual(['no lot named 10, lot A7 6.']);
  });

  it('ask for a count where more went out than came in, and give no figure below zero', () => {
    const pen = writer();
    const entries = [pen.move(-13), pen.move(5, { place: van })];
    expect(stockLine(stock(entries), formatter)).toBe('5 in the van');
    expect(
      countHint({ act: 'counted', quantity: 2, lot: null, pile: stock(entries).ready }, formatter),
    ).toEqual({
      hint: undefined,
      caution: '13 more went out there than came in: 15 more than noted.',
    });
    expect(notes([pen.move(-1), pen.move(-2, { place: van })]).wrong).toEqual([
      'Count it: 1 more went out at home than came in.',
      'Count it: 2 more went out in the van than came in.',
    ]);
  });

  it('say what a count found more', () => {
    const pen = writer();
    expect(notes([pen.move(10), pen.count(12)]).more).toEqual(['Counted Nov 26, 2026: 2 more than noted.']);
    expect(notes([pen.move(10), pen.count(10)]).more).toEqual([]);
  });

  it('say each entry in few words', () => {
    const pen = writer();
    const words = (entry: StockEntry) => {
      const said = entryWords(entry, formatter, 'en-US');
      return `${said.size}: ${said.words}`;
    };
    expect(words(pen.count(12, { item: shirts('M', 'A7') }))).toBe('M: Counted 12, lot A7');
    expect(words(pen.move(-3, { place: van }, 'given'))).toBe('L: Given away 3, in the van');
    expect(words(pen.transfer(4, { place: van }))).toBe('L: Moved 4 from home to the van');
    expect(words(pen.transfer(4, { place: shop }, { place: van }))).toBe(
      'L: Moved 4 from the van to Corner shop',
    );
    expect(words(pen.transfer(1, { grade: 'second' }))).toBe('L: Moved 1 to second grade, at home');
    expect(words(pen.transfer(4, { item: shirts('Large') }))).toBe('Large: 4 were called L');
  });

  it('tell a difference before it is noted, of the lot that is counted', () => {
    const pen = writer();
    const pile = stock([pen.move(10), pen.move(6, { item: shirts('L', 'A7') })]).ready;
    const hint = (
      act: 'counted' | 'used' | 'bought' | 'moved',
      quantity: number | null,
      lot: string | null = null,
    ) => countHint({ act, quantity, lot, pile }, formatter);
    expect(hint('counted', null)).toEqual({ hint: '16 noted there.', caution: undefined });
    expect(hint('counted', 16)).toEqual({ hint: '16 noted there: as many as noted.', caution: undefined });
    expect(hint('counted', 5, 'A7').caution).toBe('6 noted there: 1 fewer than noted, a loss nobody saw.');
    expect(hint('used', 17).caution).toBe('Only 16 noted there: it goes below zero until somebody counts.');
    // Beside the place it goes to, “there” would be that place.
    expect(hint('moved', null).hint).toBe('16 noted at home.');
    expect(hint('moved', 17).caution).toBe(
      'Only 16 noted at home: it goes below zero until somebody counts.',
    );
    expect(hint('bought', 17).caution).toBeUndefined();
    expect(countHint({ act: 'counted', quantity: 3, lot: null, pile: null }, formatter).hint).toBe(
      'Not counted there yet.',
    );
  });
});
