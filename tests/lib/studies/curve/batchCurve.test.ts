import { describe, expect, it } from 'vitest';
import { wholeJob } from '@/lib/grid/costSheet';
import { batchCurve } from '@/lib/studies/curve/batchCurve';
import { batchEvaluator } from '@/lib/studies/curve/batchEvaluator';
import type { BatchPoint } from '@/lib/studies/curve/batchPoint';
import { breakEven } from '@/lib/studies/curve/breakEven';
import { knee } from '@/lib/studies/curve/knee';
import { changed, club, clubWith } from '@/tests/fixtures/clubJob';
import { costed, grid } from '@/tests/fixtures/costed';

const job = costed(club());

/** The club order at a flat price for every shirt. */
function flat(priceEach: number, to = 200): readonly BatchPoint[] {
  const curve = batchCurve(job, grid, { from: 1, to, priceEach });
  if (!curve.ok) throw new Error(curve.problem.kind);
  return curve.value;
}

describe('batchCurve of the club order at a flat 20.00', () => {
  const points = flat(20);

  // Margins of the worked example in percent, one session whatever the batch.
  it.each([
    [6, -20, 0],
    [12, 17.5, 1],
    [18, 29.9, 1],
    [24, 36.2, 1],
    [37, 42.8, 1],
    [48, 45.6, 1],
    [72, 48.7, 1],
    [100, 50.5, 1],
  ])('leaves a margin at %i shirts of %f %%', (n, percent, digits) => {
    expect(Number(((points[n - 1]?.margin ?? Number.NaN) * 100).toFixed(digits))).toBe(percent);
  });

  it('first leaves a clear profit at 9 shirts, and never loses again', () => {
    expect(breakEven(points)).toEqual({ first: 9, lasting: 9 });
  });

  it('breaks even at 10 shirts for 19.00 each, and at 9 with the up-charges of the order', () => {
    expect(breakEven(flat(19))?.first).toBe(10);
    const asked = batchCurve(job, grid, { from: 1, to: 20, priceEach: 'asked' });
    expect(asked.ok ? breakEven(asked.value)?.first : null).toBe(9);
  });

  it('has its knee at 23: from there doubling adds fewer than ten points', () => {
    expect(knee(points)?.n).toBe(23);
    expect((knee(points)?.doublingAdds ?? 1) * 100).toBeLessThan(10);
  });

  it('never makes a loss that it does not have', () => {
    expect(breakEven(flat(5))).toBeNull();
  });
});

describe('batchCurve', () => {
  it('gives the figures of the cost sheet at the batch asked', () => {
    const [point] = batchEvaluator(job.laidOut, grid)([{ n: 37, priceEach: 'asked' }]);
    expect(point?.fullCost).toBeCloseTo(411.79, 2);
    expect(point?.targetTotal).toBeCloseTo(602.05, 2);
    expect(point?.price).toBeCloseTo(711.5, 9);
    expect((point?.margin ?? 0) * 100).toBeCloseTo(40.5, 1);
    expect(point?.payPerHour).toBeCloseTo(56.26, 1);
    for (const row of ['fullCost', 'profit', 'margin', 'payPerHour', 'fees'] as const)
      expect(point?.[row]).toBeCloseTo(wholeJob(job.sheet, row), 9);
  });

  it('pays 41.96 an hour at the target price', () => {
    const [point] = batchEvaluator(job.laidOut, grid)([{ n: 37, priceEach: null }]);
    expect(point?.payPerHour).toBeCloseTo(41.96, 1);
    expect(point?.margin).toBeCloseTo(0.3, 12);
  });

  it('begins another session where the job says what one can carry', () => {
    const evening = costed(clubWith({ 'job.piecesPerSession': 20 }));
    const curve = batchCurve(evening, grid, { from: 19, to: 22, priceEach: null });
    const costs = curve.ok ? curve.value.map(({ fullCost }) => fullCost) : [];
    const steps = costs.slice(1).map((cost, index) => cost - (costs[index] ?? 0));
    // The session is 35 minutes at 18.00 and 4.20 an hour, 4 mL of ink at 0.16, and a warm-up of 0.35 kWh at 0.18.
    expect((steps[1] ?? 0) - (steps[0] ?? 0)).toBeGreaterThan(12.95 + 0.64 + 0.06);
  });

  it.each([
    [0, 5, 'underOne'],
    [5, 1, 'fallsBack'],
    [1, 2.5, 'notWhole'],
    [1, 99_999, 'tooLarge'],
    [Number.NaN, 3, 'notWhole'],
  ])('does not draw %d to %d', (from, to, kind) => {
    const curve = batchCurve(job, grid, { from, to, priceEach: null });
    expect(curve.ok ? null : curve.problem.kind).toBe(kind);
  });

  it('leaves out a batch for which a formula of the maker gives no number', () => {
    const jumpy = costed(
      changed(club(), {
        'job.ownRows': [
          {
            id: 'own_jump',
            label: 'Jump',
            outOfPocket: false,
            cost: { kind: 'formula', formula: '1 / (jobPieces - 3)' },
          },
        ],
      }),
    );
    const curve = batchCurve(jumpy, grid, { from: 1, to: 5, priceEach: null });
    expect(curve.ok ? curve.value.map(({ n }) => n) : null).toEqual([1, 2, 4, 5]);
  });
});
