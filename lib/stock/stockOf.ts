import type { Pile } from './foldStock';
import { isReady } from './isReady';

/** Where a size of a blank lies. */
export interface SizeStock {
  /** At home, first grade; null where nothing is known of it. */
  readonly ready: Pile | null;
  /** Elsewhere or of second grade, those of 0 left out. */
  readonly others: readonly Pile[];
}

/** @returns where the pieces of one size of a blank lie. */
export function stockOf(piles: readonly Pile[], blankId: string, size: string): SizeStock {
  const own = piles.filter(
    ({ item }) => item.kind === 'blank' && item.blankId === blankId && item.size === size,
  );
  return {
    ready: own.find(isReady) ?? null,
    others: own.filter((pile) => !isReady(pile) && pile.quantity !== 0),
  };
}

/** @returns sizes of a blank that something lies under, or is missing from, though the blank has them no more. */
export const strayedSizes = (
  piles: readonly Pile[],
  blankId: string,
  sizes: readonly string[],
): readonly string[] => [
  ...new Set(
    piles.flatMap(({ item, quantity }) =>
      item.kind === 'blank' && item.blankId === blankId && quantity !== 0 && !sizes.includes(item.size)
        ? [item.size]
        : [],
    ),
  ),
];
