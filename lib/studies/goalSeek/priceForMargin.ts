import type { CostedJob } from '@/lib/grid/costJob';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { taxTerms } from '@/lib/price/taxTerms';
import { batchEvaluator } from '@/lib/studies/curve/batchEvaluator';
import { failed, ok, type Result } from '@/shared/result';

interface SoughtPrice {
  /** Whole batch and a piece, as the channel writes prices, unrounded. */
  readonly total: number;
  readonly each: number;
  /** Share of tax that both have inside. */
  readonly taxInside: number;
  /** At a margin of 0 the price pays cost, fees and own pay, and nothing more. */
  readonly earns: 'profit' | 'nothing';
}

type PriceForMarginProblem =
  | { readonly kind: 'notAMargin'; readonly margin: number }
  /** Margin and fees together take the whole price. */
  | { readonly kind: 'nothingLeft'; readonly margin: number; readonly fees: number }
  | { readonly kind: 'notABatch'; readonly n: number }
  | { readonly kind: 'unknownCost' };

/**
 * The price that leaves a margin in a batch.
 *
 * @param n good pieces of the whole job, above 0
 * @param margin profit as a share of the price without tax, 0 to below 1
 */
export function priceForMargin(
  { laidOut, sheet }: CostedJob,
  grid: Grid,
  n: number,
  margin: number,
): Result<SoughtPrice, PriceForMarginProblem> {
  if (!(n > 0 && Number.isFinite(n))) return failed({ kind: 'notABatch', n });
  if (!(margin >= 0 && margin <= 1)) return failed({ kind: 'notAMargin', margin });
  const fees = sheet.jobValues.feeShare ?? 0;
  if (1 - margin - fees <= 1e-9) return failed({ kind: 'nothingLeft', margin, fees });
  const [point] = batchEvaluator(laidOut, grid, { targetMargin: margin })([{ n, priceEach: null }]);
  if (point == null) return failed({ kind: 'unknownCost' });
  const tax = taxTerms(sheet);
  return ok({
    total: tax.written(point.targetTotal),
    each: tax.written(point.targetTotal / n),
    taxInside: tax.inside,
    earns: margin === 0 ? 'nothing' : 'profit',
  });
}
