import { designKey } from '@/lib/stall/designKey';
import { lossUnsold } from '@/lib/stall/lossUnsold';
import type { GoodsReckoned } from '@/lib/stall/plan/goodsReckoned';

/** What pieces take of each limit, and what there is of it. */
export interface Room {
  readonly pieces: number;
  /** Currency units for materials and packaging. */
  readonly cash: number;
}

/** Pieces of some goods, what each earns in the mean, and what it takes; each further one earns no more than the last. */
export interface LimitedGoods {
  /** Place among all goods. */
  readonly at: number;
  readonly most: number;
  /** Pieces of it without which nothing of its design is pressed: 0 or 1. */
  readonly least: number;
  /** Of the most, how many lie finished: these come along without the least of other sizes. */
  readonly finished: number;
  /** @param piece the first is 1 */
  readonly worthOf: (piece: number) => number;
  readonly cashOf: (piece: number) => number;
  /** Of the first so many together. */
  readonly worthOfAll: (pieces: number) => number;
  readonly cashOfAll: (pieces: number) => number;
}

export type LimitedDesign = readonly LimitedGoods[];

/** Sizes that whoever stops at a table looks for first: a design is pressed with them or not at all. */
const leastSizes: readonly string[] = ['M', 'L', 'XL'];

/**
 * @param wanted pieces without limits, by the order of the goods; of a design that has none nothing is brought
 * @param leftOut designs, by `designKey`, of which only these come along, without the sizes that a design needs
 */
export function limitedDesigns(
  goods: readonly GoodsReckoned[],
  wanted: readonly number[],
  leftOut: ReadonlySet<string>,
): readonly LimitedDesign[] {
  const places = new Map<string, number[]>();
  for (const [at, each] of goods.entries()) {
    const key = designKey(each);
    places.set(key, [...(places.get(key) ?? []), at]);
  }
  return [...places.values()]
    .filter((of) => of.some((at) => (wanted[at] ?? 0) > 0))
    .map((of) =>
      of.flatMap((at) => {
        const each = goods[at];
        if (each === undefined) return [];
        const isNeeded = leastSizes.includes(each.size) && each.expected > 0;
        const least = isNeeded && !leftOut.has(designKey(each)) ? 1 : 0;
        return [limitedGoods(each, at, least, wanted[at] ?? 0)];
      }),
    );
}

// Helpers

/**
 * One is made of a middle size even where the rule asks for none. A finished piece loses nothing by staying unsold: its
 * cost is spent. One from home earns what it brings over its leftover value, as in the plan, and pays no overhead.
 */
function limitedGoods(each: GoodsReckoned, at: number, least: 0 | 1, wanted: number): LimitedGoods {
  const { demand, underage, overage, atHome, finishedBefore, packaging, cash } = each;
  const sold = underage + overage;
  const soldFromHome = each.contribution + lossUnsold(each);
  const pressed = (pieces: number) => Math.max(0, pieces - atHome);
  return {
    ...{ at, least, most: Math.max(wanted, least), finished: Math.min(wanted, atHome) },
    worthOf: (piece) =>
      (1 - demand.chanceUpTo(piece - 1)) * (piece > finishedBefore ? sold : soldFromHome) -
      (piece > atHome ? overage : 0),
    cashOf: (piece) => packaging + (piece > atHome ? cash : 0),
    worthOfAll: (pieces) =>
      demand.sold(pieces) * sold +
      demand.sold(Math.min(pieces, finishedBefore)) * (soldFromHome - sold) -
      pressed(pieces) * overage,
    cashOfAll: (pieces) => pieces * packaging + pressed(pieces) * cash,
  };
}
