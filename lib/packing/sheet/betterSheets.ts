import type { LaidBox } from '@/lib/packing/box';
import { columnSearch } from '@/lib/packing/columns/columnSearch';
import { fullSheets } from '@/lib/packing/few/fullSheets';
import { oneSheetLess } from '@/lib/packing/few/oneSheetLess';
import { inSlices } from '@/lib/packing/inSlices';
import { nameBoxes, unnamedBoxes } from '@/lib/packing/nameBoxes';
import type { Effort } from '@/lib/packing/pieceRequest';
import { seededRandom } from '@/lib/packing/seededRandom';
import { goOnImproving } from './goOnImproving';
import type { PackedSheets, SheetsRequest } from './packSheets';
import type { SheetSearch } from './sheetSearch';
import { sheetsRoom } from './sheetsRoom';

/** Some two seconds of work at most; another seed than the first layout's looks elsewhere. */
export const FURTHER_EFFORT: Effort = { steps: 24_000_000, seed: 2 };

/** A search and how much of the work is for it, in parts of all. */
export interface ListedSearch {
  readonly search: SheetSearch;
  readonly share: number;
  /** It goes as far as it can by itself: asked again it would only do the same work again. */
  readonly once?: true;
}

/** In the order in which they are tried; what one leaves of its work is for those behind it. */
const searches: readonly ListedSearch[] = [
  { search: columnSearch, share: 3, once: true },
  { search: fullSheets, share: 2 },
  { search: goOnImproving, share: 4 },
  { search: oneSheetLess, share: 3 },
];

/**
 * Where no straight cuts can do better, other layouts hardly ever do: nobody is to wait long for that. Of the steps that
 * are left, this part is still taken: a layout that no straight cuts make may be one sheet below.
 */
const SHARE_PAST_STRAIGHT_CUTS = 0.5;

type Layout = readonly (readonly LaidBox[])[];

/**
 * Goes on looking for fewer sheets where a first layout is known, a slice of work at a time.
 *
 * @param first what `packSheets` found for the same request
 * @yields null after each slice; a layout with fewer sheets as soon as it is found
 * @returns the best, the first where none is better
 */
export function* betterSheets(
  request: SheetsRequest,
  first: PackedSheets,
  effort: Effort,
  list: readonly ListedSearch[] = searches,
): Generator<PackedSheets | null, PackedSheets> {
  let found = first;
  let wasStraightBest = false;
  let steps = effort.steps;
  let shares = list.reduce((sum, { share }) => sum + share, 0);
  const { swapped, bin, kinds } = sheetsRoom(request);
  const random = seededRandom(effort.seed);
  for (const { search, share, once } of list) {
    const work = { steps: (steps * share) / shares };
    steps -= work.steps;
    shares -= share;
    while (work.steps > 0 && found.count > found.lowerBound) {
      const question = {
        bin,
        kinds,
        least: found.lowerBound,
        best: found.sheets.map(({ pieces }) => unnamedBoxes(pieces, request, swapped)),
        tellGuillotineBound: (guillotineBound: number) => {
          found = { ...found, guillotineBound };
        },
      };
      const better = yield* inSlices(search(question, work, random));
      if (better === null || better.length >= found.count) break;
      found = { ...found, sheets: inOrder(better, request, swapped), count: better.length };
      yield found;
      if (once === true) break;
    }
    steps += Math.max(0, work.steps);
    const isStraightBest = found.guillotineBound !== null && found.count <= found.guillotineBound;
    if (isStraightBest && !wasStraightBest) steps *= SHARE_PAST_STRAIGHT_CUTS;
    wasStraightBest = isStraightBest;
  }
  return found;
}

/** Sheets of one piece first, then the fullest, equal ones behind each other. */
function inOrder(layout: Layout, request: SheetsRequest, swapped: boolean): PackedSheets['sheets'] {
  return layout
    .map((boxes) => {
      const pieces = nameBoxes(boxes, request, swapped);
      return {
        pieces,
        isMixed: boxes.some(({ kind }) => kind !== boxes[0]?.kind),
        used: boxes.reduce((sum, { width, height }) => sum + width * height, 0),
        key: JSON.stringify(pieces),
      };
    })
    .sort(
      (a, b) =>
        Number(a.isMixed) - Number(b.isMixed) ||
        b.used - a.used ||
        (a.key < b.key ? -1 : Number(a.key > b.key)),
    )
    .map(({ pieces }) => ({ pieces }));
}
