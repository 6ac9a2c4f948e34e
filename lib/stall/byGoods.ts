import type { StallGoods } from '@/shared/schemas/stallDay';
import type { StockItem } from '@/shared/schemas/stock';
import { goodsKey } from './goodsKey';

/**
 * @param all piles, moves or the like; what is of no goods is left out
 * @returns reads those of some goods, in their order; all are looked through once
 */
export function byGoods<Of>(
  all: readonly Of[],
  itemOf: (one: Of) => StockItem,
): (goods: StallGoods) => readonly Of[] {
  const found = new Map<string, Of[]>();
  for (const one of all) {
    const item = itemOf(one);
    if (item.kind !== 'finished') continue;
    const key = goodsKey(item);
    const own = found.get(key);
    if (own === undefined) found.set(key, [one]);
    else own.push(one);
  }
  return (goods) => found.get(goodsKey(goods)) ?? [];
}
