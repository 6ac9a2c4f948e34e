import { workshopStyle } from '@/lib/quotes/paperHeading';
import { toMinor } from '@/shared/money';
import type { PaperNumber } from '@/shared/schemas/happened';
import type { SupplyOrder } from '@/shared/schemas/making/runPapers';
import type { Supplier, SupplyItem } from '@/shared/schemas/making/supply';
import type { Workshop } from '@/shared/schemas/workshop';

/** One thing asked of a supplier. */
export interface SupplyOrderLine {
  readonly item: SupplyItem;
  /** As the supplier reads it, without its size. */
  readonly name: string;
  /** Empty where it has none. */
  readonly size: string;
  readonly unit: string;
  readonly articleNumber: string;
  readonly quantity: number;
  readonly packSize: number;
  /** As the supplier told it, currency units; null where nobody knows. */
  readonly each: number | null;
}

export interface SupplyOrderAsked {
  readonly supplierId: string;
  readonly supplier: Supplier;
  readonly workshop: Workshop;
  readonly lines: readonly SupplyOrderLine[];
  readonly wantedBy: string | null;
  readonly note: string;
  readonly buyingListId: string | null;
}

/** What the orders to suppliers of a year are numbered in. */
export const supplyOrderSeries = (day: string): string => `supplyOrder ${day.slice(2, 4)}`;

/**
 * What is asked of a supplier. It says nothing of what the goods are for, and no price but the supplier's own: a sum
 * stands on it only where every part of it is known.
 */
export function supplyOrderBody(
  { supplierId, supplier, workshop, lines, wantedBy, note, buyingListId }: SupplyOrderAsked,
  { number, day }: { readonly number: PaperNumber; readonly day: string },
): SupplyOrder {
  const { language, locale, page, currency, seller } = workshopStyle(workshop);
  const rows = lines
    .filter(({ quantity }) => quantity > 0)
    .map((line) => ({
      ...line,
      packs: packsOf(line),
      amountMinor: line.each === null ? null : toMinor(line.each * line.quantity, currency),
    }));
  const goodsMinor = sumOrNone(rows.map(({ amountMinor }) => amountMinor));
  const freightMinor = freightOf(supplier, goodsMinor, currency);
  return {
    number: { year: Number(day.slice(0, 4)), count: number.count, letter: number.letter ?? 'A' },
    issuedOn: day,
    supplierId,
    supplier: {
      name: supplier.name,
      contact: supplier.contact,
      customerNumber: supplier.customerNumber,
    },
    from: { name: seller.name, address: seller.address, contact: seller.contact },
    ...{ language, locale, page, currency, wantedBy, rows, goodsMinor, freightMinor, note, buyingListId },
    totalMinor: sumOrNone([goodsMinor, freightMinor]),
  };
}

// Helpers

/** Whole packs alone are told as packs. */
function packsOf({ quantity, packSize }: SupplyOrderLine): number | null {
  if (packSize === 1) return null;
  const packs = Number((quantity / packSize).toPrecision(12));
  return Number.isInteger(packs) ? packs : null;
}

function freightOf(
  { freight, freeFreightFrom }: Supplier,
  goodsMinor: number | null,
  currency: string,
): number | null {
  if (freight === null || freight === 0) return freight;
  if (freeFreightFrom === null) return toMinor(freight, currency);
  // Whether it comes free depends on what the goods come to.
  if (goodsMinor === null) return null;
  return goodsMinor >= toMinor(freeFreightFrom, currency) ? 0 : toMinor(freight, currency);
}

const sumOrNone = (parts: readonly (number | null)[]): number | null =>
  parts.reduce<number | null>((sum, part) => (sum === null || part === null ? null : sum + part), 0);
