import type { MinorUnits } from '@/shared/money';
import { failed, ok, type Result } from '@/shared/result';
import type { SellingRule } from '@/shared/schemas/sellingRule';
import { breakListOf } from './breakList';
import { type Selling, sellingTotal } from './selling';

/** A break of a list. */
export interface ListBreak {
  /** First quantity of the break. */
  readonly from: number;
  /** Price of a piece of the base size, whole minor units as the channel writes prices; `start` comes on top. */
  readonly each: MinorUnits;
  /** What the first order of the break pays in the base size. */
  readonly total: MinorUnits;
}

/** What a piece of a size adds, in every break and under every rule alike. */
export interface ListedSize {
  readonly size: string;
  /** 0 for the base size. */
  readonly more: MinorUnits;
}

/** The list of one line as it is sold: what the sums suggest, with the maker's own prices where they are typed. */
export interface LineList {
  readonly lineId: string;
  readonly rule: SellingRule;
  /** What every order pays once, whole minor units; 0 but for set-up apart. */
  readonly start: MinorUnits;
  readonly breaks: readonly ListBreak[];
  /** Every size that is made, in the order of the blank. */
  readonly sizes: readonly ListedSize[];
  /**
   * The most that an order pays over what it must bring, as a share of that; in the base size, up to the order breaks
   * are judged to. Null where prices are no staircase: one price, or set-up apart.
   */
  readonly largestOvercharge: number | null;
  /** The least any order of one size leaves, as a share of its price; up to the order breaks are judged to. */
  readonly leastMargin: number;
}

/** What a list prints of its prices. */
interface PrintedPrices extends Pick<LineList, 'rule' | 'start'> {
  readonly breaks: readonly Pick<ListBreak, 'from' | 'each'>[];
}

/** @returns how orders of a size of a list are reckoned. */
export function sellingOf(
  { rule, start, breaks }: PrintedPrices,
  more: MinorUnits,
  currency: string,
): Result<Selling, { readonly kind: 'noBreaks' }> {
  const [first] = breaks;
  if (first === undefined) return failed({ kind: 'noBreaks' });
  if (rule === 'setUpApart') return ok({ kind: rule, tariff: { currency, start, each: first.each }, more });
  const list = breakListOf(
    breaks.map(({ from, each }) => ({ from, each })),
    currency,
  );
  return list.ok ? ok({ kind: rule, list: list.value, more }) : list;
}

/**
 * @param pieces how many of each size
 * @returns what a mixed order pays: the rule acts on the base price, and each piece adds what its size adds; null
 *   under the first break
 */
export function mixedTotal(
  list: LineList,
  pieces: readonly { readonly size: string; readonly quantity: number }[],
  currency: string,
): MinorUnits | null {
  const selling = sellingOf(list, 0 as MinorUnits, currency);
  const n = pieces.reduce((sum, { quantity }) => sum + quantity, 0);
  const base = selling.ok && n >= (list.breaks[0]?.from ?? 1) ? sellingTotal(selling.value, n) : null;
  if (base === null) return null;
  const more = new Map(list.sizes.map((one) => [one.size, one.more]));
  return (base +
    pieces.reduce((sum, one) => sum + one.quantity * (more.get(one.size) ?? 0), 0)) as MinorUnits;
}
