import { type BreakList, breakListOf } from '@/lib/price/list/breakList';
import { type Inversion, inversions } from '@/lib/price/list/inversions';
import type { TablePrice } from '@/lib/price/priceTable';

/** The price list that a price table holds for one size. */
interface TableBreakList {
  readonly lineId: string;
  readonly size: string;
  readonly list: BreakList;
}

/** @returns the list of each size of each line, in the order of the table. */
export function tableBreakLists(table: readonly TablePrice[], currency: string): readonly TableBreakList[] {
  const sizes = new Map<string, TablePrice[]>();
  for (const cell of table) {
    const key = JSON.stringify([cell.lineId, cell.size]);
    const cells = sizes.get(key);
    if (cells === undefined) sizes.set(key, [cell]);
    else cells.push(cell);
  }
  return [...sizes.values()].flatMap((cells): readonly TableBreakList[] => {
    const [first] = cells;
    const list = breakListOf(
      cells.map(({ from, price }) => ({ from, each: price })),
      currency,
    );
    return first === undefined || !list.ok
      ? []
      : [{ lineId: first.lineId, size: first.size, list: list.value }];
  });
}

/** A stretch of quantities whose total is above a later one's, with the sizes it holds for. */
export interface TableInversion extends Inversion {
  readonly lineId: string;
  readonly sizes: readonly string[];
}

/** @returns the stretches of every size; sizes of a line with the very same stretch are told together. */
export function tableInversions(table: readonly TablePrice[], currency: string): readonly TableInversion[] {
  const found = new Map<string, TableInversion>();
  for (const { lineId, size, list } of tableBreakLists(table, currency)) {
    for (const stretch of inversions(list)) {
      const key = JSON.stringify([lineId, stretch]);
      const known = found.get(key);
      found.set(key, { ...stretch, lineId, sizes: [...(known?.sizes ?? []), size] });
    }
  }
  return [...found.values()];
}
