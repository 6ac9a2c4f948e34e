import type { DayClose } from '@/shared/schemas/stallPapers';
import { type TappedEntry, tapsOfDay } from './tappedEntry';

/** @returns how many taps of a day came since it was closed; below 0 so many were taken back. */
export const tapsSince = (
  { stallDayId, taps }: Pick<DayClose, 'stallDayId' | 'taps'>,
  all: readonly TappedEntry[],
): number => tapsOfDay(all, stallDayId).length - taps;
