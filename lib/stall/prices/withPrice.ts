import { designKey } from '@/lib/stall/designKey';
import { dayPriceOf } from '@/lib/stall/plan/costs/dayPriceOf';
import type { DayPrice, StallGoods } from '@/shared/schemas/stallDay';

/**
 * Prices of a day after some goods were given another one.
 *
 * @param goods all that are to have it
 * @param isAllSizes whether these are all sizes of their designs: then one price holds for each design
 * @param price currency units; null lets them follow what holds without a price of their own
 */
export function withPrice(
  prices: readonly DayPrice[],
  goods: readonly StallGoods[],
  isAllSizes: boolean,
  price: number | null,
): DayPrice[] {
  const isOf = (one: DayPrice) => (named: StallGoods) =>
    designKey(named) === designKey(one) && (isAllSizes || one.size === named.size);
  const others = prices.filter((one) => !goods.some(isOf(one)));
  if (price === null) return others;
  const lines = isAllSizes
    ? [...new Map(goods.map((one) => [designKey(one), { ...one, size: null }])).values()]
    : // One that has it by the price of its design needs none of its own.
      goods.filter((one) => dayPriceOf(others, one) !== price);
  return [...others, ...lines.map(({ jobId, lineId, size }) => ({ jobId, lineId, size, price }))];
}
