import type { SupplyItem } from '@/shared/schemas/making/supply';
import type { StockItem } from '@/shared/schemas/stock';
import type { Lying } from './stockEntry';

/**
 * @returns one text for one thing, whether it is bought or lies in stock, whatever its lot. Inks are called by names that
 *   people write, so that capitals do not part them.
 */
export function stockKey(item: StockItem | SupplyItem): string {
  switch (item.kind) {
    case 'blank':
      return JSON.stringify(['blank', item.blankId, item.size]);
    case 'paper':
      return JSON.stringify(['paper', item.sheetId]);
    case 'ink':
      return JSON.stringify(['ink', item.printerId, item.name.trim().toLowerCase()]);
    case 'consumable':
      return JSON.stringify(['consumable', item.consumableId]);
    case 'finished':
      return JSON.stringify(['finished', item.jobId, item.lineId, item.size]);
    default:
      return item satisfies never;
  }
}

/** @returns whether two things are the same, whatever their lots. */
export const sameItem = (one: StockItem | SupplyItem, other: StockItem | SupplyItem): boolean =>
  stockKey(one) === stockKey(other);

/** @returns one text for one pile, whatever its lots; thousands of entries ask for it, so no keys are sorted. */
export const pileKey = ({ item, place, grade }: Lying): string =>
  `${stockKey(item)} ${place.kind} ${place.kind === 'shop' ? JSON.stringify(place.name) : ''} ${grade}`;
