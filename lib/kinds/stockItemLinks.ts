import type { Link } from '@/lib/stored/registry';
import type { StockItem } from '@/shared/schemas/stock';

/**
 * @param at where in the body the thing stands
 * @returns what a thing in stock is named by
 */
export function stockItemLinks(item: StockItem, at: Link['path'] = ['item']): readonly Link[] {
  switch (item.kind) {
    case 'blank':
      return [{ to: 'blank', id: item.blankId, path: [...at, 'blankId'] }];
    case 'finished':
      return [{ to: 'job', id: item.jobId, path: [...at, 'jobId'] }];
    case 'paper':
      return [{ to: 'sheet', id: item.sheetId, path: [...at, 'sheetId'] }];
    case 'ink':
      return [{ to: 'printer', id: item.printerId, path: [...at, 'printerId'] }];
    case 'consumable':
      return [];
    default:
      return item satisfies never;
  }
}
