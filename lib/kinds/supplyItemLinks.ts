import type { Link } from '@/lib/stored/registry';
import type { SupplyItem } from '@/shared/schemas/making/supply';

/**
 * @param path where in the body the thing is told
 * @returns what a thing that is bought is named by
 */
export function supplyItemLinks(item: SupplyItem, path: Link['path']): readonly Link[] {
  switch (item.kind) {
    case 'blank':
      return [{ to: 'blank', id: item.blankId, path: [...path, 'blankId'] }];
    case 'paper':
      return [{ to: 'sheet', id: item.sheetId, path: [...path, 'sheetId'] }];
    case 'ink':
      return [{ to: 'printer', id: item.printerId, path: [...path, 'printerId'] }];
    case 'consumable':
      return [{ to: 'consumable', id: item.consumableId, path: [...path, 'consumableId'] }];
    default:
      return item satisfies never;
  }
}
