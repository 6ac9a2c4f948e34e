import { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chooseBreaks } from '@/lib/price/list/chooseBreaks';
import { bestByTrying, largestOvercharge } from '@/tests/oracle/suggestedList';
import { cases, patience } from '@/tests/tools/cases';

/** What a piece must bring where orders need so much to start and so much a piece; cents. */
const line = (start: number, each: number) => (n: number) => (start * 100) / n + each * 100;

function choose(each: (n: number) => number, from: number, count: number, step: number, judgedTo = 150) {
  return chooseBreaks({
    each: Array.from({ length: judgedTo + 1 }, (_, n) => (n === 0 ? 0 : each(n))),
    openEach: (n) => Math.max(...Array.from({ length: n + 1 }, (_, more) => each(n + more))),
    count,
    from,
    judgedTo,
    lifted: (amount) => Math.ceil(amount / step - 1e-9) * step,
    kept: [],
    oddness: () => 0,
  });
}

const question = (each: (n: number) => number, from: number, step: number, judgedTo: number) => ({
  each: (n: number) => new Decimal(each(n)),
  from,
  judgedTo,
  openTimes: 2,
  step,
});

describe('breaks chosen by the sums', () => {
  // The worked example, by hand: 131.81 to start and 12.70 a piece, up to 150 pieces.
  const club = line(131.81, 12.7);

  it.each([
    [1, 0.162],
    [6, 0.108],
    [12, 0.072],
  ])('from %d on overcharge no order by more than %d before the ending', (from, most) => {
    expect(choose(club, from, 6, 1).least).toBeLessThanOrEqual(most);
  });

  it.each([
    [1, [1, 4, 7, 12, 21, 43]],
    [6, [6, 9, 13, 19, 31, 57]],
    [12, [12, 16, 22, 30, 44, 72]],
  ])('from %d on are no worse than those found by hand', (from, byHand) => {
    const cents = question(club, from, 1, 150);
    expect(choose(club, from, 6, 1).least).toBeLessThanOrEqual(
      largestOvercharge(byHand, cents).toNumber() + 1e-12,
    );
  });

  it('are as many as asked, rising, and begin with the least order', () => {
    const { starts } = choose(club, 6, 6, 50);
    expect(starts).toHaveLength(6);
    expect(starts[0]).toBe(6);
    expect([...starts].sort((a, b) => a - b)).toEqual(starts);
  });

  it('are one where every piece costs the same in every order', () => {
    expect(choose(line(0, 10), 1, 6, 50).starts).toEqual([1]);
  });

  it('keep those the maker has a price for', () => {
    const { starts } = chooseBreaks({
      each: Array.from({ length: 151 }, (_, n) => (n === 0 ? 0 : club(n))),
      openEach: club,
      count: 4,
      from: 1,
      judgedTo: 150,
      lifted: (amount) => Math.ceil(amount / 50 - 1e-9) * 50,
      kept: [13, 17],
      oddness: () => 0,
    });
    expect(starts).toEqual(expect.arrayContaining([1, 13, 17]));
  });

  it('move to customary quantities for less than a point, and never for more', () => {
    const isDozen = (n: number) => (n === 1 || n % 6 === 0 ? 0 : 1);
    const { starts, least } = chooseBreaks({
      each: Array.from({ length: 151 }, (_, n) => (n === 0 ? 0 : club(n))),
      openEach: club,
      count: 6,
      from: 1,
      judgedTo: 150,
      lifted: (amount) => Math.ceil(amount / 50 - 1e-9) * 50,
      kept: [],
      oddness: isDozen,
    });
    const plain = choose(club, 1, 6, 50);
    const odd = (of: readonly number[]) => of.reduce((sum, n) => sum + isDozen(n), 0);
    expect(odd(starts)).toBeLessThan(odd(plain.starts));
    expect(largestOvercharge(starts, question(club, 1, 50, 150)).toNumber()).toBeLessThan(least + 0.01);
  });

  it(
    'are the best of all lists whose prices fall and are paid, up to four breaks',
    () => {
      const drawn = fc.record({
        start: fc.integer({ min: 0, max: 300 }),
        each: fc.integer({ min: 1, max: 40 }),
        // A sheet begun for every few pieces.
        sheet: fc.integer({ min: 0, max: 20 }),
        perSheet: fc.integer({ min: 1, max: 7 }),
        from: fc.integer({ min: 1, max: 4 }),
        judgedTo: fc.integer({ min: 8, max: 16 }),
        count: fc.integer({ min: 1, max: 4 }),
        step: fc.constantFrom(1, 50, 100),
      });
      fc.assert(
        fc.property(drawn, ({ start, each, sheet, perSheet, from, judgedTo, count, step }) => {
          const need = (n: number) =>
            (start * 100) / n + each * 100 + (sheet * 100 * Math.ceil(n / perSheet)) / n;
          const asked = question(need, from, step, judgedTo);
          const { least, starts } = choose(need, from, count, step, judgedTo);
          expect(least).toBeCloseTo(bestByTrying(count, asked).toNumber(), 9);
          expect(starts.length).toBeLessThanOrEqual(count);
          expect(largestOvercharge(starts, asked).toNumber()).toBeLessThan(least + 0.01);
        }),
        cases(40),
      );
    },
    patience(60_000),
  );
});
