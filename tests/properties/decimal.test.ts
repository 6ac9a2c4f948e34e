import { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DOUBLE_DIGITS, type RoundingMode, roundDecimal, roundToStep } from '@/shared/decimal';
import { cases } from '@/tests/tools/cases';

const modes: Readonly<Record<RoundingMode, Decimal.Rounding>> = {
  halfUp: Decimal.ROUND_HALF_UP,
  halfDown: Decimal.ROUND_HALF_DOWN,
  up: Decimal.ROUND_UP,
  down: Decimal.ROUND_DOWN,
  floor: Decimal.ROUND_FLOOR,
  ceiling: Decimal.ROUND_CEIL,
};
const mode = fc.constantFrom(...(Object.keys(modes) as RoundingMode[]));

/** Enough digits to hold any double exactly. */
const Whole = Decimal.clone({ precision: 1200, minE: -9e15, maxE: 9e15 });

/** The very value a double has, not its shortest text: 0.1 is 0.1000000000000000055…. */
const heldBy = (number: number): Decimal =>
  new Whole(`0b${Math.abs(number).toString(2)}`).times(Math.sign(number));

/** Doubles of every size but the last that can still round up to no double at all, decimals of a few places, and sums that carry binary noise. */
const value = fc.oneof(
  fc.double({ min: -1e300, max: 1e300, noNaN: true }),
  fc.integer({ min: -1e9, max: 1e9 }).map((whole) => whole / 1000),
  fc
    .tuple(fc.integer({ min: -999, max: 999 }), fc.integer({ min: -999, max: 999 }))
    .map(([a, b]) => a / 10 + b / 10),
);

describe('roundDecimal', () => {
  it('rounds as decimal.js does, in every mode, on the fifteen digits a double keeps', () => {
    fc.assert(
      fc.property(value, fc.integer({ min: -12, max: 12 }), mode, (number, decimals, how) => {
        const text = heldBy(number).toSignificantDigits(DOUBLE_DIGITS, Decimal.ROUND_HALF_UP);
        // The point is moved, because places are counted from 0 up.
        const moved = text.times(new Whole(10).pow(decimals));
        const wanted = moved.toDecimalPlaces(0, modes[how]).times(new Whole(10).pow(-decimals)).toNumber();
        expect(roundDecimal(number, decimals, how)).toBe(wanted || 0);
      }),
      cases(1500),
    );
  });

  it('changes nothing that is rounded already', () => {
    fc.assert(
      fc.property(value, fc.integer({ min: 0, max: 6 }), mode, mode, (number, decimals, first, second) => {
        const once = roundDecimal(number, decimals, first);
        expect(roundDecimal(once, decimals, second)).toBe(once);
      }),
      cases(1500),
    );
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])('refuses %d', (number) => {
    expect(() => roundDecimal(number, 2, 'halfUp')).toThrow(RangeError);
  });

  it.each([-0, -0.001, 0.001])('gives 0 and never −0 for %d', (number) => {
    expect(Object.is(roundDecimal(number, 2, 'halfUp'), 0)).toBe(true);
  });
});

describe('roundToStep', () => {
  const step = fc.constantFrom(0.01, 0.05, 0.25, 0.5, 1, 5, 0.3);

  it('gives a whole multiple of the step, on the right side of the value', () => {
    fc.assert(
      fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), step, (number, size) => {
        const above = new Decimal(roundToStep(number, size, 'ceiling'));
        const below = new Decimal(roundToStep(number, size, 'floor'));
        expect(above.mod(size).toNumber() || 0).toBe(0);
        expect(below.mod(size).toNumber() || 0).toBe(0);
        expect(above.minus(below).div(size).toNumber()).toBeLessThanOrEqual(1);
        const slack = 1e-11 * Math.max(1, Math.abs(number));
        expect(above.toNumber()).toBeGreaterThanOrEqual(number - slack);
        expect(below.toNumber()).toBeLessThanOrEqual(number + slack);
      }),
      cases(1500),
    );
  });

  it.each([0, -1, Number.NaN])('refuses a step of %d', (size) => {
    expect(() => roundToStep(1, size, 'ceiling')).toThrow(RangeError);
  });
});
