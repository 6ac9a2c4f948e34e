import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { formatMinor, fromMinor, type MinorUnits, toMinor } from '@/shared/money';
import { currencyCodes, currencyDigits } from '@/shared/tables/currencies';
import { inPlace } from './inPlace';

/* ISO 4217, list one as published on 2024-06-25. */
describe('digits of the minor unit by ISO 4217', () => {
  it.each([
    [0, 'BIF CLP DJF GNF ISK JPY KMF KRW PYG RWF UGX UYI VND VUV XAF XOF XPF'],
    [3, 'BHD IQD JOD KWD LYD OMR TND'],
    [4, 'CLF UYW'],
    // Among them some that locale data shows without digits.
    [2, 'USD EUR GBP CHF CAD SEK AUD HUF IDR COP PKR MGA MRU'],
  ])('%d: %s', (digits, codes) => {
    for (const code of codes.split(' ')) expect(currencyDigits(code), code).toBe(digits);
  });

  it.each(['XAU', 'XXX', 'XTS', 'usd', '', 'EURO'])('there is no minor unit of %j', (code) => {
    expect(currencyDigits(code)).toBeNull();
  });
});

const list = inPlace('currency-minor-units.json', (content) =>
  z
    .object({ currencies: z.record(z.string(), z.object({ minor: z.int().nullable() })) })
    .transform(
      ({ currencies }) => new Map(Object.entries(currencies).map(([code, { minor }]) => [code, minor])),
    )
    .parse(content),
);

describe.skipIf(!list.there)(`the whole list (${list.says})`, () => {
  const published = list.there ? list.data : new Map<string, number | null>();

  it('holds the same codes with a minor unit, and no others', () => {
    const wanted = [...published].filter(([, minor]) => minor !== null).map(([code]) => code);
    expect(currencyCodes).toEqual(wanted.toSorted());
  });

  it('has the same digits for each', () => {
    const ours = currencyCodes.map((code) => [code, currencyDigits(code)]);
    expect(ours).toEqual(currencyCodes.map((code) => [code, published.get(code)]));
  });
});

/* Faults seen in public: each is a kind, of which the value stands for all. */
describe('money', () => {
  it.each([
    // dinerojs/dinero.js issue 9: storage digits are not those of locale data.
    [1000, 'KWD', '1.000'],
    [100, 'HUF', '1.00'],
    [100, 'COP', '1.00'],
    [1000, 'IQD', '1.000'],
    // Issue 751: yen have none.
    [300, 'JPY', '300'],
    [12_345, 'CLF', '1.2345'],
  ])('%d minor units of %s are %s', (minor, currency, text) => {
    expect(formatMinor(minor as MinorUnits, currency, 'en-US')).toBe(text);
    expect(toMinor(fromMinor(minor as MinorUnits, currency), currency)).toBe(minor);
  });

  it.each([
    // Half a cent goes away from zero on either side (dinerojs/dinero.js issue 7).
    [-2.045, 'USD', -205],
    [2.045, 'USD', 205],
    [1.005, 'USD', 101],
    [8.575, 'USD', 858],
    [600.425, 'USD', 60_043],
    // 711.50 × 1.07.
    [761.305, 'USD', 76_131],
    [711.5 * 1.07, 'USD', 76_131],
    [-0.004, 'USD', 0],
    [0.5, 'JPY', 1],
    [-0.5, 'JPY', -1],
    [0.0005, 'KWD', 1],
  ])('%d %s is %d minor units', (amount, currency, minor) => {
    expect(toMinor(amount, currency)).toBe(minor);
  });

  it('−0.004 shows as nothing without a minus (tc39/ecma402 issue 748)', () => {
    expect(formatMinor(toMinor(-0.004, 'USD'), 'USD', 'en-US')).toBe('0.00');
  });
});
