import type { StockNeed } from '@/lib/stock/reserved';
import type { BuyingList } from '@/shared/schemas/making/supply';
import { workKey } from './openWork';

/**
 * What of the stock is others': all that takes before some works do. Were everything kept from everybody, two lists
 * would both buy what lies here for either.
 *
 * @param works theirs is left out; works that nobody has planned or accepted come last
 */
export function neededBefore(
  needs: readonly StockNeed[],
  works: BuyingList['works'],
): readonly Pick<StockNeed, 'item' | 'quantity'>[] {
  const own = new Set(works.map(workKey));
  const isOwn = (need: StockNeed) => own.has(workKey(need));
  const place = Math.min(...needs.filter(isOwn).map((need) => need.place));
  return needs
    .filter((need) => !isOwn(need) && need.place <= place)
    .map(({ item, quantity }) => ({ item, quantity }));
}
