import { describe, expect, it } from 'vitest';
import { BatchLayouts, batchedInput, batchQuestions } from '@/lib/costing/batchLayouts';
import { priceJob } from '@/lib/costing/priceJob';
import { sheetsOfBatch } from '@/lib/layout/batchSheets';
import { batchEvaluator } from '@/lib/studies/curve/batchEvaluator';
import { usedUpAt } from '@/lib/studies/curve/usedUpAt';
import type { JobInput } from '@/shared/schemas/request';
import { changed, club } from '@/tests/fixtures/clubJob';
import { costed, grid, laidOut, passed } from '@/tests/fixtures/costed';
import { sharedJob } from '@/tests/fixtures/sharedJob';

/*
 * By hand. A sheet of 200 × 100 mm, no margin, 10 mm between pieces: two columns of 95 mm. Print a, 95 × 100 mm, fills
 * one, and two of print b, 95 × 45 mm, fill one (45 + 10 + 45). So n pieces with both take n + ⌈n ÷ 2⌉ columns. Five
 * take eight, four sheets, where each print by itself would take three and two. At the fill of those, n take ⌈4n ÷ 5⌉.
 */
const small = (quantity: number, extra: Readonly<Record<string, unknown>> = {}): JobInput =>
  changed(club(), {
    'workshop.sheets.0.widthMm': 200,
    'workshop.sheets.0.heightMm': 100,
    'workshop.printers.0.marginMm': 0,
    'workshop.policy.gutterMm': 10,
    'job.gang': 'together',
    'job.lines.0.orderedQuantity': null,
    'job.lines.0.quantities': [{ size: 'L', quantity }],
    'job.lines.0.placements.0.prints': [{ sizes: null, widthMm: 95, heightMm: 100 }],
    'job.lines.0.placements.1.prints': [{ sizes: null, widthMm: 95, heightMm: 45 }],
    ...extra,
  });

const packed = (input: JobInput) => batchedInput(input, new BatchLayouts());

/** Sheets of a batch as the curve counts them. */
function sheetsAt(input: JobInput, n: number): number {
  const { prints, job } = laidOut(input);
  const [print] = prints;
  const asked = job.lines.reduce((sum, { sizes }) => sizes.reduce((of, size) => of + size.quantity, sum), 0);
  if (print?.ganged === undefined) throw new Error('nothing is shared');
  const { ganged, perSheet } = print;
  return sheetsOfBatch(ganged, n, ((ganged.own + ganged.others) * n) / asked / perSheet);
}

describe('other batches of a job on shared sheets', () => {
  it('take the sheets they were packed on, one fewer than at the fill of the batch laid out', () => {
    const [before, after] = [small(5), packed(small(5))];
    expect([4, 5, 8, 9, 12].map((n) => sheetsAt(before, n))).toEqual([4, 4, 7, 8, 10]);
    expect([4, 5, 8, 9, 12].map((n) => sheetsAt(after, n))).toEqual([3, 4, 6, 7, 9]);
    // 20, 40 and 100 pieces in 30, 60 and 150 columns.
    expect([20, 40, 100].map((n) => sheetsAt(before, n))).toEqual([16, 32, 80]);
    expect([20, 40, 100].map((n) => sheetsAt(after, n))).toEqual([15, 30, 75]);
  });

  it('cost what pricing them as the job itself comes to', () => {
    const point = (input: JobInput) =>
      batchEvaluator(costed(input).laidOut, grid)([{ n: 9, priceEach: null }])[0];
    const itself = priceJob(small(9), grid).costSheet?.fullCost ?? Number.NaN;
    expect(point(packed(small(5)))?.fullCost).toBeCloseTo(itself, 9);
    expect((point(small(5))?.fullCost ?? 0) - itself).toBeGreaterThan(0.01);
  });

  it('come in whole pieces of all lines: 5 of 6 and 9 are 2 and 3, which lie on one sheet', () => {
    /* Inside the borders 210 × 273 mm: two of 90 × 120 side by side, the third below them (126 + 120), and beside it
       two of 111 × 69 in what is left, 114 × 147. At the fill of four sheets for 15, 5 take ⌈20 ÷ 15⌉. */
    const after = packed(sharedJob());
    expect([sheetsAt(sharedJob(), 5), sheetsAt(after, 5)]).toEqual([2, 1]);
    const five = sharedJob({
      'job.lines.0.quantities': [{ size: 'L', quantity: 2 }],
      'job.lines.1.quantities': [{ size: 'L', quantity: 3 }],
    });
    const [point] = batchEvaluator(costed(after).laidOut, grid)([{ n: 5, priceEach: null }]);
    expect(point?.fullCost).toBeCloseTo(priceJob(five, grid).costSheet?.fullCost ?? Number.NaN, 9);
  });

  it('stay estimates where they were not packed, never outside of the packed ones beside them', () => {
    const after = packed(small(5));
    // 12 take 9 sheets and 15 take 12 (23 columns); 4 × 13 ÷ 5 and 4 × 14 ÷ 5 lie between.
    expect([13, 14].map((n) => sheetsAt(after, n))).toEqual([11, 12]);
    // 20 take 15 and 24 take 18: at the fill of the five 19 and 23 would take one more than those.
    expect([19, 23].map((n) => sheetsAt(small(5), n))).toEqual([16, 19]);
    expect([19, 23].map((n) => sheetsAt(after, n))).toEqual([15, 18]);
  });

  it('never take fewer sheets than a smaller batch, and leave the batch laid out as it is', () => {
    const after = packed(small(5));
    const curve = Array.from({ length: 100 }, (_, index) => sheetsAt(after, index + 1));
    expect(curve).toEqual([...curve].sort((a, b) => a - b));
    const cost = (input: JobInput) => priceJob(input, grid).costSheet?.fullCost;
    expect(cost(after)).toBe(cost(small(5)));
    // A job of nine pieces is laid out and drawn by itself, whatever was counted for a batch of nine.
    const nine = { ...small(9), layouts: after.layouts };
    expect(laidOut(nine).shared).toEqual(laidOut(small(9)).shared);
  });

  it('step where the packed sheets are used up', () => {
    // Sheets of 1 to 11: 1, 2, 3, 3, 4, 5, 6, 6, 7, 8, 9; at the fill of the five 1, 2, 3, 4, 4, 5, 6, 7, 8, 8, 9.
    const steps = (input: JobInput) => [...usedUpAt(laidOut(input), 1, 10).keys()];
    expect(steps(packed(small(5)))).toEqual([1, 2, 4, 5, 6, 8, 9, 10]);
    expect(steps(small(5))).toEqual([1, 2, 3, 5, 6, 7, 8, 10]);
  });

  it('are the same in whatever order they were asked', () => {
    const batches = new BatchLayouts();
    const questions = batchQuestions(passed(small(5)));
    for (const _ of batches.goOn([...questions].reverse()));
    expect(batches.known(questions)).toEqual(packed(small(5)).layouts);
    // Of another job nothing is known before all of it is.
    expect(batches.known(batchQuestions(passed(small(7))))).toEqual({});
  });

  it('keep to the estimate on a roll', () => {
    const roll = small(5, { 'workshop.sheets.0.form': 'roll', 'workshop.sheets.0.heightMm': 2000 });
    expect(batchQuestions(passed(roll))).toEqual([]);
  });
});
