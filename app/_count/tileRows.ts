import { besideWords, hasSizes, rowPriceWords, shortAmount } from '@/app/_words/stall/count/countWords';
import { priceNow } from '@/lib/stall/count/priceNow';
import type { WallTime } from '@/lib/stall/count/sellingTime';
import { designKey } from '@/lib/stall/designKey';
import { goodsKey } from '@/lib/stall/goodsKey';
import type { PlannedGoods, StallPlan } from '@/shared/schemas/stallPapers';

/** What one tile sells, the same object while its price holds. */
export interface TileGoods {
  readonly key: string;
  readonly goods: PlannedGoods;
  /** On the tile: the size, or the design where there are no sizes. */
  readonly label: string;
  /** In words of its own: “Otter L”. */
  readonly name: string;
  /** Whole minor units, by the hour. */
  readonly minor: number;
  readonly price: string;
  /** False where the plan that is counted by does not name it: how many are there is not known, so none is ever gone. */
  readonly isPlanned: boolean;
}

/** Tiles that stand together: the sizes of a design, or the designs of goods without sizes. */
export interface TileRow {
  readonly id: string;
  readonly name: string;
  readonly prices: string;
  readonly hasSizes: boolean;
  readonly tiles: readonly TileGoods[];
}

/**
 * @param beside goods that were tapped and that the plan does not name
 * @returns the rows in the order of the plan: by range, then by design; last what is beside it
 */
export function tileRows(
  plan: StallPlan,
  beside: readonly PlannedGoods[],
  wall: WallTime,
  locale: string,
): readonly TileRow[] {
  const others = beside.map((goods) => {
    const tile = tileOf(goods, hasSizes(plan.ranges, goods.rangeId));
    return { ...tile, label: tile.name, isPlanned: false };
  });
  const planned = plan.ranges.flatMap((range) => {
    const goods = plan.goods.filter(({ rangeId }) => rangeId === range.id);
    const isSized = hasSizes(plan.ranges, range.id);
    const tiles = goods.map((one) => tileOf(one, isSized));
    if (tiles.length === 0) return [];
    if (!isSized) return [rowOf(range.id, range.name, tiles)];
    const designs = new Map<string, TileGoods[]>();
    for (const tile of tiles) {
      const id = designKey(tile.goods);
      designs.set(id, [...(designs.get(id) ?? []), tile]);
    }
    return [...designs].map(([id, own]) => rowOf(`${range.id}/${id}`, own[0]?.goods.design ?? '', own));
  });
  return others.length === 0
    ? planned
    : [...planned, { id: 'beside', name: besideWords, prices: '', hasSizes: false, tiles: others }];

  function tileOf(goods: PlannedGoods, isSized: boolean): TileGoods {
    const minor = priceNow(plan, goods, wall);
    return {
      key: goodsKey(goods),
      goods,
      label: isSized ? goods.size : goods.design,
      name: isSized ? `${goods.design} ${goods.size}` : goods.design,
      minor,
      price: shortAmount(minor, plan.currency, locale),
      isPlanned: true,
    };
  }

  function rowOf(id: string, name: string, tiles: readonly TileGoods[]): TileRow {
    const isSized = hasSizes(plan.ranges, tiles[0]?.goods.rangeId ?? '');
    const prices = rowPriceWords(
      tiles.map(({ label, minor }) => ({ name: label, minor })),
      plan.currency,
      locale,
    );
    return { id, name, prices, hasSizes: isSized, tiles };
  }
}
