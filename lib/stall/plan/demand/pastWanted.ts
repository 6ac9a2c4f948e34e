import { designKey } from '@/lib/stall/designKey';
import type { PastDay } from '@/lib/stall/evening/pastDay';
import type { StallRange } from '@/shared/schemas/stallDay';

type Wanted = PastDay['wanted'][number];

/** @returns what was asked for of a range on a day before: by its name, or by a design it has now. */
export const wantedOf = (range: StallRange, { wanted }: PastDay): readonly Wanted[] =>
  wanted.filter(
    (one) =>
      sameName(one.rangeName, range.name) ||
      range.designs.some((design) => designKey(design) === designKey(one)),
  );

/** @returns pieces by what a key says of them. */
export function piecesBy(
  wanted: readonly Wanted[],
  keyOf: (one: Wanted) => string,
): ReadonlyMap<string, number> {
  const pieces = new Map<string, number>();
  for (const one of wanted) pieces.set(keyOf(one), (pieces.get(keyOf(one)) ?? 0) + one.pieces);
  return pieces;
}

// Helpers

const sameName = (one: string, other: string): boolean =>
  one.trim().toLowerCase() === other.trim().toLowerCase();
