import { daysBetween } from '@/shared/days';

/** How what is kept here stands to the copies that were made of it. */
export type CopyStanding =
  /** All that is here is the example's: nothing would be lost. */
  | { readonly state: 'nothingOwn' }
  | { readonly state: 'never'; readonly isDue: boolean }
  | {
      readonly state: 'copied';
      readonly daysOld: number;
      /** Whether something of one's own came or changed since. */
      readonly hasNew: boolean;
      readonly isDue: boolean;
    };

/** Days by the maker's calendar, YYYY-MM-DD. */
interface CopyFacts {
  /** When the first thing of the maker's own was kept; null where there is none. */
  readonly ownSince: string | null;
  readonly lastCopyOn: string | null;
  readonly hasNew: boolean;
  readonly today: string;
}

/** A week's work is what most could type again from memory and paper; common practice. */
const MOST_DAYS = 7;
/** Whoever only looks round is not told; who stays is told before there is much to lose. */
const FIRST_DAYS = 3;

/** @returns whether a copy is due: only where there is something to lose that no young copy holds. */
export function copyStanding({ ownSince, lastCopyOn, hasNew, today }: CopyFacts): CopyStanding {
  if (lastCopyOn !== null) {
    const daysOld = Math.max(0, daysBetween(lastCopyOn, today));
    return { state: 'copied', daysOld, hasNew, isDue: hasNew && daysOld > MOST_DAYS };
  }
  if (ownSince === null) return { state: 'nothingOwn' };
  return { state: 'never', isDue: daysBetween(ownSince, today) >= FIRST_DAYS };
}
