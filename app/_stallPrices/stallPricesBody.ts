import { usableLocale } from '@/app/_words/usableLocale';
import type { StallPricesBody } from '@/lib/papers/bodies/stallPricesPaper';
import { dayPriceOf } from '@/lib/stall/prices/dayPriceOf';
import { priceRows } from '@/lib/stall/prices/priceRows';
import { toMinor } from '@/shared/money';
import type { PricesPart } from './pricesOnScreen';

interface Wanted {
  readonly page: StallPricesBody['page'];
  readonly offersOrders: boolean;
  readonly isLate: boolean;
}

/** @returns what stands on the list and on the cards: goods that come along; null while there is no plan. */
export function stallPricesBody(
  { workspace, stallDay, answer }: PricesPart,
  { page, offersOrders, isLate }: Wanted,
): StallPricesBody | null {
  const { workshop } = workspace;
  const { prices } = stallDay;
  const channel = workshop.channels.find(({ id }) => id === stallDay.channelId);
  if (answer === null || channel === undefined || channel.taxMode === null) return null;
  const { currency } = answer;
  const late = isLate ? prices.lastHour : null;
  const goods = answer.goods
    .filter(({ mine }) => mine > 0)
    .map((one) => ({
      ...one,
      minor: toMinor((late === null ? null : dayPriceOf(late.prices, one)) ?? one.price, currency),
    }));
  return {
    page,
    offersOrders,
    currency,
    locale: usableLocale(workshop.locale),
    language: 'en',
    seller: {
      name: workshop.seller.name.trim() === '' ? workshop.name : workshop.seller.name,
      tagline: workshop.seller.tagline,
    },
    taxMode: channel.taxMode,
    fromMinute: late?.fromMinute ?? null,
    rows: priceRows(stallDay.ranges, goods),
    sets: prices.sets.flatMap(({ name, sizes, rangeIds, price }) =>
      price === null ? [] : [{ name, sizes, rangeIds, minor: toMinor(price, currency) }],
    ),
  };
}
