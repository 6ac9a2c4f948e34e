import type { Purchase } from './buyingPlan';
import { purchaseOf, type Way } from './waysToBuy';

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
}

/** More packs than this are not bought to fill an order. */
const MOST_PACKS = 10_000;

/**
 * Reaches the least order by more of one thing, and free freight too where more of a thing costs less than the freight.
 * What the maker holds at a number stays at it.
 */
export function fillBasket(basket: Basket, currency: string): FilledBasket {
  const { freightMinor, freeFromMinor, minimumMinor } = basket.terms;
  const large = filledTo(basket, minimumMinor ?? 0, 'minimum', currency) ?? basket;
  const free = freeFromMinor === null ? null : filledTo(large, freeFromMinor, 'freight', currency);
  // Nothing more is bought to be freed of what costs nothing, or nobody knows what.
  const isFree = free !== null && (free === large || goodsOf(free) < goodsOf(large) + (freightMinor ?? 0));
  const filled = isFree ? free : large;
  const goodsMinor = goodsOf(filled);
  return {
    ...filled,
    goodsMinor,
    freightMinor: isFree ? 0 : freightMinor,
    freightIsFree: isFree,
    shortMinor: Math.max(0, (minimumMinor ?? 0) - goodsMinor),
  };
}

// Helpers

const goodsOf = ({ things }: Basket): number =>
  things.reduce((sum, { purchase }) => sum + (purchase.amountMinor ?? 0), 0);

/** @returns the basket with as much more of one thing as costs least; null where nothing can fill it. */
function filledTo(
  basket: Basket,
  goalMinor: number,
  why: 'minimum' | 'freight',
  currency: string,
): Basket | null {
  const goods = goodsOf(basket);
  if (goods >= goalMinor) return basket;
  const filled = basket.things.flatMap((thing, place) => {
    const more = thing.isHeld ? null : moreOf(thing, goalMinor - goods, currency);
    return more === null ? [] : [{ place, more }];
  });
  const [first, ...others] = filled;
  if (first === undefined) return null;
  const best = others.reduce(
    (least, one) =>
      (one.more.amountMinor ?? 0) - amountAt(basket, one.place) <
      (least.more.amountMinor ?? 0) - amountAt(basket, least.place)
        ? one
        : least,
    first,
  );
  return {
    ...basket,
    things: basket.things.map((thing, place) =>
      place === best.place ? { ...thing, purchase: { ...best.more, more: why } } : thing,
    ),
  };
}

const amountAt = ({ things }: Basket, place: number): number => things[place]?.purchase.amountMinor ?? 0;

/** @returns the fewest packs more of a thing that cost so much more; null where it has no price or no packs. */
function moreOf(
  { way, purchase }: Basket['things'][number],
  lackingMinor: number,
  currency: string,
): Purchase | null {
  const { packSize } = way;
  if (packSize === null || !((purchase.amountMinor ?? 0) > 0)) return null;
  const goal = (purchase.amountMinor ?? 0) + lackingMinor;
  const at = (packs: number) =>
    purchaseOf(way, Number((purchase.quantity + packs * packSize).toPrecision(12)), currency);
  // Fewer packs than at the dearest tier cannot do; a cheaper one goes on from there.
  const dearest = Math.max(...way.tiers.map(({ each }) => each)) / (purchase.each ?? 1);
  const mostMinor = ((purchase.amountMinor ?? 0) / purchase.quantity) * dearest;
  let packs = Math.max(1, Math.floor((goal / mostMinor - purchase.quantity) / packSize));
  while (packs <= MOST_PACKS && (at(packs).amountMinor ?? 0) < goal) packs += 1;
  return packs > MOST_PACKS ? null : at(packs);
}
