import type { DayPrice, StallGoods } from '@/shared/schemas/stallDay';

/**
 * The price typed for some goods: that of their own size, else the one that holds for every size without its own.
 *
 * @returns currency units as written; null where none is typed
 */
export function dayPriceOf(prices: readonly DayPrice[], { jobId, lineId, size }: StallGoods): number | null {
  const own = prices.filter((price) => price.jobId === jobId && price.lineId === lineId);
  return (
    (own.find((price) => price.size === size) ?? own.find((price) => price.size === null))?.price ?? null
  );
}
