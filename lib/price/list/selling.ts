import type { MinorUnits } from '@/shared/money';
import { type BreakList, breakTotal } from './breakList';

/** “So much to start, so much a piece” as it is written, whole minor units. */
export interface WrittenTariff {
  readonly currency: string;
  readonly start: MinorUnits;
  readonly each: MinorUnits;
}

/** A way of reckoning what n pieces cost. All but lists as they stand never let more pieces cost less. */
export type Selling = (
  | { readonly kind: 'asListed' | 'onePrice'; readonly list: BreakList }
  /** No order pays more than a larger one would: 12 cost the same as 11. */
  | { readonly kind: 'capped'; readonly list: BreakList }
  /** The new price holds for the pieces beyond the break only. */
  | { readonly kind: 'slab'; readonly list: BreakList }
  /** So much to start, so much a piece. */
  | { readonly kind: 'setUpApart'; readonly tariff: WrittenTariff }
  /** Prices of breaks raised until the edges are clean. */
  | { readonly kind: 'softened'; readonly list: BreakList }
  /** Breaks moved down until the edges are clean. */
  | { readonly kind: 'shifted'; readonly list: BreakList }
) & {
  /** What each piece of a size adds to the price that the rule acts on, whole minor units; absent for none. */
  readonly more?: MinorUnits;
};

/**
 * @param n whole pieces
 * @returns what the buyer of n pieces pays, whole minor units; null under the first break
 */
export function sellingTotal(selling: Selling, n: number): MinorUnits | null {
  const base = baseTotal(selling, n);
  return base === null ? null : ((base + (selling.more ?? 0) * n) as MinorUnits);
}

function baseTotal(selling: Selling, n: number): MinorUnits | null {
  switch (selling.kind) {
    case 'asListed':
    case 'onePrice':
    case 'softened':
    case 'shifted':
      return breakTotal(selling.list, n);
    case 'capped':
      return capped(selling.list, n);
    case 'slab':
      return slabbed(selling.list, n);
    case 'setUpApart':
      return (selling.tariff.start + selling.tariff.each * n) as MinorUnits;
    default:
      return selling satisfies never;
  }
}

/** The least that n or any larger order costs; a total falls at the start of a break only. */
function capped(list: BreakList, n: number): MinorUnits | null {
  const own = breakTotal(list, n);
  if (own === null) return null;
  const later = list.breaks.filter(({ from }) => from > n).map(({ from, each }) => from * each);
  return Math.min(own, ...later) as MinorUnits;
}

/** The pieces inside each break at its own price; those before the first break at the first price. */
function slabbed({ breaks }: BreakList, n: number): MinorUnits | null {
  if (n < breaks[0].from) return null;
  const total = breaks.reduce((sum, { from, each }, index) => {
    const first = index === 0 ? 1 : from;
    const last = Math.min(n, (breaks[index + 1]?.from ?? Number.POSITIVE_INFINITY) - 1);
    return sum + Math.max(0, last - first + 1) * each;
  }, 0);
  return total as MinorUnits;
}
