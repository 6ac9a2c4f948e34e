import type { StockItem } from '@/shared/schemas/stock';
import type { Pile } from './foldStock';
import { isReady } from './isReady';
import { stockKey } from './stockKey';

/** Where one thing lies. */
export interface ItemStock {
  /** At home, first grade; null where nothing is known of it. */
  readonly ready: Pile | null;
  /** Elsewhere or of second grade, those of 0 left out. */
  readonly others: readonly Pile[];
}

/** @returns where a thing lies, all its lots together. */
export function stockOf(piles: readonly Pile[], item: StockItem): ItemStock {
  const key = stockKey(item);
  const own = piles.filter((pile) => stockKey(pile.item) === key);
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
