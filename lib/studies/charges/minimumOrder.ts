import type { CostedJob } from '@/lib/grid/costJob';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { taxInside } from '@/lib/price/taxInside';
import { writtenPrice } from '@/lib/price/writtenPrice';
import type { BreakList } from '@/lib/studies/breaks/breakList';
import { type Selling, sellingTotal } from '@/lib/studies/breaks/selling';
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
  { laidOut }: CostedJob,
  grid: Grid,
  wantedProfit: number,
  list: SoldList,
): Result<MinimumOrder, MinimumOrderProblem> {
  if (!(wantedProfit >= 0 && wantedProfit <= 1e6))
    return failed({ kind: 'notAnAmount', value: wantedProfit });
  const evaluate = batchEvaluator(laidOut, grid);
  const price = priceForProfit(evaluate, 1, () => wantedProfit);
  const [point] = evaluate([{ n: 1, priceEach: null }]);
  if (price === null || point == null) return failed({ kind: 'unknownCost' });
  const written = writtenPrice(laidOut.job, price.price);
  const first = firstOrder(list);
  const least = price.price * (1 + taxInside(laidOut.job));
  const isPaid = first !== null && fromMinor(first.total, list.list.currency) >= least - 1e-9;
  return ok({
    fullCost: point.fullCost,
    exact: price.price,
    written,
    covers: piecesWorth(list, written),
    paidByList: isPaid ? first : null,
  });
}

/** A price list as it is sold. */
interface SoldList {
  readonly list: BreakList;
  readonly sold: Selling;
}

function firstOrder({ list, sold }: SoldList): FirstOrder | null {
  const { from } = list.breaks[0];
  const total = sellingTotal(sold, from);
  return total === null ? null : { from, total };
}

/** The largest order that the price list asks no more for. */
function piecesWorth({ list, sold }: SoldList, charge: MinorUnits): number {
  const dearest = Math.min(...list.breaks.map(({ each }) => each));
  const most = Math.ceil(fromMinor(charge, list.currency) / fromMinor(dearest as MinorUnits, list.currency));
  let covered = 0;
  for (let n = 1; n <= most; n += 1) {
    const total = sellingTotal(sold, n);
    if (total !== null && total > charge) break;
    if (total !== null) covered = n;
  }
  return covered;
}
