import { describe, expect, it } from 'vitest';
import { batchEvaluator } from '@/lib/studies/curve/batchEvaluator';
import { batchTariffs } from '@/lib/studies/curve/batchTariffs';
import { fitTariff } from '@/lib/studies/curve/fitTariff';
import { club } from '@/tests/fixtures/clubJob';
import { costed, grid } from '@/tests/fixtures/costed';

describe('fitTariff', () => {
  it('finds the line that totals lie on', () => {
    const totals = [1, 4, 9].map((n) => ({ n, total: 30 + 2.5 * n }));
    expect(fitTariff(totals)).toEqual({
      start: expect.closeTo(30, 12),
      each: expect.closeTo(2.5, 12),
      largestError: expect.closeTo(0, 12),
      largestErrorAt: expect.any(Number),
    });
  });

  it('goes through the middle of totals that lie on no line', () => {
    // By hand: the slope is ((−1)(−1) + 0·2 + 1·(−1)) ÷ 2 = 0, the mean 2, the gaps 1 ÷ 1, 2 ÷ 2 and 1 ÷ 3 a piece.
    const fitted = fitTariff([1, 4, 1].map((total, index) => ({ n: index + 1, total })));
    expect(fitted).toEqual({ start: 2, each: 0, largestError: 1, largestErrorAt: 1 });
  });

  it('has no line for one batch', () => {
    expect(fitTariff([{ n: 5, total: 10 }])).toBeNull();
    expect(fitTariff([])).toBeNull();
  });
});

describe('batchTariffs of the club order', () => {
  const job = costed(club());
  const tariffs = batchTariffs(job, grid);

  it('teaches “131.7 to start, 12.70 a shirt”', () => {
    expect(Math.abs((tariffs?.target.start ?? 0) - 131.74)).toBeLessThan(0.4);
    expect(Math.abs((tariffs?.target.each ?? 0) - 12.7)).toBeLessThan(0.01);
  });

  it('costs 89.9 to start and 8.69 a shirt', () => {
    expect(Math.abs((tariffs?.fullCost.start ?? 0) - 89.87)).toBeLessThan(0.1);
    expect(Math.abs((tariffs?.fullCost.each ?? 0) - 8.69)).toBeLessThan(0.01);
  });

  it('lies furthest off at a single shirt, and within five cents from a dozen on', () => {
    expect(tariffs?.target.largestErrorAt).toBe(1);
    expect(tariffs?.target.largestError).toBeLessThan(0.7);
    const { start = 0, each = 0 } = tariffs?.target ?? {};
    const dozens = Array.from({ length: 89 }, (_, step) => ({ n: 12 + step, priceEach: null }));
    for (const point of batchEvaluator(job.laidOut, grid)(dozens)) {
      const error = (point?.targetTotal ?? 0) - start - each * (point?.n ?? 0);
      expect(Math.abs(error) / (point?.n ?? 1)).toBeLessThanOrEqual(0.05);
    }
  });

  // What a piece costs on the line, at the batches of the worked example.
  it.each([
    [6, 34.66],
    [12, 23.68],
    [24, 18.19],
    [37, 16.26],
    [48, 15.44],
    [72, 14.53],
    [100, 14.02],
  ])('asks at %i shirts %f each', (n, each) => {
    const { start = 0, each: slope = 0 } = tariffs?.target ?? {};
    expect(Math.abs(start / n + slope - each)).toBeLessThan(0.02);
  });
});
