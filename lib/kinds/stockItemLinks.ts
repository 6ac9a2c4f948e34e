import type { Link } from '@/lib/stored/registry';
import type { StockItem } from '@/shared/schemas/stock';
import { supplyItemLinks } from './supplyItemLinks';

/**
 * @param path where in the body the thing is told
 * @returns what a thing in stock is named by: as what is bought, or by the job that made it
 */
export const stockItemLinks = (item: StockItem, path: readonly string[] = ['item']): readonly Link[] =>
  item.kind === 'finished'
    ? [{ to: 'job', id: item.jobId, path: [...path, 'jobId'] }]
    : supplyItemLinks(item, path);
