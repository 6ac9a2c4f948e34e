import type { BoxKind, LaidBox, Work } from '@/lib/packing/box';
import type { Random } from '@/lib/packing/seededRandom';
import type { Bin } from './fillSheets';

/** What a search for fewer sheets is asked; ticks. */
export interface SheetsQuestion {
  readonly bin: Bin;
  /** Each fits the room by itself. */
  readonly kinds: readonly BoxKind[];
  /** No layout needs fewer sheets. */
  readonly least: number;
  /** The layout so far, sheet by sheet; it is to be beaten by a sheet or more. */
  readonly best: readonly (readonly LaidBox[])[];
  /** Called by a search that comes to know how many sheets layouts of straight cuts through need at least. */
  readonly tellGuillotineBound?: (sheets: number) => void;
}

/**
 * A search for fewer sheets. It hands the thread back after some 8 ms of work at most, takes what it does from `work`
 * and ends where that is used up.
 *
 * @param random same numbers, same answer
 * @returns a layout of all boxes on fewer sheets than the best so far; null where it found none
 */
export type SheetSearch = (
  question: SheetsQuestion,
  work: Work,
  random: Random,
) => Generator<void, readonly (readonly LaidBox[])[] | null>;
