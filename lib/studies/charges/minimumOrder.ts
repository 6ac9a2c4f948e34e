import type { Grid } from '@/lib/grid/evaluateGrid';
import type { JudgedJob } from '@/lib/price/list/judgedJob';
import { type LineList, sellingOf } from '@/lib/price/list/lineList';
import { sellingTotal } from '@/lib/price/list/selling';
import { taxInside } from '@/lib/price/taxInside';
import { writtenPrice } from '@/lib/price/writtenPrice';
import { batchEvaluator } from '@/lib/studies/curve/batchEvaluator';
import { priceForProfit } from '@/lib/studies/goalSeek/priceForProfit';
import { fromMinor, type MinorUnits } from '@/shared/money';
import { failed, ok, type Result } from '@/shared/result';

interface MinimumOrder {
  /** What an order of one piece costs in full: order, artwork, session and the piece. */
  readonly fullCost: number;
  /** The least an order must bring, without tax, unrounded. */
  readonly exact: number;
  readonly written: MinorUnits;
  /** Whole pieces that the charge pays for at the price list; an order of more pays its own price. */
  readonly covers: number;
  /** The first order of the list where that brings as much already: there is nothing to charge beside it. */
  readonly paidByList: FirstOrder | null;
}

/** The smallest order that a list is for, and what it pays, as written. */
export interface FirstOrder {
  readonly from: number;
  readonly total: MinorUnits;
}

type MinimumOrderProblem =
  | { readonly kind: 'notAnAmount'; readonly value: number }
  | { readonly kind: 'unknownCost' };

/**
 * The minimum order charge: an order of one piece and the profit wanted of it, over what fees leave.
 *
 * @param wantedProfit currency units an order, 0 or more
 * @param list what pieces cost otherwise, and how orders are reckoned from it
 */
export function minimumOrder(
  { laidOut }: Pick<JudgedJob, 'laidOut'>,
  grid: Grid,
  wantedProfit: number,
  list: LineList,
): Result<MinimumOrder, MinimumOrderProblem> {
  if (!(wantedProfit >= 0 && wantedProfit <= 1e6))
    return failed({ kind: 'notAnAmount', value: wantedProfit });
  const evaluate = batchEvaluator(laidOut, grid);
  const price = priceForProfit(evaluate, 1, () => wantedProfit);
  const [point] = evaluate([{ n: 1, priceEach: null }]);
  if (price === null || point == null) return failed({ kind: 'unknownCost' });
  const { currency } = laidOut.job.workshop;
  const written = writtenPrice(laidOut.job, price.price);
  const [first = null] = list.breaks;
  const least = price.price * (1 + taxInside(laidOut.job));
  const isPaid = first !== null && fromMinor(first.total, currency) >= least - 1e-9;
  return ok({
    fullCost: point.fullCost,
    exact: price.price,
    written,
    covers: piecesWorth(list, written, currency),
    paidByList: isPaid ? { from: first.from, total: first.total } : null,
  });
}

/** The largest order that the price list asks no more for in its base size. */
function piecesWorth(list: LineList, charge: MinorUnits, currency: string): number {
  const selling = sellingOf(list, 0 as MinorUnits, currency);
  if (!selling.ok) return 0;
  const least = Math.min(...list.breaks.map(({ each }) => each));
  const most = Math.ceil(fromMinor(charge, currency) / fromMinor(least as MinorUnits, currency));
  let covered = 0;
  for (let n = 1; n <= most; n += 1) {
    const total = sellingTotal(selling.value, n);
    if (total !== null && total > charge) break;
    if (total !== null) covered = n;
  }
  return covered;
}
