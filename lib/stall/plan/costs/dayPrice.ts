import type { Line } from '@/shared/schemas/job';
import type { StallDay, StallGoods } from '@/shared/schemas/stallDay';
import { dayPriceOf } from './dayPriceOf';

/**
 * The price of a piece at the stall, as the way of selling writes it: that of the day for its size, else that of the
 * day for all sizes, else the one its job asks.
 *
 * @returns currency units; null where nobody has decided one
 */
export function dayPrice(
  { prices }: Pick<StallDay, 'prices'>,
  goods: StallGoods,
  line: Pick<Line, 'askedPrice' | 'upCharges'>,
): number | null {
  const ofDay = dayPriceOf(prices.own, goods);
  if (ofDay !== null) return ofDay;
  if (line.askedPrice === null) return null;
  return line.upCharges
    .filter((charge) => charge.size === goods.size)
    .reduce((price, { amount }) => price + amount, line.askedPrice);
}
