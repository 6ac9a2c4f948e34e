import { fromMinor, type MinorUnits, toMinor, toPriceUnder } from '@/shared/money';
import type { StallPlan } from '@/shared/schemas/stallPapers';
import { cashOf } from '@/shared/tables/coins';

/**
 * What a second costs: its share of the price, rounded down to what prices of a stall end on, so that no coins are needed
 * for it that no other price needs. Where nothing would be left of it, and where no coins are known, to the minor unit.
 *
 * @param minor the price of a piece of first grade just then, whole minor units
 * @returns whole minor units; null where the plan has no price for seconds
 */
export function secondPrice(
  { secondsShare, currency }: Pick<StallPlan, 'secondsShare' | 'currency'>,
  minor: number,
): number | null {
  if (secondsShare === undefined) return null;
  const exact = toMinor(fromMinor(minor as MinorUnits, currency) * secondsShare, currency);
  const step = cashOf(currency)?.priceStep ?? null;
  const ending = step === null ? 0 : toPriceUnder(minor * secondsShare, step, currency);
  return ending === 0 ? exact : ending;
}
