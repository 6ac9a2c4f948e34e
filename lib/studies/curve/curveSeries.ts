import { type TaxTerms, taxTermsOf } from '@/lib/price/taxTerms';
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

/**
 * @param terms what money a piece is written in; a profit is never written on a paper and has no tax
 * @returns a point by a measure; of money a piece it is the full cost
 */
export function measured(point: BatchPoint, measure: CurveMeasure, terms: TaxTerms): number {
  switch (measure) {
    case 'margin':
      return point.margin;
    case 'each':
      return terms.written(point.fullCost / point.n);
    case 'profit':
      return point.profit;
    default:
      return measure satisfies never;
  }
}

/**
 * @returns the rows of a chart, one for every point of the curve; costs and prices a piece in the money the maker writes
 */
export function curveSeries(
  study: CostCurve,
  other: CostCurve | null,
  measure: CurveMeasure,
): readonly CurveRow[] {
  const spread = new Map(study.spread.map((point) => [point.n, point]));
  const others = new Map((other?.points ?? []).map((point) => [point.n, point]));
  const terms = taxTermsOf(study.taxInside);
  return study.points.map((point) => {
    const { best = null, worst = null } = spread.get(point.n) ?? {};
    const beside = others.get(point.n);
    const ends =
      best === null || worst === null
        ? null
        : [measured(best, measure, terms), measured(worst, measure, terms)];
    return {
      n: point.n,
      value: measured(point, measure, terms),
      price: measure === 'each' ? terms.written(point.price / point.n) : null,
      band: ends === null ? null : ([Math.min(...ends), Math.max(...ends)] as const),
      other: beside === undefined ? null : measured(beside, measure, terms),
    };
  });
}
