import { boxKinds } from '@/lib/packing/boxKinds';
import { handedOut, sizeGroups } from '@/lib/packing/columns/sizeGroups';
import { commonMeasure } from '@/lib/packing/commonMeasure';
import { nameBoxes } from '@/lib/packing/nameBoxes';
import type { Effort } from '@/lib/packing/pieceRequest';
import { seededRandom } from '@/lib/packing/seededRandom';
import type { PackedSheets, SheetsRequest } from '@/lib/packing/sheet/packSheets';
import { binTicks } from '@/lib/packing/ticks';
import { printsOf } from './sections/printsOf';
import { sectionLayouts } from './sections/sectionLayouts';

/** Shorter by less than this is the noise of sums, mm. */
const NOISE_MM = 1e-6;

/**
 * Goes on looking for less roll under all prints together where a first layout is known.
 *
 * @param request its sheet is the longest print
 * @param first a layout on prints that end behind their last piece
 * @yields null after each slice of some 8 ms; a layout on less roll as soon as it is found
 * @returns the best, the first where none is better
 */
export function* betterRoll(
  request: SheetsRequest,
  first: PackedSheets,
  effort: Effort,
): Generator<PackedSheets | null, PackedSheets> {
  const kinds = boxKinds(request);
  const unit = commonMeasure(kinds);
  const ticks = (side: number) =>
    Math.floor(binTicks(side, request.marginMm, request.gutterMm) / unit) * unit;
  const longest = ticks(request.sheetHeightMm);
  const sizes = sizeGroups(kinds);
  const work = { steps: effort.steps };
  const random = seededRandom(effort.seed);
  let best = first;
  for (const sections of sectionLayouts(ticks(request.sheetWidthMm), longest, sizes, work, random)) {
    if (sections === null) {
      yield null;
      continue;
    }
    const sheets = handedOut(printsOf(sections, longest), sizes).map((boxes) => ({
      pieces: nameBoxes(boxes, request),
    }));
    const found = { ...first, sheets, count: sheets.length };
    const isBetter = lengthMm(found, request) < lengthMm(best, request) - NOISE_MM;
    if (isBetter) best = found;
    yield isBetter ? found : null;
  }
  return best;
}

const lengthMm = ({ sheets }: PackedSheets, { marginMm }: SheetsRequest): number =>
  sheets.reduce(
    (sum, { pieces }) => sum + Math.max(...pieces.map(({ yMm, heightMm }) => yMm + heightMm)) + marginMm,
    0,
  );
