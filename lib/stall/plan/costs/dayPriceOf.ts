import { designKey } from '@/lib/stall/designKey';
import type { DayPrice, StallGoods } from '@/shared/schemas/stallDay';

/**
 * The price typed for some goods: that of their own size, else the one that holds for every size without its own.
 *
 * @returns currency units as written; null where none is typed
 */
export function dayPriceOf(prices: readonly DayPrice[], goods: StallGoods): number | null {
  const own = prices.filter((price) => designKey(price) === designKey(goods));
  return (
    (own.find((price) => price.size === goods.size) ?? own.find((price) => price.size === null))?.price ??
    null
  );
}
