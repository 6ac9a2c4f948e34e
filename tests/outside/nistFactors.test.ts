import Qty from 'js-quantities';
import { describe, expect, it } from 'vitest';
import * as units from '@/shared/units';

/* A. Thompson, B. N. Taylor, NIST Special Publication 811 (2008 edition), Appendix B.8. */
describe('factors are those of NIST SP 811', () => {
  it.each([
    ['inch, exact, in mm', units.MM_PER_INCH, 25.4],
    ['square inch, exact, in m²', units.M2_PER_SQUARE_INCH, 6.4516e-4],
    ['bar, exact, in kPa', units.KPA_PER_BAR, 100],
    ['kilowatt-hour, exact, in J', units.JOULES_PER_KWH, 3.6e6],
    // 5,280 feet of 0.3048 m, which is exact.
    ['mile, in km', units.KM_PER_MILE, (5280 * 0.3048) / 1000],
    // A 128th of the US gallon of 231 cubic inches.
    ['US fluid ounce, in mL', units.ML_PER_US_FLUID_OUNCE, (231 * 2.54 ** 3) / 128],
    // Pound of 0.45359237 kg × standard gravity 9.80665 m/s² ÷ square inch, all exact.
    ['psi, in kPa', units.KPA_PER_PSI, (0.45359237 * 9.80665) / 6.4516e-4 / 1000],
  ])('%s', (_, factor, wanted) => {
    // The psi is kept to thirteen digits.
    expect(Math.abs(factor / wanted - 1)).toBeLessThan(1e-13);
  });

  it.each([
    // As printed, to the last printed digit.
    ['psi', units.KPA_PER_PSI, 6.894757, 6],
    ['US fluid ounce', units.ML_PER_US_FLUID_OUNCE, 29.57353, 5],
  ])('%s as it is printed', (_, factor, printed, decimals) => {
    expect(factor.toFixed(decimals)).toBe(printed.toFixed(decimals));
  });
});

/* By the definition C = (F − 32) ÷ 1.8, worked by hand. */
describe('degrees', () => {
  it.each([
    [-40, -40],
    [32, 0],
    [212, 100],
    [356, 180],
    [392, 200],
    [401, 205],
    [385, 196.111],
    [400, 204.444],
  ])('%d °F are %d °C', (fahrenheit, celsius) => {
    expect(units.celsiusFromFahrenheit(fahrenheit)).toBeCloseTo(celsius, 3);
    if (Number.isInteger(celsius)) expect(units.fahrenheitFromCelsius(celsius)).toBeCloseTo(fahrenheit, 12);
  });
});

/* The library js-quantities 1.8, which has a table of its own. */
describe('an independent library has the same', () => {
  const values = [0.01, 1, 3.4, 8.5, 10, 40, 385, 12_345.678];

  it.each([
    ['in', 'mm', units.mmFromInches, 1e-12],
    ['mm', 'in', units.inchesFromMm, 1e-12],
    ['mi', 'km', units.kmFromMiles, 1e-12],
    ['km', 'mi', units.milesFromKm, 1e-12],
    ['bar', 'kPa', units.kpaFromBar, 1e-12],
    ['kPa', 'bar', units.barFromKpa, 1e-12],
    ['tempF', 'tempC', units.celsiusFromFahrenheit, 1e-12],
    ['tempC', 'tempF', units.fahrenheitFromCelsius, 1e-12],
    // Its psi and fluid ounce are kept to seven digits.
    ['psi', 'kPa', units.kpaFromPsi, 1e-6],
    ['kPa', 'psi', units.psiFromKpa, 1e-6],
    ['floz', 'ml', units.mlFromUsFluidOunces, 1e-6],
    ['ml', 'floz', units.usFluidOuncesFromMl, 1e-6],
  ])('%s in %s', (from, to, convert, slack) => {
    for (const value of values) {
      const theirs = new Qty(value, from).to(to).scalar;
      expect(Math.abs(convert(value) - theirs)).toBeLessThanOrEqual(slack * Math.max(1, Math.abs(theirs)));
    }
  });
});
