import type { Link } from '@/lib/stored/registry';
import type { StockItem } from '@/shared/schemas/stock';

/** @returns what a thing in stock is named by. */
export function stockItemLinks(item: StockItem): readonly Link[] {
  switch (item.kind) {
    case 'blank':
      return [{ to: 'blank', id: item.blankId, path: ['item', 'blankId'] }];
    case 'finished':
      return [{ to: 'job', id: item.jobId, path: ['item', 'jobId'] }];
    case 'paper':
      return [{ to: 'sheet', id: item.sheetId, path: ['item', 'sheetId'] }];
    case 'ink':
      return [{ to: 'printer', id: item.printerId, path: ['item', 'printerId'] }];
    case 'consumable':
      return [];
    default:
      return item satisfies never;
  }
}
