import { describe, expect, it } from 'vitest';
import { fairMugs, fairShirts } from '@/lib/examples/fairJobs';
import { wholeJob } from '@/lib/grid/costSheet';
import { costed } from '@/tests/fixtures/costed';

/** Ninety-six shirts and thirty-six mugs made to stock for a fair, worked by hand from the rules of the model. */
const shirts = costed(fairShirts('2026-11-25')).sheet;
const mugs = costed(fairMugs('2026-11-25')).sheet;

const oneMore = (sheet: typeof shirts, lineId: string, size: string) =>
  sheet.cases.find((one) => one.lineId === lineId && one.size === size)?.incrementalCost;

describe('one more piece for the fair costs', () => {
  it.each([
    ['fern', 'L', 6.543],
    ['lighthouse', 'L', 6.587],
    ['otter', 'L', 6.512],
    ['star-map', 'L', 6.609],
    ['fern', '2XL', 8.105],
  ])('a %s shirt in %s: %d', (design, size, worked) => {
    expect(oneMore(shirts, design, size)?.toFixed(3)).toBe(worked.toFixed(3));
  });

  it.each(['fern', 'otter', 'star-map'])('a %s mug: 3.918', (design) => {
    expect(oneMore(mugs, design, '11 oz')?.toFixed(3)).toBe('3.918');
  });
});

describe('making the stock', () => {
  it('costs 650.94 for the shirts and 141.04 for the mugs, piece by piece', () => {
    expect(wholeJob(shirts, 'incrementalCost').toFixed(2)).toBe('650.94');
    expect(wholeJob(mugs, 'incrementalCost').toFixed(2)).toBe('141.04');
  });

  it('takes 143 minutes of sessions and artwork: 2 × 30 + 40, and 25 + 18', () => {
    const once = [shirts, mugs].map(
      (sheet) => wholeJob(sheet, 'sessionTime') + wholeJob(sheet, 'designTime'),
    );
    expect(once.map((minutes) => minutes.toFixed(6))).toEqual(['100.000000', '43.000000']);
  });

  it('loses 1.92 of ink to cleaning and 0.13 of power to warming up', () => {
    const both = (rowId: string) => wholeJob(shirts, rowId) + wholeJob(mugs, rowId);
    expect((both('inkSession') * 0.16).toFixed(2)).toBe('1.92');
    expect((both('warmKwh') * 0.18).toFixed(2)).toBe('0.13');
  });

  it('takes 12.67 hours at the bench, which carry 53.21 of overhead', () => {
    const both = (rowId: string) => wholeJob(shirts, rowId) + wholeJob(mugs, rowId);
    expect((both('attended') / 60).toFixed(2)).toBe('12.67');
    expect(both('overheadExpected').toFixed(2)).toBe('53.21');
  });

  it('costs 191.33 for the mugs with sessions, artwork, overhead and boxes, reprints set aside', () => {
    expect((mugs.fullCost - wholeJob(mugs, 'reprints')).toFixed(2)).toBe('191.33');
  });

  it('costs 738.67 for the shirts so, 738.65 where the printer’s own power is left out', () => {
    const made = shirts.fullCost - wholeJob(shirts, 'reprints');
    // 100.99 sheets × 2.5 min at 15 W is 0.063 kWh at 0.18.
    const printer = ((wholeJob(shirts, 'sheets') * 2.5) / 60) * 0.015 * 0.18;
    expect([made.toFixed(2), (made - printer).toFixed(2)]).toEqual(['738.67', '738.65']);
  });

  it.each([
    // 0.60, 0.87, 0.41 and 1.01 mL a good shirt.
    ['fern', 0.6],
    ['lighthouse', 0.87],
    ['otter', 0.41],
    ['star-map', 1.01],
  ])('takes %s ink %d mL a good shirt', (design, worked) => {
    const index = shirts.cases.findIndex((one) => one.lineId === design);
    expect(shirts.values.inkRun?.[index]?.toFixed(2)).toBe(worked.toFixed(2));
  });
});
