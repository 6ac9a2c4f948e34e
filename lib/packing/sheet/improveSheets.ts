import { at } from '@/lib/packing/at';
import type { Box, Work } from '@/lib/packing/box';
import { boxSizes } from '@/lib/packing/boxSizes';
import type { Random } from '@/lib/packing/seededRandom';
import { type Bin, fillSheets } from './fillSheets';
import { type OpenSheet, placeRules } from './openSheet';

/** How far apart in size two boxes may be and still change places in the order. */
const LARGEST_SHUFFLE = 0.8;

/**
 * Takes a few sheets apart and lays their boxes anew, over and over, and keeps what is not worse: fewer sheets, or
 * fuller ones beside emptier ones, until the emptiest is gone.
 *
 * Ruin and recreate: G. Schrimpf and others, Journal of Computational Physics 159, 139-171, 2000. Fuller beside
 * emptier: E. Falkenauer, Journal of Heuristics 2, 5-30, 1996.
 *
 * @param least stop at this many sheets: no fewer are possible
 * @param random same numbers, same answer
 */
export function improveSheets(
  start: readonly OpenSheet[],
  bin: Bin,
  least: number,
  work: Work,
  random: Random,
): readonly OpenSheet[] {
  let sheets = [...start];
  while (work.steps > 0 && sheets.length > least) {
    work.steps -= sheets.length / 4;
    const taken = chooseSheets(sheets, random);
    const ruined = taken.map((index) => at(sheets, index));
    const boxes = shuffled(ruined.flatMap(boxesOf), random);
    const rule = at(placeRules, Math.floor(random() * placeRules.length));
    const choice = random() < 0.5 ? 'first' : 'best';
    const again = fillSheets(boxes, bin, { rule, choice, mostSheets: ruined.length }, work);
    if (again === null) continue;
    if (again.length < ruined.length || fullness(again) >= fullness(ruined)) {
      const set = new Set(taken);
      sheets = [...sheets.filter((_, index) => !set.has(index)), ...again];
    }
  }
  return sheets;
}

/** The emptiest sheet, mostly, and one to three others. */
function chooseSheets(sheets: readonly OpenSheet[], random: Random): readonly number[] {
  const chosen = new Set<number>();
  const emptiest = sheets.reduce(
    (best, sheet, index) => (sheet.used < at(sheets, best).used ? index : best),
    0,
  );
  if (random() < 0.7) chosen.add(emptiest);
  const wanted = Math.min(sheets.length, 2 + Math.floor(random() * 3));
  while (chosen.size < wanted) chosen.add(Math.floor(random() * sheets.length));
  return [...chosen];
}

const boxesOf = (sheet: OpenSheet): readonly Box[] =>
  sheet.laid.map(({ kind, width, height }) => ({ kind, width, height }));

/** The sum of squares grows when a box goes from an emptier sheet to a fuller one. */
const fullness = (sheets: readonly OpenSheet[]): number =>
  sheets.reduce((sum, { used }) => sum + used * used, 0);

function shuffled(boxes: readonly Box[], random: Random): readonly Box[] {
  const size = at(boxSizes, Math.floor(random() * boxSizes.length));
  const spread = random() * LARGEST_SHUFFLE;
  return boxes
    .map((box) => ({ box, key: size(box) * (1 - spread * random()) }))
    .sort((a, b) => b.key - a.key)
    .map(({ box }) => box);
}
