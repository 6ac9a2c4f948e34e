import type { BreakSpan } from '@/lib/price/list/breakStarts';
import type { TablePrice } from '@/lib/price/priceTable';

/** Neighbouring sizes that cost and are priced the same in every break. */
export interface PriceGroup {
  readonly sizes: readonly string[];
  /** One for each break. */
  readonly cells: readonly TablePrice[];
}

/** The price table of one line: sizes down, breaks across. */
interface PriceGrid {
  readonly breaks: readonly BreakSpan[];
  readonly groups: readonly PriceGroup[];
}

/** Sorts the cells of a line into rows and columns, sizes that do not differ in one row. */
export function priceGrid(table: readonly TablePrice[], lineId: string): PriceGrid {
  const cells = table.filter((cell) => cell.lineId === lineId);
  const sizes = [...new Set(cells.map(({ size }) => size))];
  const groups: PriceGroup[] = [];
  for (const size of sizes) {
    const row = cells.filter((cell) => cell.size === size);
    const before = groups[groups.length - 1];
    if (before?.cells.every((cell, index) => isAlike(cell, row[index])))
      groups[groups.length - 1] = { ...before, sizes: [...before.sizes, size] };
    else groups.push({ sizes: [size], cells: row });
  }
  return { breaks: groups[0]?.cells.map(({ from, to }) => ({ from, to })) ?? [], groups };
}

// Helpers

const isAlike = (one: TablePrice, other: TablePrice | undefined): boolean =>
  one.price === other?.price && one.fullCost === other.fullCost && one.pricedAt === other.pricedAt;
