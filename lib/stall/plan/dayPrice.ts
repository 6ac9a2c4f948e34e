import type { Line } from '@/shared/schemas/job';
import type { StallDay, StallGoods } from '@/shared/schemas/stallDay';

/**
 * The price of a piece at the stall, as the way of selling writes it: that of the day for its size, else that of the
 * day for all sizes, else the one its job asks.
 *
 * @returns currency units; null where nobody has decided one
 */
export function dayPrice(
  { prices }: Pick<StallDay, 'prices'>,
  { jobId, lineId, size }: StallGoods,
  line: Pick<Line, 'askedPrice' | 'upCharges'>,
): number | null {
  const own = prices.own.filter((one) => one.jobId === jobId && one.lineId === lineId);
  const ofDay = own.find((one) => one.size === size) ?? own.find((one) => one.size === null);
  if (ofDay !== undefined) return ofDay.price;
  if (line.askedPrice === null) return null;
  return line.upCharges
    .filter((charge) => charge.size === size)
    .reduce((price, { amount }) => price + amount, line.askedPrice);
}
