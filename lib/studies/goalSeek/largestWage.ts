import type { CostedJob } from '@/lib/grid/costJob';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { type BatchPrice, batchEvaluator } from '@/lib/studies/curve/batchEvaluator';
import { failed, ok, type Result } from '@/shared/result';

type LargestWageProblem =
  | { readonly kind: 'notABatch'; readonly n: number }
  | { readonly kind: 'notAPrice'; readonly price: number }
  /** The price loses money even where nobody is paid: so much on the batch. */
  | { readonly kind: 'noWage'; readonly lossUnpaid: number }
  /** The batch takes no paid minutes: no wage is too large for it. */
  | { readonly kind: 'anyWage' }
  | { readonly kind: 'unknownCost' };

/** More than this an hour is no wage. */
const MOST = 1e6;
/** Steps of the search; each at least halves what is left, and one is enough where profit falls in a straight line. */
const STEPS = 80;

/**
 * The largest wage a price can bear in a batch: at it profit is 0. Profit only falls as the wage rises, so the
 * crossing is searched for between none and more than anybody is paid.
 *
 * @param priceEach as the channel writes prices, above 0; `asked` for the prices of the job
 * @returns currency units an hour, unrounded
 */
export function largestWage(
  { laidOut }: CostedJob,
  grid: Grid,
  n: number,
  priceEach: Exclude<BatchPrice, null>,
): Result<number, LargestWageProblem> {
  if (!(n > 0 && Number.isFinite(n))) return failed({ kind: 'notABatch', n });
  if (priceEach !== 'asked' && !(priceEach > 0 && priceEach <= 1e9))
    return failed({ kind: 'notAPrice', price: priceEach });
  const profitAt = (wage: number) =>
    batchEvaluator(laidOut, grid, { wage })([{ n, priceEach }])[0]?.profit ?? null;
  const unpaid = profitAt(0);
  const most = profitAt(MOST);
  if (unpaid === null || most === null) return failed({ kind: 'unknownCost' });
  if (unpaid < 0) return failed({ kind: 'noWage', lossUnpaid: -unpaid });
  if (most >= 0) return failed({ kind: 'anyWage' });
  let low = { wage: 0, profit: unpaid };
  let high = { wage: MOST, profit: most };
  for (let step = 0; step < STEPS && high.wage - low.wage > 1e-9; step += 1) {
    const straight = low.wage + ((high.wage - low.wage) * low.profit) / (low.profit - high.profit);
    // Every other time the middle: a profit that falls in jumps would hold the straight line up.
    const wage = step % 2 === 0 ? straight : (low.wage + high.wage) / 2;
    const profit = profitAt(wage);
    if (profit === null) return failed({ kind: 'unknownCost' });
    if (Math.abs(profit) < 1e-9 * n) return ok(wage);
    if (profit > 0) low = { wage, profit };
    else high = { wage, profit };
  }
  return ok(low.wage);
}
