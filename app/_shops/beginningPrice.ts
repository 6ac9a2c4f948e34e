import type { PriceBegun } from '@/app/_words/stall/shopWords';
import { priceElsewhere } from '@/lib/stall/shops/priceElsewhere';
import { shelfKey } from '@/lib/stall/shops/shelfKey';
import type { ShelfGoods } from '@/lib/stall/shops/shopStanding';
import { fromMinor, type MinorUnits } from '@/shared/money';
import type { ShopOnScreen } from './shopOnScreen';

/**
 * What a shop is to ask for goods that are brought there, until another price is typed: what it asks for them already
 * or asked until they were gone, else what the maker asks elsewhere. Of seconds nobody else sells a price is not known.
 */
export function beginningPrice(
  { workspace, shop, standing }: ShopOnScreen,
  goods: Pick<ShelfGoods, 'jobId' | 'lineId' | 'size' | 'grade'>,
): PriceBegun | null {
  const { currency, channels } = workspace.workshop;
  const unitsOf = (minor: number) => fromMinor(minor as MinorUnits, currency);
  const there = standing.prices.get(shelfKey(goods, goods.grade));
  if (there?.currency === currency) return { price: unitsOf(there.minor), from: 'shop', title: '' };
  if (goods.grade !== 'first') return null;
  const taxMode = channels.find(({ id }) => id === shop.channelId)?.taxMode ?? null;
  const found = priceElsewhere(goods, { currency, taxMode }, workspace.papers);
  return found === null ? null : { price: unitsOf(found.minor), from: found.on, title: found.title };
}
