import type { StockEntry } from '@/lib/stock/stockEntry';
import { pileKey } from '@/lib/stock/stockKey';

/**
 * What says how much lay in stock when a year began: all that was noted before, and of piles of which nothing was noted
 * until then the first count. Whoever begins to count has not bought it that day.
 *
 * @param entries in force, in order
 * @param from the first day of the year, YYYY-MM-DD
 * @param dayOf the maker's calendar day of a moment
 */
export function stockAtStart(
  entries: readonly StockEntry[],
  from: string,
  dayOf: (at: number) => string,
): readonly StockEntry[] {
  const seen = new Set<string>();
  return entries.filter((entry) => {
    const piles = pilesOf(entry);
    const isFirst = piles.every((pile) => !seen.has(pile));
    for (const pile of piles) seen.add(pile);
    return dayOf(entry.at) < from || (entry.kind === 'stockCount' && isFirst);
  });
}

// Helpers

function pilesOf({ kind, body }: StockEntry): readonly string[] {
  return kind === 'stockTransfer' ? [pileKey(body.from), pileKey(body.to)] : [pileKey(body)];
}
