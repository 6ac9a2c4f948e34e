import type { BatchPoint } from '@/lib/price/curve/batchPoint';
import type { CurveStudy } from '@/lib/price/curve/curveAnswer';
import type { CurveDatum } from '../_charts/CurveChart';

/** What of a curve is drawn. */
export type CurveFigure = 'margin' | 'each' | 'profit';

export interface CurveView {
  readonly data: readonly CurveDatum[];
  readonly bounds: readonly [number, number];
  readonly of: (point: BatchPoint) => number;
}

/** Margins below this are off the drawing: a single shirt that loses five times its price says no more there. */
const LOWEST_MARGIN = -0.4;
/** Costs of the first few pieces would flatten all the rest. */
const FIRST_DRAWN = 4;

/** @returns a curve as it is drawn, with a variant beside it where there is one. */
export function curveView(study: CurveStudy, figure: CurveFigure, variant: CurveStudy | null): CurveView {
  const of = figures[figure];
  const bands = new Map(
    study.spread.flatMap(({ n, best, worst }) =>
      best === null || worst === null ? [] : [[n, sorted(of(best), of(worst))] as const],
    ),
  );
  const beside = new Map((variant?.points ?? []).map((point) => [point.n, of(point)]));
  const data = study.points.map((point) => ({
    n: point.n,
    value: of(point),
    band: bands.get(point.n),
    second: figure === 'each' ? point.price / point.n : undefined,
    variant: beside.get(point.n),
  }));
  return { data, bounds: boundsOf(data, figure), of };
}

// Helpers

const figures: Readonly<Record<CurveFigure, (point: BatchPoint) => number>> = {
  margin: ({ margin }) => margin,
  each: ({ fullCost, n }) => fullCost / n,
  profit: ({ profit }) => profit,
};

const sorted = (a: number, b: number): readonly [number, number] => [Math.min(a, b), Math.max(a, b)];

function boundsOf(data: readonly CurveDatum[], figure: CurveFigure): readonly [number, number] {
  const drawn = figure === 'each' ? data.filter(({ n }) => n >= FIRST_DRAWN) : data;
  const values = (drawn.length > 0 ? drawn : data).flatMap(({ value, second, variant, band }) =>
    [value, second, variant, ...(band ?? [])].filter((one) => one !== undefined),
  );
  const least = Math.min(0, ...values);
  const most = Math.max(0, ...values);
  if (figure === 'margin') return [Math.max(LOWEST_MARGIN, least), Math.max(0.1, most + 0.05)];
  return [least * 1.05, most * 1.08 || 1];
}
