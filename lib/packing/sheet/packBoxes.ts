import type { Box, BoxKind, LaidBox, Work } from '@/lib/packing/box';
import { boxSizes } from '@/lib/packing/boxSizes';
import { fullSheetsAtOnce } from '@/lib/packing/few/fullSheets';
import { fillBin } from '@/lib/packing/fillBin';
import type { Random } from '@/lib/packing/seededRandom';
import { type Bin, fillSheets } from './fillSheets';
import { improveSheets } from './improveSheets';
import { type OpenSheet, placeRules } from './openSheet';

/** Skylines looked at, at most, for a single sheet filled without a gap; some 50 ms. */
const FILL_STEPS = 40_000;

/** Free places a box finds on a sheet, about: says beforehand what comparing all sheets will cost. */
const PLACES_A_SHEET = 4;

/**
 * Packs boxes into as few sheets as it finds: largest first by several measures and rules of place, then one sheet
 * without a gap, or a few full ones, where they could be enough, then by taking sheets apart.
 *
 * @param kinds each fits the room by itself
 * @param least no layout needs fewer sheets: the search ends there
 * @returns boxes sheet by sheet, the fullest first
 */
export function packBoxes(
  kinds: readonly BoxKind[],
  bin: Bin,
  least: number,
  work: Work,
  random: Random,
): readonly (readonly LaidBox[])[] {
  const boxes = kinds.flatMap(({ width, height, count }, kind) =>
    Array.from({ length: count }, (): Box => ({ kind, width, height })),
  );
  if (boxes.length === 0) return [];
  const first = construct(boxes, bin, least, work);
  if (first.length > 1 && least === 1) {
    const single = fillBin(bin, kinds, FILL_STEPS);
    if (single !== null) return [single];
  }
  if (first.length > least) {
    const full = fullSheetsAtOnce(bin, kinds, least, work, random);
    if (full !== null) return full;
  }
  return improveSheets(first, bin, least, work, random)
    .toSorted((a, b) => b.used - a.used)
    .map(({ laid }) => laid);
}

/** Tries orders and rules until the bound is met or the work is used up; one of them always. */
function construct(boxes: readonly Box[], bin: Bin, least: number, work: Work): readonly OpenSheet[] {
  let best: readonly OpenSheet[] | null = null;
  for (const choice of ['first', 'best'] as const) {
    for (const size of boxSizes) {
      const sorted = boxes.toSorted((a, b) => size(b) - size(a) || b.width - a.width || a.kind - b.kind);
      for (const rule of placeRules) {
        if (best !== null && (best.length <= least || work.steps <= 0)) return best;
        const isTooMuch = boxes.length * (best?.length ?? 1) * PLACES_A_SHEET > work.steps;
        if (choice === 'best' && isTooMuch) continue;
        const mostSheets = best === null ? Number.POSITIVE_INFINITY : best.length;
        const sheets = fillSheets(sorted, bin, { rule, choice, mostSheets }, work);
        if (sheets !== null && (best === null || isBetter(sheets, best))) best = sheets;
      }
    }
  }
  if (best === null) throw new RangeError('a box that does not fit the room was to be packed');
  return best;
}

/** Fewer sheets; of as many, those whose emptiest is emptier. */
function isBetter(sheets: readonly OpenSheet[], than: readonly OpenSheet[]): boolean {
  const emptiest = (all: readonly OpenSheet[]) =>
    all.reduce((least, { used }) => Math.min(least, used), Infinity);
  return sheets.length < than.length || (sheets.length === than.length && emptiest(sheets) < emptiest(than));
}
