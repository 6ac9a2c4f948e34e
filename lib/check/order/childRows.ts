import { childSizesOf } from '@/lib/check/children/childSizesOf';
import type { Blank } from '@/shared/schemas/blank';
import type { NameRow } from '@/shared/schemas/order';

/** @returns how many rows of names are of a child, by the size they are to get. */
export function childRows(rows: readonly NameRow[], blank: Blank): number {
  const isChild = childSizesOf(blank);
  return rows.filter(({ name, size }) => name.trim() !== '' && isChild(size) !== null).length;
}
