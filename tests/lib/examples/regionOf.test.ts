import { describe, expect, it } from 'vitest';
import { regionOf } from '@/lib/examples/regionOf';
import { currencyCodes } from '@/shared/tables/currencies';
import { regionCurrencies } from '@/shared/tables/regions';

describe('regionOf guesses', () => {
  it.each([
    ['en-US', 'en-US', 'USD', 'in', 'F', 'mi'],
    ['en-GB', 'en-GB', 'GBP', 'mm', 'C', 'mi'],
    ['en-CA', 'en-CA', 'CAD', 'in', 'C', 'km'],
    ['de', 'de-DE', 'EUR', 'mm', 'C', 'km'],
    ['ja', 'ja-JP', 'JPY', 'mm', 'C', 'km'],
    ['', 'en-US', 'USD', 'in', 'F', 'mi'],
    ['no such tag', 'en-US', 'USD', 'in', 'F', 'mi'],
  ])('from %s', (language, locale, currency, length, temperature, distance) => {
    expect(regionOf(language)).toMatchObject({ locale, currency, units: { length, temperature, distance } });
  });

  it('only currencies that exist', () => {
    expect([...regionCurrencies.values()].filter((code) => !currencyCodes.includes(code))).toEqual([]);
  });
});
