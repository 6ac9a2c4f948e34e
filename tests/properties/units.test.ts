import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import * as units from '@/shared/units';
import { cases } from '@/tests/tools/cases';

const roundTrips: readonly (readonly [string, (value: number) => number, (value: number) => number])[] = [
  ['inches and millimetres', units.mmFromInches, units.inchesFromMm],
  ['°F and °C', units.celsiusFromFahrenheit, units.fahrenheitFromCelsius],
  ['psi and kPa', units.kpaFromPsi, units.psiFromKpa],
  ['bar and kPa', units.kpaFromBar, units.barFromKpa],
  ['US fluid ounces and mL', units.mlFromUsFluidOunces, units.usFluidOuncesFromMl],
  ['miles and kilometres', units.kmFromMiles, units.milesFromKm],
];

describe.each(roundTrips)('%s', (_, there, back) => {
  it('come back as they went, to fifteen digits', () => {
    fc.assert(
      fc.property(fc.double({ min: -1e6, max: 1e6, noNaN: true }), (value) => {
        expect(Math.abs(back(there(value)) - value)).toBeLessThanOrEqual(
          1e-14 * Math.max(100, Math.abs(value)),
        );
      }),
      cases(1000),
    );
  });

  it('keep their order', () => {
    fc.assert(
      fc.property(fc.integer({ min: -1e6, max: 1e6 }), fc.integer({ min: 1, max: 1000 }), (value, step) => {
        expect(there(value + step)).toBeGreaterThan(there(value));
      }),
      cases(1000),
    );
  });
});

describe('a length typed in inches', () => {
  it('is shown as typed: 8.5 stays 8.5', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 100_000 }), (thousandths) => {
        const typed = thousandths / 1000;
        expect(Number(units.inchesFromMm(units.mmFromInches(typed)).toFixed(9))).toBe(typed);
      }),
      cases(1000),
    );
  });
});

describe('fitsWithin', () => {
  it.each([
    [210, 210, true],
    [210.01, 210, true],
    [210.02, 210, false],
    [209.99, 210, true],
  ])('%d mm within %d mm: %s', (length, limit, fits) => {
    expect(units.fitsWithin(length, limit)).toBe(fits);
  });
});
