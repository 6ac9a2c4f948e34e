import { type TappedEntry, tapsOfDay } from '@/lib/stall/count/tappedEntry';
import type { DayClose } from '@/shared/schemas/stallPapers';

/** @returns how many taps of a day came since it was closed; below 0 so many were taken back. */
export const tapsSince = (
  { stallDayId, taps }: Pick<DayClose, 'stallDayId' | 'taps'>,
  all: readonly TappedEntry[],
): number => tapsOfDay(all, stallDayId).length - taps;
