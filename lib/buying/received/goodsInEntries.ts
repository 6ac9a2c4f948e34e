import type { SupplyItem } from '@/shared/schemas/making/supply';
import type { GoodsIn } from '@/shared/schemas/making/supplyEvents';
import type { StockItem, StockMove } from '@/shared/schemas/stock';

type Noted =
  | { readonly kind: 'goodsIn'; readonly body: GoodsIn }
  | { readonly kind: 'stockMove'; readonly body: StockMove };

/**
 * A delivery and what of it lies at home from now on, written in one step. Faulty ones are counted and never laid into
 * stock: they go back, or away. What they cost is what the bill asks for all that were counted, whole and without freight: of a hundred sheets one
 * costs no whole number of cents.
 */
export const goodsInEntries = (goodsIn: GoodsIn): readonly Noted[] => [
  { kind: 'goodsIn', body: goodsIn },
  ...goodsIn.rows.flatMap((row): readonly Noted[] => {
    const usable = Number((row.counted - row.faulty).toPrecision(12));
    if (!(usable > 0)) return [];
    return [
      {
        kind: 'stockMove',
        body: {
          item: stockItemOf(row.item, row.lot),
          place: { kind: 'home' },
          grade: 'first',
          quantity: usable,
          cause: 'bought',
          reference: goodsIn.supplierId === null ? null : { kind: 'supplier', id: goodsIn.supplierId },
          unitCost:
            row.amountMinor === null
              ? null
              : { minor: row.amountMinor, currency: goodsIn.currency, per: row.counted },
        },
      },
    ];
  }),
];

/** @returns what lies in stock of something that is bought. */
const stockItemOf = (item: SupplyItem, lot: string | null): StockItem =>
  item.kind === 'blank' ? { ...item, lot } : item;
