import type { NameRow } from '@/shared/schemas/order';

/** How many of each size the rows of names come to. */
interface NameCounts {
  /** Of the blank's sizes, in its order; those that nobody wants are 0. */
  readonly sizes: readonly { readonly size: string; readonly quantity: number }[];
  /** Sizes that the blank is not made in, as they are written. */
  readonly unknown: readonly { readonly size: string; readonly quantity: number }[];
  readonly withoutSize: number;
}

/** @param sizes the blank's own, in its order */
export function nameCounts(rows: readonly Pick<NameRow, 'size'>[], sizes: readonly string[]): NameCounts {
  const counts = new Map(sizes.map((size) => [size, 0]));
  const known = counts.size;
  let withoutSize = 0;
  for (const { size } of rows) {
    const plain = size.trim();
    if (plain === '') withoutSize += 1;
    else counts.set(plain, (counts.get(plain) ?? 0) + 1);
  }
  const all = [...counts].map(([size, quantity]) => ({ size, quantity }));
  return { sizes: all.slice(0, known), unknown: all.slice(known), withoutSize };
}
