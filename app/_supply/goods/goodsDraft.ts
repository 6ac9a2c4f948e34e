import { deliveryMissing } from '@/app/_words/supply/deliveryWords';
import { sameItem } from '@/lib/stock/stockKey';
import { fromMinor, toMinor } from '@/shared/money';
import { type SupplyItem, supplyItemSchema } from '@/shared/schemas/making/supply';
import type { GoodsIn } from '@/shared/schemas/making/supplyEvents';
import { z } from '@/shared/schemas/z';
import { goodsFaults } from '@/shared/tables/faults';

/** One thing of a delivery as it is typed, and as the browser remembers it. */
export const goodsRowDraftSchema = z.strictObject({
  key: z.string(),
  item: supplyItemSchema,
  /** Null of what nobody ordered. */
  ordered: z.number().nullable(),
  /** Null while nobody counted: it is not noted then. */
  counted: z.number().nullable(),
  faulty: z.number().nullable(),
  fault: z.enum(goodsFaults).nullable(),
  lot: z.string(),
  /** Of all that were counted, currency units; null where the bill is not here yet. */
  amount: z.number().nullable(),
});

export type GoodsRowDraft = Readonly<z.infer<typeof goodsRowDraftSchema>>;

/** @returns a row that nobody counted yet. */
export const uncounted = (key: string, item: SupplyItem, ordered: number | null): GoodsRowDraft => ({
  ...{ key, item, ordered },
  counted: null,
  faulty: null,
  fault: null,
  lot: '',
  amount: null,
});

/**
 * @param asked rows of the order that is answered from now on; none where no order is
 * @returns what was counted, typed or added already, each as that order asks for it, and what else of it is to be counted
 */
export function answering(
  rows: readonly GoodsRowDraft[],
  asked: readonly GoodsRowDraft[],
): readonly GoodsRowDraft[] {
  const kept = rows.filter(isBegun);
  return [
    ...kept.map((row, at) => {
      const isFirst = kept.findIndex((other) => sameItem(other.item, row.item)) === at;
      const of = isFirst ? asked.find(({ item }) => sameItem(item, row.item)) : undefined;
      return { ...row, ordered: of?.ordered ?? null };
    }),
    ...asked.filter(({ item }) => !kept.some((row) => sameItem(row.item, item))),
  ];
}

/**
 * What is counted and has no cost yet, at prices that are known; what nobody counted came as ordered.
 *
 * @param eachOf currency units; null where no price is known, and the row stays as it is
 */
export const atPrices = (
  rows: readonly GoodsRowDraft[],
  eachOf: (row: GoodsRowDraft) => number | null,
  currency: string,
): readonly GoodsRowDraft[] =>
  rows.map((row) => {
    const counted = row.counted ?? row.ordered;
    const each = eachOf(row);
    if (row.amount !== null || counted === null || each === null) return { ...row, counted };
    return { ...row, counted, amount: fromMinor(toMinor(each * counted, currency), currency) };
  });

/** @returns what keeps rows from being noted; undefined once nothing does. */
export function goodsMissing(
  rows: readonly GoodsRowDraft[],
  nameOf: (item: SupplyItem) => string,
): string | undefined {
  const counted = rows.filter((row) => row.counted !== null);
  if (counted.length === 0) return deliveryMissing.rows;
  const beyond = counted.find(({ counted: came, faulty }) => (faulty ?? 0) > (came ?? 0));
  if (beyond !== undefined) return deliveryMissing.faultyBeyond(nameOf(beyond.item));
  const unsaid = counted.find(({ faulty, fault }) => (faulty ?? 0) > 0 && fault === null);
  return unsaid === undefined ? undefined : deliveryMissing.faultUnsaid(nameOf(unsaid.item));
}

/** @returns rows as they are noted; those that nobody counted are still to come. */
export const goodsRows = (rows: readonly GoodsRowDraft[], currency: string): GoodsIn['rows'] =>
  rows.flatMap(({ item, ordered, counted, faulty, fault, lot, amount }, at) => {
    if (counted === null) return [];
    // A second lot of one thing was ordered with the first.
    const isTold = rows.slice(0, at).some((row) => row.counted !== null && sameItem(row.item, item));
    return [
      {
        ...{ item, counted },
        ordered: isTold && ordered === null ? 0 : ordered,
        faulty: faulty ?? 0,
        fault: (faulty ?? 0) > 0 ? fault : null,
        lot: lot.trim() === '' ? null : lot.trim(),
        amountMinor: amount === null ? null : toMinor(amount, currency),
      },
    ];
  });

// Helpers

/** Something stands in it, or the maker put it there. */
const isBegun = ({ ordered, counted, faulty, lot, amount }: GoodsRowDraft): boolean =>
  ordered === null || counted !== null || faulty !== null || lot !== '' || amount !== null;
