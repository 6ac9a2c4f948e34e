import { pileKey } from '@/lib/stock/stockKey';
import type { DatedStock } from './stockByDay';

/**
 * What says how much lay in stock when a year began: all that is of a day before and, of piles of which nothing was noted
 * until then, the first count. Whoever begins to count has not bought it that day.
 *
 * @param noted by day
 * @param from the first day of the year, YYYY-MM-DD
 */
export function stockAtStart(noted: readonly DatedStock[], from: string): readonly DatedStock[] {
  const seen = new Set<string>();
  return noted.filter(({ day, entry }) => {
    const piles = pilesOf(entry);
    const isFirst = piles.every((pile) => !seen.has(pile));
    for (const pile of piles) seen.add(pile);
    return day < from || (entry.kind === 'stockCount' && isFirst);
  });
}

// Helpers

function pilesOf({ kind, body }: DatedStock['entry']): readonly string[] {
  return kind === 'stockTransfer' ? [pileKey(body.from), pileKey(body.to)] : [pileKey(body)];
}
