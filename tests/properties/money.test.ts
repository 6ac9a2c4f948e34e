import { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  AmountTooLarge,
  formatMinor,
  fromMinor,
  LARGEST_AMOUNT,
  type MinorUnits,
  shownParts,
  splitMinor,
  toMinor,
  toPriceEnding,
} from '@/shared/money';
import { currencyCodes, currencyDigits } from '@/shared/tables/currencies';
import { cases } from '@/tests/tools/cases';

const minor = fc.integer({ min: -1e11, max: 1e11 }).map((value) => value as MinorUnits);
const currency = fc.constantFrom(...currencyCodes);
const digitsOf = (code: string) => currencyDigits(code) ?? Number.NaN;
const total = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0);

/** Amounts as a sum leaves them: decimals with binary noise behind, some of them halves of a minor unit. */
const amount = fc.oneof(
  fc.double({ min: -1e9, max: 1e9, noNaN: true }),
  fc.integer({ min: -1e7, max: 1e7 }).map((value) => value / 1000),
  fc.integer({ min: -1e6, max: 1e6 }).map((value) => value / 100 + 0.005),
);

/** The nearest minor unit, a half away from zero, on the twelve digits that carry meaning. */
const exactly = (value: number, digits: number): number =>
  new Decimal(new Decimal(value).toSignificantDigits(12, Decimal.ROUND_HALF_UP))
    .times(new Decimal(10).pow(digits))
    .toDecimalPlaces(0, Decimal.ROUND_HALF_UP)
    .toNumber();

describe('toMinor', () => {
  it('rounds as exact decimals do, half away from zero', () => {
    fc.assert(
      fc.property(amount, currency, (value, code) => {
        expect(toMinor(value, code)).toBe(exactly(value, digitsOf(code)) || 0);
      }),
      cases(1500),
    );
  });

  it('gives back what fromMinor was given', () => {
    fc.assert(
      fc.property(minor, currency, (value, code) => {
        fc.pre(Math.abs(fromMinor(value, code)) <= LARGEST_AMOUNT);
        expect(toMinor(fromMinor(value, code), code)).toBe(value || 0);
      }),
      cases(2000),
    );
  });

  it('refuses every amount beyond the largest', () => {
    fc.assert(
      fc.property(fc.double({ min: LARGEST_AMOUNT, minExcluded: true }), fc.boolean(), (value, below) => {
        expect(() => toMinor(below ? -value : value, 'USD')).toThrow(AmountTooLarge);
      }),
      cases(1000),
    );
  });
});

describe('formatMinor', () => {
  it('never writes a minus before nothing', () => {
    fc.assert(
      fc.property(fc.double({ min: -0.00499, max: 0, noNaN: true }), (value) => {
        expect(formatMinor(toMinor(value, 'USD'), 'USD', 'en-US')).toBe('0.00');
      }),
      cases(1000),
    );
  });
});

describe('splitMinor', () => {
  const share = fc.oneof(fc.integer({ min: 0, max: 1000 }), fc.double({ min: 0, max: 1e6, noNaN: true }));
  const shares = fc
    .array(share, { minLength: 1, maxLength: 40 })
    .filter((all) => total(all) > 0 && all.every((one) => one === 0 || one > 1e-9));

  it('splits into parts that add to the whole', () => {
    fc.assert(
      fc.property(minor, shares, (whole, all) => {
        const parts = splitMinor(whole, all);
        expect(total(parts)).toBe(whole || 0);
        expect(parts.every(Number.isSafeInteger)).toBe(true);
      }),
      cases(1500),
    );
  });

  it('keeps each part within one minor unit of its share', () => {
    fc.assert(
      fc.property(minor, shares, (whole, all) => {
        const sum = all.reduce((running, one) => running.plus(one), new Decimal(0));
        splitMinor(whole, all).forEach((part, at) => {
          const quota = new Decimal(whole).times(all[at] ?? 0).div(sum);
          expect(quota.minus(part).abs().toNumber()).toBeLessThan(1 + 1e-4);
        });
      }),
      cases(2000),
    );
  });

  it('gives the parts of a negative whole the other way round', () => {
    fc.assert(
      fc.property(minor, shares, (whole, all) => {
        const against = splitMinor(-whole as MinorUnits, all).map((part) => -part || 0);
        expect(against).toEqual(splitMinor(whole, all));
      }),
      cases(1000),
    );
  });

  it.each([[[]], [[0, 0]], [[1, -1]], [[1, Number.NaN]], [[Number.NaN]]])('refuses the shares %j', (all) => {
    expect(() => splitMinor(100 as MinorUnits, all)).toThrow(RangeError);
  });
});

describe('shownParts', () => {
  const part = fc.oneof(
    fc.double({ min: -1e5, max: 1e5, noNaN: true }),
    fc.integer({ min: -1e6, max: 1e6 }).map((value) => value / 1000),
  );
  const parts = fc.array(part, { minLength: 1, maxLength: 30 });

  it('adds to the total that is shown, to the digit', () => {
    fc.assert(
      fc.property(parts, currency, (all, code) => {
        const sum = total(all);
        expect(total(shownParts(sum, all, code))).toBe(toMinor(sum, code));
      }),
      cases(1500),
    );
  });

  it('keeps each part within one minor unit of its value', () => {
    fc.assert(
      fc.property(parts, currency, (all, code) => {
        const scale = 10 ** digitsOf(code);
        shownParts(total(all), all, code).forEach((shown, at) => {
          expect(Math.abs(shown - (all[at] ?? 0) * scale)).toBeLessThan(1 + 1e-6);
        });
      }),
      cases(1500),
    );
  });
});

describe('toPriceEnding', () => {
  const price = fc.oneof(
    fc.double({ min: 0.01, max: 1e6, noNaN: true }),
    fc.integer({ min: 1, max: 1e7 }).map((value) => value / 100),
  );
  const step = fc.constantFrom(0.01, 0.05, 0.1, 0.25, 0.5, 1, 5, 10, 0.99);

  it('is never below the amount, by more than the noise of a sum', () => {
    fc.assert(
      fc.property(price, step, (value, ending) => {
        const lifted = fromMinor(toPriceEnding(value, ending, 'USD'), 'USD');
        expect(lifted).toBeGreaterThanOrEqual(value * (1 - 1e-11));
      }),
      cases(1500),
    );
  });

  it('is on the grid of endings and less than one step above the amount', () => {
    fc.assert(
      fc.property(price, step, (value, ending) => {
        const lifted = new Decimal(toPriceEnding(value, ending, 'USD')).div(100);
        expect(lifted.mod(ending).toNumber()).toBe(0);
        expect(lifted.minus(value).toNumber()).toBeLessThan(ending + 1e-9);
      }),
      cases(1500),
    );
  });

  it('widens a step finer than the currency to its smallest unit', () => {
    fc.assert(
      fc.property(price, (value) => {
        expect(toPriceEnding(value, 0.01, 'JPY')).toBe(toPriceEnding(value, 1, 'JPY'));
      }),
      cases(1000),
    );
  });

  it('never falls where the amount rises', () => {
    fc.assert(
      fc.property(price, price, step, (a, b, ending) => {
        const [low, high] = a < b ? [a, b] : [b, a];
        expect(toPriceEnding(low, ending, 'USD')).toBeLessThanOrEqual(toPriceEnding(high, ending, 'USD'));
      }),
      cases(1000),
    );
  });
});
