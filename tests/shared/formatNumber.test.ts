import { describe, expect, it } from 'vitest';
import { formatNumber, NotANumberToShow } from '@/shared/formatNumber';

const two = { minDecimals: 2, maxDecimals: 2 };

describe('formatNumber', () => {
  it.each([
    // tc39/ecma402 issue 748: a rounded trifle must not show as minus nothing.
    [-0.004, 'en', two, '0.00'],
    [-0, 'en', {}, '0'],
    [-0.006, 'en', two, '\u22120.01'],
    [1234.5, 'en', two, '1,234.50'],
    [1234.5, 'de', two, '1.234,50'],
    [1234.5, 'de-CH', two, "1'234.50"],
    [1234567, 'fr', {}, '1\u202F234\u202F567'],
    [-5, 'sv', {}, '\u22125'],
    [1234.5, 'en', { grouped: false }, '1234.5'],
    // dinerojs/dinero.js issue 7.
    [-2.05, 'en', { maxDecimals: 1 }, '\u22122.1'],
    [1.005, 'en', two, '1.01'],
    [0.1 + 0.2, 'en', {}, '0.3'],
    [3, 'en', { minDecimals: 4, maxDecimals: 2 }, '3.0000'],
  ])('writes %d in %s with %o as %s', (value, locale, shape, text) => {
    expect(formatNumber(value, locale, shape)).toBe(text);
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY])('throws on %d, which no document can hold', (value) => {
    expect(() => formatNumber(value, 'en')).toThrow(NotANumberToShow);
  });
});
