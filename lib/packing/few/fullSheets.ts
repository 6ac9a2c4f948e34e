import { atOnce } from '@/lib/packing/atOnce';
import type { BoxKind, LaidBox, Work } from '@/lib/packing/box';
import type { Random } from '@/lib/packing/seededRandom';
import type { Bin } from '@/lib/packing/sheet/fillSheets';
import type { SheetSearch } from '@/lib/packing/sheet/sheetSearch';
import type { Tolerance } from './blocks';
import { SheetSplit } from './sheetSplit';

/** From sides that match to the tick to sides that leave a strip between them; narrow ones are soon exhausted. */
const exact: Tolerance = { mismatch: 0, loss: 0, blocks: 20_000 };
const near: Tolerance = { mismatch: 0.001, loss: 0.004, blocks: 20_000 };
const tolerances: readonly Tolerance[] = [
  exact,
  near,
  { mismatch: 0.004, loss: 0.008, blocks: 20_000 },
  { mismatch: 0.01, loss: 0.012, blocks: 20_000 },
  { mismatch: 0.016, loss: 0.02, blocks: 20_000 },
  { mismatch: 0.024, loss: 0.03, blocks: 20_000 },
  { mismatch: 0.036, loss: 0.045, blocks: 20_000 },
];

/** With more sheets, full ones are found by other means. */
const MOST_SHEETS = 5;

/** Where more than this share of the paper may stay free, sheets are anything but full. */
const MOST_SPARE = 0.12;

/** In the first answer: some 5 ms each, and only where a fifth of a sheet at most may stay free on all together. */
const FIRST_STEPS = 40_000;
const FIRST_SPARE = 0.2;

/**
 * Looks for two to five sheets that are full or all but full: blocks of boxes are joined until they fill a sheet,
 * then sheets are chosen that share no box. What may be lost on all sheets together is one budget.
 */
export const fullSheets: SheetSearch = function* fullSheets({ bin, kinds, best, least }, work, random) {
  const most = best.length - 1;
  if (most < least || most < 2 || most > MOST_SHEETS) return null;
  const split = new SheetSplit(bin, kinds, most, random);
  if (split.spare < 0 || split.spare > MOST_SPARE * most * bin.width * bin.height) return null;
  for (const [level, tolerance] of tolerances.entries()) {
    if (work.steps <= 0 || (split.spare === 0 && tolerance !== exact)) break;
    const steps = split.spare === 0 ? work.steps : work.steps / (tolerances.length - level);
    const share = { steps };
    const found = yield* split.search(tolerance, share);
    work.steps -= steps - share.steps;
    if (found !== null) return found;
  }
  return null;
};

/**
 * The same at once, for sides that match all but to the tick: boxes cut from full sheets find together again.
 *
 * @returns boxes on so many sheets; null where none are found, or where sheets need not be nearly full
 */
export function fullSheetsAtOnce(
  bin: Bin,
  kinds: readonly BoxKind[],
  sheets: number,
  work: Work,
  random: Random,
): readonly (readonly LaidBox[])[] | null {
  if (sheets < 2 || sheets > MOST_SHEETS) return null;
  const split = new SheetSplit(bin, kinds, sheets, random);
  if (split.spare < 0 || split.spare > FIRST_SPARE * bin.width * bin.height) return null;
  for (const tolerance of split.spare === 0 ? [exact] : [exact, near]) {
    const steps = Math.max(0, Math.min(FIRST_STEPS, work.steps / 4));
    const share = { steps };
    const found = atOnce(split.search(tolerance, share));
    work.steps -= steps - share.steps;
    if (found !== null) return found;
  }
  return null;
}
