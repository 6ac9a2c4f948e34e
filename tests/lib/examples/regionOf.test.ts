import { describe, expect, it } from 'vitest';
import { regionOf, usualCircuit, usualSheet } from '@/lib/examples/regionOf';
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

describe('what is usual in a place', () => {
  // Common practice, from memory: paper, volts and amps of an ordinary circuit.
  it.each([
    ['en-US', 'Letter', 120, 15],
    ['fr-CA', 'Letter', 120, 15],
    ['es-MX', 'Letter', 120, 15],
    ['en-GB', 'A4', 230, 13],
    ['de-CH', 'A4', 230, 16],
    ['nb-NO', 'A4', 230, 16],
    ['en-AU', 'A4', 230, 16],
    ['ja-JP', 'A4', 100, 15],
  ])('in %s is %s paper, %d V and %d A', (language, paper, volts, amps) => {
    const region = regionOf(language);
    expect(usualSheet(region).name).toBe(paper);
    expect(usualCircuit(region)).toEqual({ volts, amps });
  });
});
