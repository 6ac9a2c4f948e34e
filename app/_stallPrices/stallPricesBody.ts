import { usableLocale } from '@/app/_words/usableLocale';
import type { StallPricesBody } from '@/lib/papers/bodies/stallPricesPaper';
import { dayPriceOf } from '@/lib/stall/plan/costs/dayPriceOf';
import { priceRows } from '@/lib/stall/prices/priceRows';
import type { PricesOfDay } from '@/lib/stall/prices/pricesOfDay';
import { toMinor } from '@/shared/money';
import type { PricesPart } from './pricesOnScreen';

interface Wanted {
  readonly page: StallPricesBody['page'];
  readonly offersOrders: boolean;
  readonly isLate: boolean;
  /** What is said of the prices on the screen. */
  readonly sets: PricesOfDay['sets'];
}

/** @returns what stands on the list and on the cards: goods that come along; null while there is no plan. */
export function stallPricesBody(
  { workspace, stallDay, answer }: PricesPart,
  { page, offersOrders, isLate, sets }: Wanted,
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
    sets: sets.flatMap(({ set: { name, pieces, sizes, rangeIds, price }, lateSingles }) =>
      price === null || (isLate && lateSingles !== null)
        ? []
        : [{ name, pieces, sizes, rangeIds, minor: toMinor(price, currency) }],
    ),
  };
}
