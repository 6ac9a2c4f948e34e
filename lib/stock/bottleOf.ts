import type { Supplier } from '@/shared/schemas/making/supply';
import type { StockItem } from '@/shared/schemas/stock';
import { stockKey } from './stockKey';

/** @returns mL of the smallest bottle that a supplier sells an ink in; null where none is told, and of no ink */
export function bottleOf(item: StockItem, suppliers: readonly Supplier[]): number | null {
  if (item.kind !== 'ink') return null;
  const key = stockKey(item);
  const sizes = suppliers
    .flatMap(({ offers }) => offers)
    .filter((offer) => stockKey(offer.item) === key && (offer.packSize ?? 1) > 1)
    .map(({ packSize }) => packSize ?? 1);
  return sizes.length === 0 ? null : Math.min(...sizes);
}
