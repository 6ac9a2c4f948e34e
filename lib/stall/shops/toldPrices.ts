import { goodsKey } from '@/lib/stall/goodsKey';
import { newestFirst } from '@/lib/stall/newestFirst';
import { fromMinor, type MinorUnits } from '@/shared/money';
import type { Entry } from '@/shared/schemas/happened';
import type { Shop } from '@/shared/schemas/shop';
import type { StallGoods } from '@/shared/schemas/stallDay';
import type { ShopPrice, ShopStatement } from '@/shared/schemas/stallEvents';
import { shelfKey } from './shelfKey';

/** What tells a price of a shop. */
type Telling = Entry<'shopStatement', ShopStatement> | Entry<'shopPrice', ShopPrice>;

/** What a shop asks for one by `shelfKey`, whole minor units. */
export type ToldPrices = ReadonlyMap<string, { readonly currency: string; readonly minor: number }>;

/** A price of a shop, as it is written there. */
export interface AtShop {
  readonly shop: string;
  /** Currency units. */
  readonly price: number;
}

/** @returns what was noted of a shop, the last first: by the day it is of, else as it was noted. */
export const ofShop = <Noted extends Dated & { readonly body: { readonly shopId: string } }>(
  shopId: string,
  noted: readonly Noted[],
): readonly Noted[] => noted.filter(({ body }) => body.shopId === shopId).toSorted(lastFirst);

/**
 * @param telling what one shop told in statements and what was agreed with it, in any order
 * @returns what it asks by the last of them that told
 */
export function toldPrices(telling: readonly Telling[]): ToldPrices {
  const told = new Map<string, { readonly currency: string; readonly minor: number }>();
  for (const { body } of telling.toSorted(lastFirst)) {
    for (const { goods, grade, eachMinor } of 'rows' in body ? body.rows : [body]) {
      const key = shelfKey(goods, grade);
      if (eachMinor > 0 && !told.has(key)) told.set(key, { currency: body.currency, minor: eachMinor });
    }
  }
  return told;
}

/**
 * @param telling of all shops, in any order
 * @param currency of the stall; what a shop asks in another one is held against nothing
 * @returns the most that a shop asked last for such goods that are no seconds; null where none told. Shops that were
 *   put away count no more.
 */
export function dearestAtShops(
  shops: Readonly<Record<string, Shop>>,
  telling: readonly Telling[],
  currency: string,
): (goods: StallGoods) => AtShop | null {
  const told = Object.entries(shops)
    .filter(([, { archivedOn }]) => archivedOn === null)
    .map(([shopId, { name }]) => {
      const own = telling.filter(({ body }) => body.shopId === shopId);
      return { shop: name, prices: toldPrices(own) };
    });
  const dearest = new Map<string, AtShop | null>();
  return (goods) => {
    const key = goodsKey(goods);
    const before = dearest.get(key);
    if (before !== undefined) return before;
    const asked = told.flatMap(({ shop, prices }) => {
      const each = prices.get(shelfKey(goods, 'first'));
      return each?.currency === currency
        ? [{ shop, price: fromMinor(each.minor as MinorUnits, currency) }]
        : [];
    });
    const found = dearestOf(asked);
    dearest.set(key, found);
    return found;
  };
}

/** @returns the dearest of some prices; null where there are none. */
export const dearestOf = (asked: readonly AtShop[]): AtShop | null =>
  asked.reduce<AtShop | null>((most, one) => (most === null || one.price > most.price ? one : most), null);

// Helpers

type Dated = Pick<Entry, 'id' | 'at' | 'count'> & { readonly body: { readonly day: string } };

const lastFirst = (one: Dated, other: Dated): number =>
  laterDayFirst(one.body.day, other.body.day) ||
  other.at - one.at ||
  other.count - one.count ||
  newestFirst(one, other);

/** Days stand in a form that sorts as text. */
const laterDayFirst = (one: string, other: string): number => (other < one ? -1 : other > one ? 1 : 0);
