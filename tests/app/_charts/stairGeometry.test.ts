import { describe, expect, it } from 'vitest';
import { stairGeometry } from '@/app/_charts/stairGeometry';

/** Eleven orders over a plot of 1,000 × 400 px: 100 px a piece, and 1 px a unit of money up to 400. */
const plot = { left: 0, right: 1000, top: 0, bottom: 400, letterPx: 16 };
const stairs = {
  points: Array.from({ length: 11 }, (_, index) => ({
    n: index + 1,
    pays: (index + 1) * 30,
    need: 100 + index * 20,
    fullCost: 50 + index * 10,
  })),
  held: [],
  falls: [],
  job: null,
};

describe('the staircase of order totals', () => {
  it('lies on two linear axes with nothing at the bottom', () => {
    const { list, need, up, across } = stairGeometry(stairs, plot);
    // The largest total is 330; the next round one above it that five lines make is 400.
    expect(up.map(({ value, y }) => [value, y])).toEqual([
      [0, 400],
      [100, 300],
      [200, 200],
      [300, 100],
      [400, 0],
    ]);
    expect(list).toMatch(/^M0 370L100 340L200 310/);
    expect(need).toMatch(/^M0 300L100 280/);
    expect(across.map(({ n, x }) => [n, x])).toEqual([
      [1, 0],
      [2, 100],
      [3, 200],
      [4, 300],
      [5, 400],
      [6, 500],
      [7, 600],
      [8, 700],
      [9, 800],
      [10, 900],
      [11, 1000],
    ]);
  });

  it('draws what is held level to the first order that pays as much', () => {
    const { held } = stairGeometry({ ...stairs, held: [{ from: 3, to: 5, pays: 180, words: '180' }] }, plot);
    expect(held).toEqual(['M200 220L500 220']);
  });

  it('hatches a fall from its first order to the larger one that pays less', () => {
    const { falls, labels } = stairGeometry(
      { ...stairs, falls: [{ from: 4, cheaperAt: 6, words: '−13' }] },
      plot,
    );
    expect(falls).toEqual([{ x: 300, width: 200 }]);
    expect(labels.map(({ words }) => words)).toEqual(['−13']);
  });

  it('sets the flag of this job where it stands, and leaves room for it above', () => {
    const { job, up } = stairGeometry({ ...stairs, job: { n: 8, total: 500, words: 'this job' } }, plot);
    expect(up.at(-1)?.value).toBe(500);
    expect(job).toEqual({ x: 700, y: 0 });
  });

  it('writes fewer quantities where there is little room', () => {
    const { across } = stairGeometry(stairs, { ...plot, right: 160 });
    expect(across.map(({ n }) => n)).toEqual([1, 6, 11]);
  });
});
