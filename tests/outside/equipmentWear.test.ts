import { describe, expect, it } from 'vitest';
import { wholeJob } from '@/lib/grid/costSheet';
import { present } from '@/lib/grid/present';
import { costed } from '@/tests/fixtures/costed';
import { fixedRate } from '@/tests/fixtures/numbers';
import { plainJob } from '@/tests/fixtures/plainJob';

/*
 * M. Franklin, P. Graybeal, D. Cooper, Principles of Accounting, vol. 1: Financial Accounting (OpenStax, Rice
 * University, 2019), section 11.3: a printing press by straight line and by units of production, and a silk-screen
 * machine by both.
 */
const printing = {
  price: fixedRate(58_000, 'money'),
  resale: fixedRate(10_000, 'money'),
  lifeSheets: fixedRate(960_000, 'sheets'),
};
const silkScreen = {
  price: fixedRate(10_000, 'money'),
  resale: fixedRate(1000, 'money'),
  lifePresses: fixedRate(100_000, 'presses'),
};

/** A year's output, in four sizes because no size of a job holds so many. */
const year = (pieces: number) => [1, 2, 3, 4].map(() => ({ quantity: pieces / 4, blank: 0 }));

describe('the printing press of 58,000 that is worth 10,000 after 960,000 pages', () => {
  it('wears by 0.05 a page', () => {
    const { sheet } = costed(plainJob({ sizes: year(180_000), printer: printing }));
    expect(present(sheet.jobValues, 'printerWear')).toBeCloseTo(0.05, 12);
  });

  it.each([
    [180_000, 9000],
    [200_000, 10_000],
    [210_000, 10_500],
    [190_000, 9500],
    [180_000, 9000],
  ])('wears by %d pages in a year: %d', (pages, wear) => {
    const { sheet } = costed(plainJob({ sizes: year(pages), printer: printing }));
    expect(wholeJob(sheet, 'wear')).toBeCloseTo(wear, 6);
  });

  it('wears by 48,000 in the five years together', () => {
    const pages = [180_000, 200_000, 210_000, 190_000, 180_000];
    const wear = pages.map((count) =>
      wholeJob(costed(plainJob({ sizes: year(count), printer: printing })).sheet, 'wear'),
    );
    expect(wear.reduce((sum, one) => sum + one, 0)).toBeCloseTo(48_000, 6);
  });

  it('costs 9,600 a year by straight line over five years, where fewer pages do not wear it out', () => {
    const printer = {
      ...printing,
      lifeYears: fixedRate(5, 'years'),
      sheetsPerYear: fixedRate(96_000, 'sheets/year'),
    };
    const { sheet } = costed(plainJob({ sizes: year(96_000), printer }));
    expect(wholeJob(sheet, 'wear')).toBeCloseTo(9600, 6);
  });

  it('costs by the page again in a year of more pages than age takes', () => {
    const printer = {
      ...printing,
      lifeYears: fixedRate(5, 'years'),
      sheetsPerYear: fixedRate(210_000, 'sheets/year'),
    };
    const { sheet } = costed(plainJob({ sizes: year(210_000), printer }));
    expect(wholeJob(sheet, 'wear')).toBeCloseTo(10_500, 6);
  });
});

describe('the silk-screen machine of 10,000 that is worth 1,000 after 100,000 presses', () => {
  it('wears by 0.09 a press', () => {
    const { sheet } = costed(plainJob({ sizes: [{ quantity: 1, blank: 0 }], press: silkScreen }));
    expect(sheet.lineValues.pressWear_1?.[0]).toBeCloseTo(0.09, 12);
  });

  it.each([
    [20_000, 1800],
    [30_000, 2700],
  ])('wears in %d presses by %d', (presses, wear) => {
    const { sheet } = costed(plainJob({ sizes: [{ quantity: presses, blank: 0 }], press: silkScreen }));
    expect(wholeJob(sheet, 'wear')).toBeCloseTo(wear, 6);
  });

  it('costs 1,800 a year by straight line over five years', () => {
    const press = {
      ...silkScreen,
      lifeYears: fixedRate(5, 'years'),
      pressesPerYear: fixedRate(12_000, 'presses/year'),
    };
    const { sheet } = costed(plainJob({ sizes: [{ quantity: 12_000, blank: 0 }], press }));
    expect(wholeJob(sheet, 'wear')).toBeCloseTo(1800, 6);
  });
});
