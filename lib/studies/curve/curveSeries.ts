import type { BatchPoint } from './batchPoint';
import type { CostCurve } from './curveAnswer';

/** What is drawn upwards: profit as a share of the price, money a piece, or profit of the whole batch. */
export type CurveMeasure = 'margin' | 'each' | 'profit';

/** One batch as it is drawn; null where there is nothing to draw. */
export interface CurveRow {
  readonly n: number;
  readonly value: number;
  /** The price a piece over its cost; null for other measures. */
  readonly price: number | null;
  /** Between little and much spoiled, the lower value first. */
  readonly band: readonly [number, number] | null;
  /** The job made another way. */
  readonly other: number | null;
}

/** @returns a point by a measure; of money a piece it is the full cost. */
export function measured(point: BatchPoint, measure: CurveMeasure): number {
  switch (measure) {
    case 'margin':
      return point.margin;
    case 'each':
      return point.fullCost / point.n;
    case 'profit':
      return point.profit;
    default:
      return measure satisfies never;
  }
}

/**
 * @param written takes money without tax to the money the maker writes; costs and prices a piece are drawn in that
 * @returns the rows of a chart, one for every point of the curve
 */
export function curveSeries(
  study: CostCurve,
  other: CostCurve | null,
  measure: CurveMeasure,
  written: (withoutTax: number) => number = (withoutTax) => withoutTax,
): readonly CurveRow[] {
  const spread = new Map(study.spread.map((point) => [point.n, point]));
  const others = new Map((other?.points ?? []).map((point) => [point.n, point]));
  const drawn = (point: BatchPoint) =>
    measure === 'each' ? written(measured(point, measure)) : measured(point, measure);
  return study.points.map((point) => {
    const { best = null, worst = null } = spread.get(point.n) ?? {};
    const beside = others.get(point.n);
    const ends = best === null || worst === null ? null : [drawn(best), drawn(worst)];
    return {
      n: point.n,
      value: drawn(point),
      price: measure === 'each' ? written(point.price / point.n) : null,
      band: ends === null ? null : ([Math.min(...ends), Math.max(...ends)] as const),
      other: beside === undefined ? null : drawn(beside),
    };
  });
}
