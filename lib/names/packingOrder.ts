import type { NameRow } from '@/shared/schemas/order';

interface PackingOrder {
  /** By size, for piles of one size; by name, for whoever hands them out. */
  readonly by: 'size' | 'name';
  /** The blank's own sizes, in its order. */
  readonly sizes: readonly string[];
  /** Decides how names are sorted, a tag of BCP 47. */
  readonly locale: string;
}

/** @returns the rows in the order they are packed in; sizes the blank does not have, and none at all, come last. */
export function packingOrder(
  rows: readonly NameRow[],
  { by, sizes, locale }: PackingOrder,
): readonly NameRow[] {
  const { compare } = new Intl.Collator(locale, { numeric: true });
  const places = new Map(sizes.map((size, at) => [size, at]));
  const placeOf = ({ size }: NameRow): number =>
    places.get(size.trim()) ?? (size.trim() === '' ? sizes.length + 1 : sizes.length);
  const byName = (one: NameRow, other: NameRow): number =>
    // Rows that still lack a name are looked for at the end.
    Number(one.name === '') - Number(other.name === '') ||
    compare(one.name, other.name) ||
    compare(one.number, other.number);
  const bySize = (one: NameRow, other: NameRow): number =>
    placeOf(one) - placeOf(other) || compare(one.size, other.size);
  return rows.toSorted((one, other) =>
    by === 'size' ? bySize(one, other) || byName(one, other) : byName(one, other) || bySize(one, other),
  );
}
