import { tierAt } from '@/lib/buying/tierAt';
import { sameItem } from '@/lib/stock/stockKey';
import type { Supplier, SupplyItem } from '@/shared/schemas/making/supply';

/**
 * @param quantity how many are bought
 * @returns what a supplier said one costs, currency units, the cheapest where several offers are of it; null where none is
 */
export function offerEach(supplier: Supplier | undefined, item: SupplyItem, quantity: number): number | null {
  const prices = (supplier?.offers ?? []).flatMap((offer) => {
    if (!sameItem(offer.item, item)) return [];
    const tier = tierAt(offer.tiers, quantity);
    return tier === null ? [] : [tier.each];
  });
  return prices.length === 0 ? null : Math.min(...prices);
}
