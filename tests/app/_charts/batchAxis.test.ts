import { describe, expect, it } from 'vitest';
import { batchAtRatio, batchTicks, ratioOfBatch } from '@/app/_charts/batchAxis';

describe('the axis of batches', () => {
  it('gives every doubling the same room', () => {
    const doubled = [1, 2, 4, 8, 16, 32].map((n) => ratioOfBatch(2 * n, 100) - ratioOfBatch(n, 100));
    // log 2 / log 100 = 0.30103 / 2.
    for (const room of doubled) expect(room).toBeCloseTo(0.150515, 6);
    expect([ratioOfBatch(1, 100), ratioOfBatch(100, 100)]).toEqual([0, 1]);
  });

  it.each([1, 2, 37, 99, 100])('finds %d again at the place where it stands', (n) => {
    expect(batchAtRatio(ratioOfBatch(n, 100), 100)).toBe(n);
  });

  it('stays on the drawing beyond its ends', () => {
    expect([batchAtRatio(-0.2, 100), batchAtRatio(1.3, 100)]).toEqual([1, 100]);
  });

  it.each([
    [100, 600, 16, [1, 2, 6, 12, 24, 48, 100]],
    [100, 300, 16, [1, 2, 6, 12, 24, 48, 100]],
    // 24 to 48 is 0.1505 of 240 px, 36 px, where 38 are needed: it and its like are left out.
    [100, 240, 16, [1, 6, 24, 100]],
    [500, 720, 16, [1, 2, 6, 12, 24, 48, 100, 200, 500]],
    [120, 600, 16, [1, 2, 6, 12, 24, 48, 120]],
    [100, 170, 32, [1, 12, 100]],
  ])('writes quantities people order up to %i as far as %i px hold them', (to, widthPx, letterPx, ticks) => {
    expect(batchTicks(to, widthPx, letterPx)).toEqual(ticks);
  });
});
