import { canonicalText } from '@/lib/stored/canonicalText';
import type { StockItem } from '@/shared/schemas/stock';
import type { SupplyItem } from '@/shared/schemas/supply';
import type { Lying } from './stockEntry';

/** @returns the same text for the same thing, whatever its lot. */
export const stockKey = (item: StockItem | SupplyItem): string =>
  canonicalText(item.kind === 'blank' ? { ...item, lot: null } : item);

/** @returns the same text for the same pile, whatever its lots; thousands of entries ask for it, so no keys are sorted. */
export const pileKey = ({ item, place, grade }: Lying): string =>
  JSON.stringify([item.kind, ...namedBy(item), place.kind, place.kind === 'shop' ? place.name : '', grade]);

// Helpers

function namedBy(item: StockItem): readonly string[] {
  switch (item.kind) {
    case 'blank':
      return [item.blankId, item.size];
    case 'finished':
      return [item.jobId, item.lineId, item.size];
    case 'paper':
      return [item.sheetId];
    case 'ink':
      return [item.printerId, item.name];
    case 'consumable':
      return [item.consumableId];
    default:
      return item satisfies never;
  }
}
