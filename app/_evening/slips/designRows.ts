import { designKey } from '@/lib/stall/designKey';
import type { Evening } from '@/lib/stall/evening/reconcile';
import type { StockRow } from '@/lib/stall/evening/stockRows';

/** The sizes of a design, or all goods of a range that has no sizes. */
interface DesignRow {
  readonly id: string;
  readonly name: string;
  readonly hasSizes: boolean;
  readonly rows: readonly StockRow[];
}

/** @returns goods as they are told in one row, in the order of the plan. */
export function designRows({ plan, rows }: Pick<Evening, 'plan' | 'rows'>): readonly DesignRow[] {
  const designs = new Map<string, DesignRow>();
  for (const row of rows) {
    const { rangeId, design } = row.goods;
    const range = plan.ranges.find((one) => one.id === rangeId);
    const hasSizes = range?.hasSizes ?? true;
    const id = hasSizes ? `${rangeId}/${designKey(row.goods)}` : rangeId;
    const known = designs.get(id);
    const name = hasSizes ? design : (range?.name ?? design);
    designs.set(id, { id, name, hasSizes, rows: [...(known?.rows ?? []), row] });
  }
  return [...designs.values()];
}
