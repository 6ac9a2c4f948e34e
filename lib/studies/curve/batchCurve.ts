import type { CostedJob } from '@/lib/grid/costJob';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { ok, type Result } from '@/shared/result';
import { type BatchPrice, batchEvaluator } from './batchEvaluator';
import type { BatchPoint } from './batchPoint';
import { type CurveRangeProblem, checkCurveRange } from './checkCurveRange';

export interface CurveQuestion {
  /** First and last batch, whole pieces. */
  readonly from: number;
  readonly to: number;
  readonly priceEach: BatchPrice;
}

/**
 * Cost, price and margin of the whole job at every batch of a range. One session carries any batch unless the job
 * says how many pieces a session can; the mix is scaled in fractions; steps of sheets and sessions are kept.
 *
 * @returns points in rising order; a batch for which a formula of the maker gives no number is left out
 */
export function batchCurve(
  { laidOut }: CostedJob,
  grid: Grid,
  { from, to, priceEach }: CurveQuestion,
): Result<readonly BatchPoint[], CurveRangeProblem> {
  const problem = checkCurveRange(from, to);
  if (problem !== null) return { ok: false, problem };
  const evaluate = batchEvaluator(laidOut, grid);
  const wanted = Array.from({ length: to - from + 1 }, (_, step) => ({ n: from + step, priceEach }));
  return ok(evaluate(wanted).filter((point) => point !== null));
}
