import { describe, expect, it } from 'vitest';
import { curveScale } from '@/app/_charts/curveScale';
import type { CurveRow } from '@/lib/studies/curve/curveSeries';

const rows = (values: readonly number[]): readonly CurveRow[] =>
  values.map((value, index) => ({ n: index + 1, value, price: null, band: null, other: null }));

describe('curveScale', () => {
  it('leaves the losses of the first few pieces off the drawing', () => {
    const scale = curveScale(rows([-5, -1, 0.2, 0.42]), 'margin', 3);
    expect([scale.min, scale.max]).toEqual([-0.4, 0.6]);
    expect(scale.ticks).toEqual([-0.4, -0.2, 0, 0.2, 0.4, 0.6]);
  });

  it('shows a job that only ever loses', () => {
    const { min, max } = curveScale(rows([-9, -5, -0.5, -0.45]), 'margin', 3);
    expect(min).toBeLessThanOrEqual(-0.5);
    expect(max).toBe(0);
  });

  it('lets a line that loses several times its price leave the drawing, so that the rest is told apart', () => {
    const scale = curveScale(rows([-6.6, -5, 0.1, 0.42]), 'margin', 1);
    expect([scale.min, scale.max]).toEqual([-0.6, 0.6]);
  });

  it('cuts the cost of single pieces, and keeps nothing at the bottom', () => {
    const scale = curveScale(rows([140, 80, 12, 11]), 'each', 3);
    expect(scale.min).toBe(0);
    expect(scale.max).toBeGreaterThanOrEqual(24);
    expect(scale.max).toBeLessThan(40);
  });

  it('holds the whole of a profit, its band and what is laid over it', () => {
    const [row] = rows([10]);
    const wide = [{ ...(row as CurveRow), band: [-30, 40] as const, other: 90 }];
    const { min, max } = curveScale(wide, 'profit', 1);
    expect(min).toBeLessThanOrEqual(-30);
    expect(max).toBeGreaterThanOrEqual(90);
  });

  it('has something to draw where all is nothing', () => {
    expect(curveScale(rows([0, 0]), 'profit', 1)).toEqual({ min: 0, max: 1, ticks: [0, 1] });
  });
});
