import type { Link } from '@/lib/stored/registry';
import type { StockItem } from '@/shared/schemas/stock';

/**
 * @param path where in the body the thing is told
 * @returns what a thing in stock is named by
 */
export function stockItemLinks(item: StockItem, path: readonly string[] = ['item']): readonly Link[] {
  switch (item.kind) {
    case 'blank':
      return [{ to: 'blank', id: item.blankId, path: [...path, 'blankId'] }];
    case 'finished':
      return [{ to: 'job', id: item.jobId, path: [...path, 'jobId'] }];
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
