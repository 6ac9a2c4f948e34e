import { goodsKey } from '@/lib/stall/count/goodsKey';
import { daysBetween } from '@/shared/days';
import { fromMinor, type MinorUnits } from '@/shared/money';
import type { Entry } from '@/shared/schemas/happened';
import type { Shop } from '@/shared/schemas/shop';
import type { StallGoods } from '@/shared/schemas/stallDay';
import type { ShopStatement } from '@/shared/schemas/stallEvents';
import { shelfKey } from './shelfKey';

type Statement = Entry<'shopStatement', ShopStatement>;

/** A price of a shop, as it is written there. */
export interface AtShop {
  readonly shop: string;
  /** Currency units. */
  readonly price: number;
}

/** @returns the statements of a shop, the last first. */
export const statementsOf = (shopId: string, statements: readonly Statement[]): readonly Statement[] =>
  statements
    .filter(({ body }) => body.shopId === shopId)
    .toSorted((a, b) => daysBetween(a.body.day, b.body.day) || b.at - a.at || b.count - a.count);

/**
 * @param statements of one shop, the last first
 * @returns by `shelfKey` what it asked for one by the last statement that told, whole minor units
 */
export function toldPrices(
  statements: readonly Statement[],
): ReadonlyMap<string, { readonly currency: string; readonly minor: number }> {
  const told = new Map<string, { readonly currency: string; readonly minor: number }>();
  for (const { body } of statements) {
    for (const { goods, grade, eachMinor } of body.rows) {
      const key = shelfKey({ ...goods, grade });
      if (eachMinor > 0 && !told.has(key)) told.set(key, { currency: body.currency, minor: eachMinor });
    }
  }
  return told;
}

/**
 * @param currency of the stall; what a shop asks in another one is held against nothing
 * @returns the most that a shop asked last for such goods that are no seconds; null where none told. Shops that were
 *   put away count no more.
 */
export function dearestAtShops(
  shops: Readonly<Record<string, Shop>>,
  statements: readonly Statement[],
  currency: string,
): (goods: StallGoods) => AtShop | null {
  const told = Object.entries(shops)
    .filter(([, { archivedOn }]) => archivedOn === null)
    .map(([shopId, { name }]) => ({ shop: name, prices: toldPrices(statementsOf(shopId, statements)) }));
  const dearest = new Map<string, AtShop | null>();
  return (goods) => {
    const key = goodsKey(goods);
    const before = dearest.get(key);
    if (before !== undefined) return before;
    const asked = told.flatMap(({ shop, prices }) => {
      const each = prices.get(shelfKey({ ...goods, grade: 'first' }));
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
