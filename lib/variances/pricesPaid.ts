import type { RunFacts } from '@/lib/making/runFacts';
import { billedEach, paidEach } from '@/lib/stock/billedEach';
import { stockKey } from '@/lib/stock/stockKey';
import type { SupplyItem } from '@/shared/schemas/making/supply';
import type { GoodsIn } from '@/shared/schemas/making/supplyEvents';
import type { PricesPaid } from './runActuals';

/** The price of one of something, as a delivery had it. */
export interface PricePaid {
  readonly item: SupplyItem;
  /** Currency units. */
  readonly each: number;
  readonly day: string;
}

/** With the delivery that tells it. */
interface PriceTold extends PricePaid {
  readonly by: GoodsIn;
}

/**
 * What one of each thing cost in the newest delivery that tells, without freight.
 *
 * @param deliveries in force, in the store's one order
 * @param currency deliveries in another tell nothing
 * @param until the last day that counts; null counts all
 */
export function newestPrices(
  deliveries: readonly GoodsIn[],
  currency: string,
  until: string | null,
): readonly PriceTold[] {
  const found = new Map<string, PriceTold>();
  for (const delivery of deliveries) {
    const { day } = delivery;
    if (delivery.currency !== currency || (until !== null && day > until)) continue;
    for (const { item, eachMinor } of billedEach(delivery)) {
      const key = stockKey(item);
      if ((found.get(key)?.day ?? '') > day) continue;
      found.set(key, { item, each: paidEach(eachMinor, currency), day, by: delivery });
    }
  }
  return [...found.values()];
}

/** @returns the same by blank and size, and by sheet. */
function pricesPaid(prices: readonly PricePaid[]): PricesPaid {
  const eachOf = (isIt: (item: SupplyItem) => boolean) => prices.find(({ item }) => isIt(item))?.each ?? null;
  return {
    blank: (blankId, size) =>
      eachOf((item) => item.kind === 'blank' && item.blankId === blankId && item.size === size),
    sheet: (sheetId) => eachOf((item) => item.kind === 'paper' && item.sheetId === sheetId),
  };
}

/**
 * What was paid for what a run is made of: by the newest delivery up to the day it was closed on. What is bought later is
 * not in its pieces, and a run that is closed stays as it came out.
 *
 * @param deliveries in force, in the store's one order
 * @param currency of the run's standard
 */
export function paidForRun(
  deliveries: readonly GoodsIn[],
  currency: string,
  { steps, isClosed }: Pick<RunFacts, 'steps' | 'isClosed'>,
): PricesPaid {
  const closed = steps.findLast(({ body: { step } }) => step.what === 'closed')?.body.day ?? null;
  return pricesPaid(newestPrices(deliveries, currency, isClosed ? closed : null));
}
