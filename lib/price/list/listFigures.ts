import type { ResolvedLine } from '@/lib/job/checkedJob';
import { fromMinor, type MinorUnits } from '@/shared/money';
import { type LineList, sellingOf } from './lineList';
import type { LineNeeds } from './lineNeeds';
import type { TargetOfOrder } from './orderTargets';
import { sellingTotal } from './selling';

/** Orders from one size to another, both included. */
export interface OrderRange {
  readonly from: number;
  readonly to: number;
}

type PrintedList = Pick<LineList, 'rule' | 'start' | 'breaks' | 'sizes'>;

/** @returns the most that an order of the printed list pays over its own sum, as a share of that. */
export function overcharge(
  list: PrintedList,
  needs: LineNeeds,
  orders: OrderRange,
  currency: string,
): number {
  const total = totalOf(list, 0, currency);
  let most = Number.NEGATIVE_INFINITY;
  for (let n = orders.from; n <= orders.to; n += 1)
    most = Math.max(most, total(n) / (needs.judged.target(n) * needs.taxFactor * n) - 1);
  return most;
}

/**
 * The least that an order leaves, as a share of its price without tax: of every quantity in every size alone, or in
 * the mix where one price covers all. A mixed order leaves no less, because it is made of such pieces.
 */
export function leastMargin(
  list: PrintedList,
  { line }: ResolvedLine,
  needs: LineNeeds,
  orders: OrderRange,
  currency: string,
): number {
  const more = new Map(list.sizes.map((one) => [one.size, one.more]));
  const sold: readonly { readonly target: TargetOfOrder; readonly more: number }[] =
    line.upCharging === 'averaged'
      ? [{ target: needs.judged.target, more: 0 }]
      : needs.sizes.map(({ size, target }) => ({ target, more: more.get(size.size) ?? 0 }));
  let least = Number.POSITIVE_INFINITY;
  for (const one of sold) {
    const total = totalOf(list, one.more, currency);
    for (let n = orders.from; n <= orders.to; n += 1)
      least = Math.min(least, marginOf(needs, one.target(n) * n, total(n)));
  }
  return least;
}

/**
 * @param target what an order must bring for the target margin, without tax
 * @param paid what it pays, as the channel writes prices
 * @returns what it leaves as a share of its price: fees that do not move with the price stand in the target already
 */
export const marginOf = (
  { afterFees, keepShare, taxFactor }: Pick<LineNeeds, 'afterFees' | 'keepShare' | 'taxFactor'>,
  target: number,
  paid: number,
): number => afterFees - (keepShare * target * taxFactor) / paid;

// Helpers

function totalOf(list: PrintedList, more: number, currency: string): (n: number) => number {
  // One price holds for parts of a piece too; breaks begin at whole ones.
  const [first] = list.breaks;
  if (list.rule === 'onePrice')
    return (n) => n * fromMinor(((first?.each ?? 0) + more) as MinorUnits, currency);
  const selling = sellingOf(list, more as MinorUnits, currency);
  return (n) => {
    const total = selling.ok ? sellingTotal(selling.value, n) : null;
    return total === null ? Number.NaN : fromMinor(total, currency);
  };
}
