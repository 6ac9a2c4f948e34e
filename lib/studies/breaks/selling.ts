import type { MinorUnits } from '@/shared/money';
import { type BreakList, breakTotal } from './breakList';
import type { WrittenTariff } from './writtenTariff';

/** A way of reckoning what n pieces cost. All but `asListed` never let more pieces cost less. */
export type Selling =
  | { readonly kind: 'asListed'; readonly list: BreakList }
  /** No order pays more than a larger one would: 12 cost the same as 11. */
  | { readonly kind: 'cap'; readonly list: BreakList }
  /** The new price holds for the pieces beyond the break only. */
  | { readonly kind: 'slab'; readonly list: BreakList }
  /** So much to start, so much a piece. */
  | { readonly kind: 'tariff'; readonly tariff: WrittenTariff }
  /** Prices of breaks raised until the edges are clean. */
  | { readonly kind: 'softened'; readonly list: BreakList }
  /** Breaks moved down until the edges are clean. */
  | { readonly kind: 'shifted'; readonly list: BreakList };

/**
 * @param n whole pieces
 * @returns what the buyer of n pieces pays, whole minor units; null under the first break
 */
export function sellingTotal(selling: Selling, n: number): MinorUnits | null {
  switch (selling.kind) {
    case 'asListed':
    case 'softened':
    case 'shifted':
      return breakTotal(selling.list, n);
    case 'cap':
      return capped(selling.list, n);
    case 'slab':
      return slabbed(selling.list, n);
    case 'tariff':
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
