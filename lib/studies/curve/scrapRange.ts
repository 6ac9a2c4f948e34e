import { wilson } from '@/lib/statistics/wilson';
import type { Rate } from '@/shared/schemas/rate';
import type { ScrapRange } from './spoilageSpread';

/** Two-sided 95 %: the normal quantile at 0.975. */
const Z = 1.959964;
/** How far a share that nobody counted may lie off, as a factor either way; from memory of common practice. */
const UNCOUNTED = 2;
/** The largest share the grid takes. */
const MOST = 0.9;

/**
 * Between which shares a scrap rate is thought to lie: Wilson's interval where it was counted, half to twice it
 * otherwise.
 *
 * @param scrap share of presses that spoil the piece, with its count where it was measured
 */
export function scrapRange(scrap: Rate): ScrapRange {
  const { value: share, count } = scrap;
  if (scrap.origin !== 'measured' || count === undefined) {
    return { low: share / UNCOUNTED, high: Math.min(MOST, share * UNCOUNTED) };
  }
  const { lower, upper } = wilson(share, count, Z);
  return { low: lower, high: Math.min(MOST, upper) };
}
