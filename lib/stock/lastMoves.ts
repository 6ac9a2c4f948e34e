import { inOrder } from '@/lib/stored/entriesInForce';
import { postingsOf, type StockEntry } from './stockEntry';

/** @returns what was noted of one blank, the last first. */
export const lastMoves = (entries: readonly StockEntry[], blankId: string): readonly StockEntry[] =>
  inOrder(entries)
    .filter((entry) =>
      postingsOf(entry).some(({ item }) => item.kind === 'blank' && item.blankId === blankId),
    )
    .toReversed();
