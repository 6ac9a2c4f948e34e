import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { foldStock } from '@/lib/stock/foldStock';
import type { StockEntry } from '@/lib/stock/stockEntry';
import { type PileValue, stockValue } from '@/lib/stock/stockValue';
import { stockWorth, valuesOf } from '@/lib/stock/stockWorth';
import type { StockItem, StockUnitCost } from '@/shared/schemas/stock';
import { cases } from '@/tests/tools/cases';
import { home, shirts, stockEntries, van, writer } from './stockEntries';

const usd = (minor: number, per?: number): StockUnitCost => ({
  minor,
  currency: 'USD',
  ...(per === undefined ? {} : { per }),
});

/** The same entry with what it cost. */
function paid(entry: StockEntry, unitCost: StockUnitCost): StockEntry {
  if (entry.kind === 'stockTransfer') throw new Error('a transfer costs nothing');
  return entry.kind === 'stockMove'
    ? { ...entry, body: { ...entry.body, unitCost } }
    : { ...entry, body: { ...entry.body, unitCost } };
}

/** Minor units of dollars and pieces of unknown cost, by place and grade. */
const told = (values: readonly PileValue[]) =>
  values.map(({ place, grade, paid: money, unknown, quantity }) => [
    `${place.kind} ${grade}`,
    quantity,
    money.map(({ minor, currency }) => `${minor} ${currency}`).join(' '),
    unknown,
  ]);

describe('stockValue', () => {
  it('takes the oldest out first', () => {
    const pen = writer();
    const entries = [paid(pen.move(10), usd(480)), paid(pen.move(10), usd(495)), pen.move(-12)];
    // 8 are left, all of the second delivery: 8 × 4.95 = 39.60.
    expect(told(stockValue(entries))).toEqual([['home first', 8, '3960 USD', 0]]);
  });

  it('takes the lot that is named first, and then the oldest', () => {
    const pen = writer();
    const [a, b] = [shirts('L', 'A'), shirts('L', 'B')];
    const bought = [paid(pen.move(5, { item: a }), usd(400)), paid(pen.move(5, { item: b }), usd(600))];
    // 5 × 4.00 and 2 × 6.00.
    expect(told(stockValue([...bought, pen.move(-3, { item: b })]))).toEqual([
      ['home first', 7, '3200 USD', 0],
    ]);
    // All 5 of B and 2 of A leave: 3 × 4.00.
    expect(told(stockValue([...bought, pen.move(-7, { item: b })]))).toEqual([
      ['home first', 3, '1200 USD', 0],
    ]);
  });

  it('tells pieces of unknown cost apart and takes them for no money', () => {
    const pen = writer();
    const entries = [pen.count(6), paid(pen.move(4), usd(500)), pen.move(-2)];
    expect(told(stockValue(entries))).toEqual([['home first', 8, '2000 USD', 4]]);
    expect(stockWorth(stockValue(entries))).toEqual({
      paid: [{ currency: 'USD', minor: 2000 }],
      ...{ unknown: 4, unknownThings: 1, shortThings: 0 },
    });
  });

  it('knows what a first count was paid for where the count says it', () => {
    const pen = writer();
    expect(told(stockValue([paid(pen.count(6), usd(480)), pen.move(-1)]))).toEqual([
      ['home first', 5, '2400 USD', 0],
    ]);
    // A later count finds two more, and nobody knows what they cost.
    expect(told(stockValue([paid(pen.count(6), usd(480)), pen.count(8)]))).toEqual([
      ['home first', 8, '2880 USD', 2],
    ]);
  });

  it('keeps the price of many where one costs no whole number', () => {
    const paper: StockItem = { kind: 'paper', sheetId: 'letter' };
    const pen = writer();
    const entries = [paid(pen.move(100, { item: paper }), usd(1350, 100)), pen.move(-58, { item: paper })];
    // 42 sheets of 13.50 the hundred: 5.67.
    const values = stockValue(entries);
    expect(values[0]?.paid[0]?.minor).toBeCloseTo(567, 9);
    expect(stockWorth(valuesOf(values, paper)).paid).toEqual([{ currency: 'USD', minor: 567 }]);
  });

  it('takes the price along to another place, grade and name, by a transfer and by a load of the car', () => {
    const pen = writer();
    const bought = paid(pen.move(10), usd(480));
    expect(told(stockValue([bought, pen.transfer(4, { place: van })]))).toEqual([
      ['home first', 6, '2880 USD', 0],
      ['van first', 4, '1920 USD', 0],
    ]);
    expect(told(stockValue([bought, pen.transfer(1, { grade: 'second' })]))).toEqual([
      ['home first', 9, '4320 USD', 0],
      ['home second', 1, '480 USD', 0],
    ]);
    const load = [pen.move(-3, {}, 'returned'), pen.move(3, { place: van }, 'returned')];
    expect(told(stockValue([bought, ...load]))).toEqual([
      ['home first', 7, '3360 USD', 0],
      ['van first', 3, '1440 USD', 0],
    ]);
  });

  it('is worth nothing below zero, and what comes next makes up for it first', () => {
    const pen = writer();
    expect(told(stockValue([pen.move(-3)]))).toEqual([['home first', -3, '', 0]]);
    expect(told(stockValue([pen.move(-3), paid(pen.move(5), usd(480))]))).toEqual([
      ['home first', 2, '960 USD', 0],
    ]);
    expect(stockWorth(stockValue([pen.move(-3)])).shortThings).toBe(1);
  });

  it('tells currencies apart', () => {
    const pen = writer();
    const euros = { minor: 400, currency: 'EUR' };
    const values = stockValue([paid(pen.move(1), usd(480)), paid(pen.move(1), euros)]);
    expect(stockWorth(values).paid).toEqual([
      { currency: 'USD', minor: 480 },
      { currency: 'EUR', minor: 400 },
    ]);
    // In a sum of dollars alone what was paid in euros is not known.
    expect([stockWorth(values).unknownThings, stockWorth(values, 'USD').unknownThings]).toEqual([0, 1]);
  });

  it('is the same in whatever order entries of two devices come', () => {
    const shuffled = stockEntries.chain((entries) =>
      fc.tuple(
        fc.constant(entries),
        fc.shuffledSubarray([...entries], { minLength: entries.length, maxLength: entries.length }),
      ),
    );
    fc.assert(
      fc.property(shuffled, ([entries, others]) => {
        expect(stockValue(others)).toEqual(stockValue(entries));
      }),
      cases(200),
    );
  });

  it('holds as many pieces as the fold says lie there, all of unknown cost where none is told', () => {
    fc.assert(
      fc.property(stockEntries, (entries) => {
        const piles = foldStock(entries);
        expect(stockValue(entries).map(({ quantity, unknown }) => [quantity, unknown])).toEqual(
          piles.map(({ quantity }) => [quantity, Math.max(0, quantity)]),
        );
      }),
      cases(200),
    );
  });

  it('holds all money that was paid while nothing left, wherever it was moved', () => {
    const priced = fc.array(
      fc.tuple(fc.integer({ min: 1, max: 9 }), fc.integer({ min: 0, max: 900 }), fc.boolean()),
      {
        maxLength: 10,
      },
    );
    fc.assert(
      fc.property(priced, (moves) => {
        const pen = writer();
        const entries = moves.flatMap(([quantity, minor, isMoved]) => [
          paid(pen.move(quantity), usd(minor)),
          ...(isMoved ? [pen.transfer(1, { place: van }, { place: home })] : []),
        ]);
        const bought = moves.reduce((sum, [quantity, minor]) => sum + quantity * minor, 0);
        const held = stockWorth(stockValue(entries)).paid.reduce((sum, { minor }) => sum + minor, 0);
        expect(held).toBe(bought);
      }),
      cases(100),
    );
  });
});
