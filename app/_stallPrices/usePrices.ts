import { useMemo } from 'react';
import { sellingTerms } from '@/lib/stall/plan/costs/sellingTerms';
import { type PricesOfDay, pricesOfDay } from '@/lib/stall/prices/pricesOfDay';
import { dearestAtShops } from '@/lib/stall/shops/toldPrices';
import type { PricesPart } from './pricesOnScreen';

/**
 * @param step prices end on whole multiples of it, currency units
 * @returns null while there is no plan, or nobody said how tax stands
 */
export function usePrices({ workspace, stallDay, answer }: PricesPart, step: number): PricesOfDay | null {
  const { shops, workshop, jobs, entries } = workspace;
  const { shopStatement, shopPrice } = entries;
  const { ranges, prices, channelId } = stallDay;
  const { channels, currency } = workshop;
  // Each by what it hangs on: other keys of the day leave it as it is.
  const atShopOf = useMemo(
    () => dearestAtShops(shops, [...shopStatement, ...shopPrice], currency),
    [shops, shopStatement, shopPrice, currency],
  );
  return useMemo(() => {
    const channel = channels.find(({ id }) => id === channelId);
    const terms = channel === undefined ? null : sellingTerms(channel);
    if (answer === null || terms === null) return null;
    const lines = new Map(jobs.map(({ id, job }) => [id, job.lines] as const));
    return pricesOfDay({
      ...{ answer, stallDay: { ranges, prices }, terms, atShopOf, step },
      ceilingOf: ({ jobId, lineId }) =>
        lines.get(jobId)?.find(({ id }) => id === lineId)?.marketCeiling ?? null,
    });
  }, [answer, ranges, prices, channels, channelId, jobs, atShopOf, step]);
}
