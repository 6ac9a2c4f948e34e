import type { CostedJob } from '@/lib/grid/costJob';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { type BatchPrice, batchEvaluator } from '@/lib/studies/curve/batchEvaluator';
import { failed, ok, type Result } from '@/shared/result';
import { firstBatchThatPays, SEARCHED_UP_TO } from './firstBatchThatPays';

type BatchForMarginProblem =
  | { readonly kind: 'notAMargin'; readonly margin: number }
  | { readonly kind: 'notAPrice'; readonly price: number }
  /** No batch up to the last one looked at leaves the margin; the last one leaves so much. */
  | { readonly kind: 'noSuchBatch'; readonly upTo: number; readonly marginThere: number | null };

/**
 * The smallest batch that leaves a margin at a price.
 *
 * @param priceEach as the channel writes prices, above 0; `asked` for the prices of the job
 * @param margin share of the price without tax, 0 to below 1
 */
export function batchForMargin(
  { laidOut }: CostedJob,
  grid: Grid,
  priceEach: Exclude<BatchPrice, null>,
  margin: number,
  upTo: number = SEARCHED_UP_TO,
): Result<number, BatchForMarginProblem> {
  if (!(margin >= 0 && margin < 1)) return failed({ kind: 'notAMargin', margin });
  if (priceEach !== 'asked' && !(priceEach > 0 && priceEach <= 1e9))
    return failed({ kind: 'notAPrice', price: priceEach });
  const evaluate = batchEvaluator(laidOut, grid);
  const n = firstBatchThatPays(evaluate, priceEach, margin, upTo);
  if (n !== null) return ok(n);
  const [last] = evaluate([{ n: upTo, priceEach }]);
  return failed({ kind: 'noSuchBatch', upTo, marginThere: last?.margin ?? null });
}
