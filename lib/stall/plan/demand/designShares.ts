import { designKey } from '@/lib/stall/designKey';
import type { RangeDesign, StallRange } from '@/shared/schemas/stallDay';
import type { PastDay } from './pastDay';
import { designRates } from './pastWanted';

/**
 * What part of a range each of its designs sells. One that is left at home keeps its part: who wanted it does not buy
 * another for that.
 *
 * @param ranges all of the stall day
 * @param days that the forecast rests on; designs that were along share their part by what an hour brought then, each
 *   over the days on which it was there, and a new one keeps the part that was typed
 * @returns one for each design; they add to 1, or all are 0 where nothing has a share
 */
export function designShares(
  ranges: readonly StallRange[],
  range: StallRange,
  days: readonly PastDay[],
): readonly number[] {
  const rates = designRates(ranges, range, days);
  const known = range.designs.filter((design) => rates.has(designKey(design)));
  const hourly = known.reduce((sum, design) => sum + (rates.get(designKey(design)) ?? 0), 0);
  const typed = known.reduce((sum, { share }) => sum + share, 0);
  const shareOf = (design: RangeDesign): number => {
    const rate = rates.get(designKey(design));
    return rate === undefined || !(hourly > 0) ? design.share : (rate / hourly) * (typed > 0 ? typed : 1);
  };
  const shares = range.designs.map(shareOf);
  const all = shares.reduce((sum, share) => sum + share, 0);
  return all > 0 ? shares.map((share) => share / all) : shares.map(() => 0);
}
