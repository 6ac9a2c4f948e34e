import type { GoodsCount } from '@/lib/stall/count/dayCount';
import type { DayClose } from '@/shared/schemas/stallPapers';

/** @returns what a close keeps of goods that no plan here names: what went was there, and what came back is there now */
export function strayRow(goods: GoodsCount): NonNullable<DayClose['strays']>[number] {
  const { jobId, lineId, size, sold, given, damaged, seconds } = goods;
  const gone = sold + given + damaged;
  const brought = Math.max(goods.brought, gone, 0);
  return { ...{ jobId, lineId, size, brought, sold, given, damaged, seconds }, counted: brought - gone };
}
