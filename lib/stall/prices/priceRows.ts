import { designKey } from '@/lib/stall/designKey';
import type { StallGoods } from '@/shared/schemas/stallDay';

/** Goods with the price that is asked for them, whole minor units. */
export interface PricedGoods extends StallGoods {
  readonly rangeId: string;
  readonly design: string;
  readonly minor: number;
}

/** One price of a range, as a list at the stall has it. */
export interface PriceRow {
  readonly rangeId: string;
  readonly range: string;
  readonly designs: readonly string[];
  /** Null where it holds for all sizes of these designs. */
  readonly sizes: readonly string[] | null;
  /** Whether these sizes are the last ones, so that it holds from the first of them on. */
  readonly isFrom: boolean;
  /** Whether sizes between them are left out. */
  readonly hasGap: boolean;
  readonly minor: number;
  readonly goods: readonly StallGoods[];
}

/**
 * Prices with as few rows as tell them all: designs that agree on every size they share stand together, and of these the
 * sizes of one price.
 *
 * @param ranges in the order of the list
 * @param goods in the order of their sizes
 */
export const priceRows = (
  ranges: readonly { readonly id: string; readonly name: string }[],
  goods: readonly PricedGoods[],
): readonly PriceRow[] =>
  ranges.flatMap(({ id, name }) =>
    agreeing(goods.filter(({ rangeId }) => rangeId === id)).flatMap((group) => rowsOf(id, name, group)),
  );

// Helpers

/** @returns designs that have no size at two prices, together. */
function agreeing(goods: readonly PricedGoods[]): readonly (readonly PricedGoods[])[] {
  const designs = new Map<string, PricedGoods[]>();
  for (const one of goods) {
    const key = designKey(one);
    designs.set(key, [...(designs.get(key) ?? []), one]);
  }
  const groups: PricedGoods[][] = [];
  for (const own of designs.values()) {
    const same = groups.find((group) =>
      own.every(({ size, minor }) => group.every((other) => other.size !== size || other.minor === minor)),
    );
    if (same === undefined) groups.push([...own]);
    else same.push(...own);
  }
  return groups;
}

function rowsOf(rangeId: string, range: string, group: readonly PricedGoods[]): readonly PriceRow[] {
  const sizes = [...new Set(group.map(({ size }) => size))];
  const prices = [...new Set(group.map(({ minor }) => minor))];
  return prices.map((minor) => {
    const at = group.filter((one) => one.minor === minor);
    const own = sizes.filter((size) => at.some((one) => one.size === size));
    return {
      rangeId,
      range,
      designs: [...new Set(at.map(({ design }) => design))],
      sizes: own.length === sizes.length ? null : own,
      isFrom: own.every((size, place) => size === sizes[sizes.length - own.length + place]),
      hasGap: own.some((size, place) => size !== sizes[sizes.indexOf(own[0] ?? '') + place]),
      minor,
      goods: at.map(({ jobId, lineId, size }) => ({ jobId, lineId, size })),
    };
  });
}
