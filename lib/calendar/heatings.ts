import { splitWhole } from '@/shared/splitWhole';
import type { PressWork } from './benchWork';
import { MINUTES_NOISE, MOST_DAYS } from './minutes';
import { sessionMinutes } from './sessionParts';

/**
 * How often the press is heated up, and for how many pieces each time: as often as the job is priced for, and more
 * often only where no free block holds such a session.
 *
 * @param longest the longest block of the week, minutes
 * @returns null where no block holds even a piece, or so few that nobody plans so far ahead
 */
export function heatings(work: PressWork, longest: number): readonly number[] | null {
  if (work.pieces === 0) return [];
  const most = mostPieces(work, longest);
  if (most === 0) return null;
  const count = Math.min(work.pieces, Math.max(work.sessions, Math.ceil(work.pieces / most)));
  // At most one session a day.
  if (count > MOST_DAYS) return null;
  return splitWhole(
    work.pieces,
    Array.from({ length: count }, () => work.pieces / count),
  );
}

/** The most pieces whose session fits, by halving. */
function mostPieces(work: PressWork, longest: number): number {
  const fits = (pieces: number) => sessionMinutes(work, pieces) <= longest + MINUTES_NOISE;
  if (fits(work.pieces)) return work.pieces;
  let low = 0;
  let high = work.pieces;
  while (high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    if (fits(middle)) low = middle;
    else high = middle;
  }
  return low;
}
