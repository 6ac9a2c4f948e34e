import type { Pile } from '@/lib/stock/foldStock';
import type { StallGoods } from '@/shared/schemas/stallDay';
import type { ShopPrice, ShopStatement } from '@/shared/schemas/stallEvents';
import type {
  StockCount,
  StockGrade,
  StockItem,
  StockMove,
  StockPlace,
  StockTransfer,
} from '@/shared/schemas/stock';

type Noted =
  | { readonly kind: 'stockCount'; readonly body: StockCount }
  | { readonly kind: 'stockMove'; readonly body: StockMove }
  | { readonly kind: 'stockTransfer'; readonly body: StockTransfer }
  | { readonly kind: 'shopPrice'; readonly body: ShopPrice }
  | { readonly kind: 'shopStatement'; readonly body: ShopStatement };

const HOME: StockPlace = { kind: 'home' };

const shopPlace = (name: string): StockPlace => ({ kind: 'shop', name });

/** What lies in stock of some goods that are finished. */
const finishedItem = ({ jobId, lineId, size }: StallGoods): StockItem => ({
  kind: 'finished',
  ...{ jobId, lineId, size },
});

interface GoodsOut {
  readonly goods: StallGoods;
  readonly grade: StockGrade;
  readonly quantity: number;
  /** How many lay at home before, as somebody counted just now; null where that is known. */
  readonly counted: number | null;
  /** What the shop is to ask for one, and by which day that was agreed; null where nothing was. */
  readonly agreed: Pick<ShopPrice, 'shopId' | 'day' | 'currency' | 'eachMinor'> | null;
}

/**
 * @returns what is noted when goods go from home to a shop in their grade: the count that comes first, the way there,
 * and the price agreed
 */
export function outEntries(
  shop: string,
  { goods, grade, quantity, counted, agreed }: GoodsOut,
): readonly Noted[] {
  const item = finishedItem(goods);
  const home = { item, place: HOME, grade };
  return [
    ...(counted === null ? [] : [{ kind: 'stockCount', body: { ...home, quantity: counted } } as const]),
    { kind: 'stockTransfer', body: { from: home, to: { ...home, place: shopPlace(shop) }, quantity } },
    ...(agreed === null ? [] : [{ kind: 'shopPrice', body: { ...agreed, goods, grade } } as const]),
  ];
}

/** @returns what is noted when goods come home from a shop, in the grade in which they lay there. */
export const backEntries = (
  shop: string,
  rows: readonly {
    readonly goods: StallGoods;
    readonly grade: 'first' | 'second';
    readonly quantity: number;
  }[],
): readonly Noted[] =>
  rows
    .filter(({ quantity }) => quantity > 0)
    .map(({ goods, grade, quantity }) => {
      const there = { item: finishedItem(goods), place: shopPlace(shop), grade };
      return { kind: 'stockTransfer', body: { from: there, to: { ...there, place: HOME }, quantity } };
    });

/**
 * A statement and what it takes off the shop's shelf, written in one step. The moves name the shop, so that they are
 * found again when the statement is taken back.
 */
export const statementEntries = (shop: string, statement: ShopStatement): readonly Noted[] => [
  { kind: 'shopStatement', body: statement },
  ...statement.rows.flatMap(({ goods, grade, sold, missing }) =>
    (
      [
        [sold, 'sold'],
        [missing, 'lost'],
      ] as const
    ).flatMap(([quantity, cause]): readonly Noted[] =>
      quantity === 0
        ? []
        : [
            {
              kind: 'stockMove',
              body: {
                item: finishedItem(goods),
                place: shopPlace(shop),
                grade,
                quantity: -quantity,
                cause,
                reference: { kind: 'shop', id: statement.shopId },
                unitCost: null,
              },
            },
          ],
    ),
  ),
];

/**
 * @param names every name of the shop
 * @returns what brings everything that lies under another name of a shop, or is missing there, under this one
 */
export const gatheredAt = (
  name: string,
  names: ReadonlySet<string>,
  piles: readonly Pile[],
): readonly Noted[] =>
  piles.flatMap(({ item, place, grade, quantity }) => {
    if (place.kind !== 'shop' || place.name === name || !names.has(place.name) || quantity === 0) return [];
    const here = { item, place, grade };
    const there = { item, place: shopPlace(name), grade };
    const body =
      quantity < 0 ? { from: there, to: here, quantity: -quantity } : { from: here, to: there, quantity };
    return [{ kind: 'stockTransfer', body }];
  });
