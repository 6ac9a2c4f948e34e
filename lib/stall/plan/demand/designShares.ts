import { designKey } from '@/lib/stall/designKey';
import type { PastDay } from '@/lib/stall/evening/pastDay';
import type { RangeDesign, StallRange } from '@/shared/schemas/stallDay';
import { piecesBy, wantedOf } from './pastWanted';

/**
 * What part of a range each of its designs sells. One that is left at home keeps its part: who wanted it does not buy
 * another for that.
 *
 * @param days that the forecast rests on; designs they sold share their part as they did then, a new one keeps the
 *   part that was typed
 * @returns one for each design; they add to 1, or all are 0 where nothing has a share
 */
export function designShares(range: StallRange, days: readonly PastDay[]): readonly number[] {
  const wanted = piecesBy(
    days.flatMap((day) => wantedOf(range, day)),
    designKey,
  );
  const known = range.designs.filter((design) => wanted.has(designKey(design)));
  const sold = known.reduce((sum, design) => sum + (wanted.get(designKey(design)) ?? 0), 0);
  const typed = known.reduce((sum, { share }) => sum + share, 0);
  const shareOf = (design: RangeDesign): number => {
    const pieces = wanted.get(designKey(design));
    return pieces === undefined || !(sold > 0) ? design.share : (pieces / sold) * (typed > 0 ? typed : 1);
  };
  const shares = range.designs.map(shareOf);
  const all = shares.reduce((sum, share) => sum + share, 0);
  return all > 0 ? shares.map((share) => share / all) : shares.map(() => 0);
}
