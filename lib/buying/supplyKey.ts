import type { StockItem } from '@/shared/schemas/stock';
import type { SupplyItem } from '@/shared/schemas/supply';

/**
 * @returns one text for one thing, whether it is bought or lies in stock, whatever its lot. Inks are called by names that
 *   people write, so that capitals do not part them.
 */
export function supplyKey(item: SupplyItem | Exclude<StockItem, { kind: 'finished' }>): string {
  switch (item.kind) {
    case 'blank':
      return JSON.stringify(['blank', item.blankId, item.size]);
    case 'paper':
      return JSON.stringify(['paper', item.sheetId]);
    case 'ink':
      return JSON.stringify(['ink', item.printerId, item.name.trim().toLowerCase()]);
    case 'consumable':
      return JSON.stringify(['consumable', item.consumableId]);
    default:
      return item satisfies never;
  }
}
