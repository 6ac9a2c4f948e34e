import type { Rate } from '@/shared/schemas/rate';
import type { ScrapRange } from './spoilageSpread';

/** Two-sided 95 %: the normal quantile at 0.975. */
const Z = 1.959964;
/** How far a share that nobody counted may lie off, as a factor either way; from memory of common practice. */
const UNCOUNTED = 2;
/** The largest share the grid takes. */
const MOST = 0.9;

/**
 * Between which shares a scrap rate is thought to lie: Wilson's interval where it was counted (E. B. Wilson, Journal
 * of the American Statistical Association 22, 1927; NIST/SEMATECH e-Handbook 7.2.4.1), half to twice it otherwise.
 *
 * @param scrap share of presses that spoil the piece, with its count where it was measured
 */
export function scrapRange(scrap: Rate): ScrapRange {
  const { value: share, count } = scrap;
  if (scrap.origin !== 'measured' || count === undefined) {
    return { low: share / UNCOUNTED, high: Math.min(MOST, share * UNCOUNTED) };
  }
  const middle = (share + Z ** 2 / (2 * count)) / (1 + Z ** 2 / count);
  const half =
    (Z / (1 + Z ** 2 / count)) * Math.sqrt((share * (1 - share)) / count + Z ** 2 / (4 * count ** 2));
  return { low: Math.max(0, middle - half), high: Math.min(MOST, middle + half) };
}
