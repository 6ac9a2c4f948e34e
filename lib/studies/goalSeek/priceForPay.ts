import type { CostedJob } from '@/lib/grid/costJob';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { taxTerms } from '@/lib/price/taxTerms';
import { batchEvaluator } from '@/lib/studies/curve/batchEvaluator';
import { failed, ok, type Result } from '@/shared/result';
import { priceForProfit } from './priceForProfit';

type PriceForPayProblem =
  | { readonly kind: 'notAnAmount'; readonly value: number }
  | { readonly kind: 'notABatch'; readonly n: number }
  /** Fees take the whole price, or a formula of the maker gives no number. */
  | { readonly kind: 'noSuchPrice' };

/**
 * The price at which a batch pays so much for each of its hours.
 *
 * @param n good pieces of the whole job, above 0
 * @param perHour profit and own pay over all paid time, currency units an hour, 0 or more
 * @returns total and price each as the channel writes them, unrounded, and the share of tax inside
 */
export function priceForPay(
  { laidOut, sheet }: CostedJob,
  grid: Grid,
  n: number,
  perHour: number,
): Result<{ readonly total: number; readonly each: number; readonly taxInside: number }, PriceForPayProblem> {
  if (!(n > 0 && Number.isFinite(n))) return failed({ kind: 'notABatch', n });
  if (!(perHour >= 0 && perHour <= 1e6)) return failed({ kind: 'notAnAmount', value: perHour });
  const evaluate = batchEvaluator(laidOut, grid);
  // Own pay is in the full cost: profit is what the wanted pay adds to it, and less than nothing where it is less.
  const price = priceForProfit(evaluate, n, ({ paidMinutes, payPerHour, profit }) => {
    return profit + (perHour - payPerHour) * (paidMinutes / 60);
  });
  if (price === null) return failed({ kind: 'noSuchPrice' });
  const tax = taxTerms(sheet);
  return ok({ total: tax.written(price.price), each: price.priceEach, taxInside: tax.inside });
}
