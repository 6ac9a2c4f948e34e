import { describe, expect, it } from 'vitest';
import { priceJob } from '@/lib/costing/priceJob';
import { groupAt } from '@/lib/layout/groupAt';
import { plannedSheets } from '@/lib/layout/plannedSheets';
import type { JobInput } from '@/shared/schemas/request';
import { changed, club, clubWith } from '@/tests/fixtures/clubJob';
import { costed, grid, laidOut } from '@/tests/fixtures/costed';

/*
 * By hand. A sheet of 200 × 100 mm, no margin, 10 mm between pieces. Print a is 100 × 100 mm, print b is 90 × 45 mm.
 * One piece of each line in a: beside it 90 × 100 mm are left, which hold two of b (45 + 10 + 45 = 100).
 * Ten of a and ten of b: a takes ten sheets, for two of them need 100 + 10 + 100 mm. Of b four go on a sheet by
 * themselves (2 × 2), so three sheets: thirteen apart. Together ten, and the ten a need ten.
 */
const small = (gang: 'apart' | 'together', extra: Readonly<Record<string, unknown>> = {}): JobInput =>
  changed(club(), {
    'workshop.sheets.0.widthMm': 200,
    'workshop.sheets.0.heightMm': 100,
    'workshop.printers.0.marginMm': 0,
    'workshop.policy.gutterMm': 10,
    'job.gang': gang,
    'job.lines.0.orderedQuantity': null,
    'job.lines.0.quantities': [{ size: 'L', quantity: 10 }],
    'job.lines.0.placements.0.prints': [{ sizes: null, widthMm: 100, heightMm: 100 }],
    'job.lines.0.placements.1.prints': [{ sizes: null, widthMm: 90, heightMm: 45 }],
    ...extra,
  });

describe('prints on sheets together', () => {
  it('need ten sheets where apart they need thirteen, and no layout needs fewer', () => {
    const apart = laidOut(small('apart'));
    expect(apart.shared).toBeNull();
    expect(plannedSheets(apart).count).toBe(13);
    const together = plannedSheets(laidOut(small('together')));
    expect([together.count, together.lowerBound]).toEqual([10, 10]);
    const pieces = together.sheets.flatMap(({ count, pieces: on }) =>
      Array.from({ length: count }, () => on).flat(),
    );
    for (const id of ['back', 'badge']) {
      expect(pieces.filter(({ placementId }) => placementId === id)).toHaveLength(10);
    }
    // 10 × 100 × 100 and 10 × 90 × 45 mm² of ten sheets of 200 × 100 mm.
    expect(together.wasteShare).toBeCloseTo(1 - 140_500 / 200_000, 12);
  });

  it('bear each its share of the sheets by area, and the shares are whole sheets', () => {
    const { prints } = laidOut(small('together'));
    // Ten sheets: 100,000 ÷ 140,500 of them for a, 40,500 ÷ 140,500 for b.
    expect(prints.map(({ sheets }) => sheets)).toEqual([
      expect.closeTo((10 * 100_000) / 140_500, 12),
      expect.closeTo((10 * 40_500) / 140_500, 12),
    ]);
    const { sheet } = costed(small('together'));
    const each = (row: string) => sheet.values[row]?.at(0) ?? Number.NaN;
    expect(each('fullSheets_1')).toBeCloseTo(100_000 / 140_500, 12);
    expect(each('fullSheets_2')).toBeCloseTo(40_500 / 140_500, 12);
    expect(10 * (each('fullSheets_1') + each('fullSheets_2'))).toBeCloseTo(10, 12);
  });

  it('share over lines too: the sheets of two lines add up to those of the layout', () => {
    const [line] = small('together').job.lines;
    if (line === undefined) throw new Error('the example has no line');
    const input = small('together', {
      'job.lines': [
        { ...line, placements: line.placements.slice(0, 1) },
        {
          ...line,
          id: 'second',
          name: 'Second',
          quantities: [{ size: 'M', quantity: 20 }],
          placements: line.placements.slice(1),
        },
      ],
    });
    const of = costed(input);
    // Ten of a, each with two of b beside it.
    expect(plannedSheets(of.laidOut).count).toBe(10);
    const { values, cases } = of.sheet;
    const sheets = cases.reduce(
      (sum, { quantity }, at) => sum + quantity * (values.fullSheets_1?.[at] ?? 0),
      0,
    );
    expect(sheets).toBeCloseTo(10, 12);
  });

  it('leave a job as it is where sharing spares no sheet', () => {
    const input = clubWith({ 'job.gang': 'together' });
    expect(laidOut(input).shared).toBeNull();
    expect(priceJob(input, grid).costSheet?.fullCost).toBe(priceJob(club(), grid).costSheet?.fullCost);
  });

  it('price another quantity at the same fill: half the pieces need five sheets', () => {
    const of = laidOut(small('together'));
    const [a] = of.prints;
    expect(a?.ganged?.own).toBeCloseTo(14.05, 12);
    expect(a?.perSheet).toBeCloseTo(1.405, 12);
    const sheetsAt = (batch: number) => (a === undefined ? 0 : groupAt(a, batch, 10) / a.perSheet);
    expect(sheetsAt(10)).toBeCloseTo(10, 12);
    expect(sheetsAt(5)).toBeCloseTo(5, 12);
  });

  it('keep prints that go without borders only on sheets of their own', () => {
    const input = small('together', {
      'workshop.printers.0.marginMm': 5,
      'workshop.printers.0.borderless': true,
    });
    const { prints, shared } = laidOut(input);
    expect(shared).toBeNull();
    expect(prints.map(({ sheets }) => sheets)).toEqual([10, 4]);
  });

  it('give the same layout each time', () => {
    expect(plannedSheets(laidOut(small('together')))).toEqual(plannedSheets(laidOut(small('together'))));
  });
});
