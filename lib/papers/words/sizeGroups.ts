/** So many pieces of a size at one price, whole minor units. */
export interface PricedSize {
  readonly size: string;
  readonly quantity: number;
  readonly each: number;
  readonly total: number;
}

export interface SizeGroup {
  readonly names: readonly string[];
  readonly quantity: number;
  readonly each: number;
  readonly total: number;
  /** Whether sizes between them are left out, so that the first and the last would say too much. */
  readonly hasGap: boolean;
}

/** @returns neighbouring sizes of one price together, as they stand in a row; sizes of no piece are left out. */
export function sizeGroups(sizes: readonly PricedSize[]): readonly SizeGroup[] {
  const groups: { names: string[]; quantity: number; each: number; total: number; hasGap: boolean }[] = [];
  let skipped = false;
  for (const { size, quantity, each, total } of sizes) {
    if (quantity === 0) {
      skipped = true;
      continue;
    }
    const last = groups.at(-1);
    if (last !== undefined && last.each === each) {
      if (!last.names.includes(size)) last.names.push(size);
      last.quantity += quantity;
      last.total += total;
      last.hasGap ||= skipped;
    } else groups.push({ names: [size], quantity, each, total, hasGap: false });
    skipped = false;
  }
  return groups;
}
