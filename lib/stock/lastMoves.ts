import { inOrder } from '@/lib/stored/entriesInForce';
import type { StockItem } from '@/shared/schemas/stock';
import { postingsOf, type StockEntry } from './stockEntry';

/** @returns what was noted of some things, the last first. */
export const lastMoves = (
  entries: readonly StockEntry[],
  isMeant: (item: StockItem) => boolean,
): readonly StockEntry[] =>
  inOrder(entries)
    .filter((entry) => postingsOf(entry).some(({ item }) => isMeant(item)))
    .toReversed();
