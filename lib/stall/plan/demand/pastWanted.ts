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

/** @returns pieces of a range asked for on days before, by size. */
export const wantedSizes = (range: StallRange, past: readonly PastDay[]): ReadonlyMap<string, number> =>
  piecesBy(
    past.flatMap((day) => wantedOf(range, day)),
    ({ size }) => size,
  );

/**
 * @param sizes those the range has; what others were asked for is set aside
 * @returns pieces of own days that the mix of sizes of a range is blended with; what was reckoned as lost is no whole number
 */
export function ownPieces(range: StallRange, past: readonly PastDay[], sizes: readonly string[]): number {
  const wanted = wantedSizes(range, past);
  return sizes.reduce((sum, size) => sum + (wanted.get(size) ?? 0), 0);
}

// Helpers

const sameName = (one: string, other: string): boolean =>
  one.trim().toLowerCase() === other.trim().toLowerCase();
