import type { Purchase } from './buyingPlan';
import { cheapestRaise } from './cheapestRaise';
import type { Way } from './waysToBuy';

/** What a supplier asks of an order, whole minor units. */
export interface BasketTerms {
  /** Null where nobody has said: it is in no sum then. */
  readonly freightMinor: number | null;
  /** Goods from which freight is free; null where it never is. */
  readonly freeFromMinor: number | null;
  /** The least that goods come to; null where there is no such. */
  readonly minimumMinor: number | null;
}

/** What is meant to be bought of one supplier. */
export interface Basket {
  readonly supplierId: string | null;
  readonly things: readonly {
    /** Place of the thing. */
    readonly at: number;
    readonly way: Way;
    readonly purchase: Purchase;
    readonly isHeld: boolean;
  }[];
  readonly terms: BasketTerms;
}

export interface FilledBasket extends Basket {
  readonly goodsMinor: number;
  /** Null where nobody has said. */
  readonly freightMinor: number | null;
  readonly freightIsFree: boolean;
  /** What is lacking to the least order; 0 where it is reached. */
  readonly shortMinor: number;
  /** What another filling might spare at most; 0 where none is cheaper. */
  readonly overMinor: number;
}

/**
 * Reaches the least order by what costs least, and free freight too where that costs less than the freight. What the
 * maker holds at a number stays at it.
 *
 * @param isMixed whether more of several things is looked at; else of one alone, which is never cheaper
 */
export function fillBasket(basket: Basket, currency: string, isMixed = true): FilledBasket {
  const { freightMinor, freeFromMinor, minimumMinor } = basket.terms;
  const filled = (goalMinor: number, why: 'minimum' | 'freight') =>
    filledTo(basket, goalMinor, { why, currency, isMixed });
  const large = filled(minimumMinor ?? 0, 'minimum') ?? { basket, overMinor: 0 };
  const isFreeAnyway = freeFromMinor !== null && goodsOf(large.basket) >= freeFromMinor;
  const free = isFreeAnyway
    ? large
    : freeFromMinor === null
      ? null
      : filled(Math.max(freeFromMinor, minimumMinor ?? 0), 'freight');
  // Nothing more is bought to be freed of what costs nothing, or nobody knows what.
  const isFree =
    free !== null && (isFreeAnyway || goodsOf(free.basket) < goodsOf(large.basket) + (freightMinor ?? 0));
  const best = isFree ? free : large;
  const goodsMinor = goodsOf(best.basket);
  // With what is short as if it were paid: a filling not mixed to its end tells where it might have won.
  const paidFor = (one: Filled, freight: number) =>
    Math.max(goodsOf(one.basket), minimumMinor ?? 0) + freight;
  const leastMinor = Math.min(
    paidFor(large, isFreeAnyway ? 0 : (freightMinor ?? 0)) - large.overMinor,
    free === null ? Number.POSITIVE_INFINITY : paidFor(free, 0) - free.overMinor,
  );
  return {
    ...best.basket,
    goodsMinor,
    freightMinor: isFree ? 0 : freightMinor,
    freightIsFree: isFree,
    shortMinor: Math.max(0, (minimumMinor ?? 0) - goodsMinor),
    overMinor: Math.max(0, paidFor(best, isFree ? 0 : (freightMinor ?? 0)) - leastMinor),
  };
}

// Helpers

const goodsOf = ({ things }: Basket): number =>
  things.reduce((sum, { purchase }) => sum + (purchase.amountMinor ?? 0), 0);

interface Filled {
  readonly basket: Basket;
  readonly overMinor: number;
}

interface Filling {
  readonly why: 'minimum' | 'freight';
  readonly currency: string;
  readonly isMixed: boolean;
}

/** @returns the basket with what is more of it; null where nothing can fill it, or it lacks more than it comes to. */
function filledTo(basket: Basket, goalMinor: number, { why, currency, isMixed }: Filling): Filled | null {
  const goods = goodsOf(basket);
  const lackingMinor = goalMinor - goods;
  if (lackingMinor <= 0) return { basket, overMinor: 0 };
  // Two shirts are not made fifty for the sake of a least order: that is the maker's to decide.
  if (lackingMinor > goods) return null;
  const raise = cheapestRaise(basket.things, lackingMinor, currency, isMixed);
  if (raise === null) return null;
  const things = basket.things.map((thing, place) => {
    const purchase = raise.purchases.get(place);
    return purchase === undefined ? thing : { ...thing, purchase: { ...purchase, more: why } };
  });
  return { basket: { ...basket, things }, overMinor: raise.overMinor };
}
