import type { DayClose } from '@/shared/schemas/stallPapers';
import { type TappedEntry, tapsOfDay } from './tappedEntry';
import { tapsDigest } from './tapsDigest';

/** How many taps came; below 0 so many were taken back; `others` where as many came as were taken back. */
export type TapsSince = number | 'others';

/** @returns what became of the taps of a day since it was closed; 0 where they are those it was closed with. */
export function tapsSince(
  { stallDayId, taps, tapsDigest: closedWith }: Pick<DayClose, 'stallDayId' | 'taps' | 'tapsDigest'>,
  all: readonly TappedEntry[],
): TapsSince {
  const now = tapsOfDay(all, stallDayId);
  if (now.length !== taps || closedWith === undefined) return now.length - taps;
  return tapsDigest(now.map(({ id }) => id)) === closedWith ? 0 : 'others';
}
