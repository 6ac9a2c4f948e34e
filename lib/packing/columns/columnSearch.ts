import type { LaidBox } from '@/lib/packing/box';
import type { SheetSearch } from '@/lib/packing/sheet/sheetSearch';
import { cutRoom, MOST_POINTS } from './cutRoom';
import { Pace } from './pace';
import { gridPattern, type Pattern, patternOf } from './pattern';
import { relaxSheets } from './relaxSheets';
import { roundColumns } from './roundColumns';
import { handedOut, type SizeGroup, sizeGroups } from './sizeGroups';

/** Sizes are rows of the program; more of them are no longer "few kinds". */
const MOST_SIZES = 60;

/** New patterns for all boxes, at most. */
const ROUNDS = 400;

/** Places for cuts in each direction when patterns are first looked for, and when they are rounded; some 2 ms. */
const QUICK_POINTS = 100;

/** Part of the work for the patterns and the bound; the rest goes to rounding. */
const SHARE_OF_PATTERNS = 0.6;

/** How far from the program's own numbers roundings after the first one stray. */
const BOLD = 0.8;

/** Roundings tried, at most; by turns with few places for cuts and with all of them. */
const TRIES = 200;

/** Copies of a size on average, at least: patterns that are used once are no patterns. */
const FEWEST_COPIES = 2;

/**
 * Many copies of few sizes: finds patterns that cuts from edge to edge make, and how many sheets of each. It also tells
 * how many sheets such layouts need at least; a layout of its own may need fewer, as what is left over is mixed freely
 * and sheets of the layout so far serve as patterns too.
 */
export const columnSearch: SheetSearch = function* (question, work, random) {
  const { bin, kinds, best, least, tellGuillotineBound } = question;
  const sizes = sizeGroups(kinds);
  const boxes = sizes.reduce((sum, { count }) => sum + count, 0);
  if (sizes.length > MOST_SIZES || boxes < FEWEST_COPIES * sizes.length) return null;
  const alone = sizes.map((size, index) => gridPattern(bin, index, size, sizes.length));
  const pool = knownPatterns(best, sizes);
  const counts = sizes.map(({ count }) => count);
  const quick = cutRoom(bin, sizes, QUICK_POINTS);
  yield;
  const whole = quick.exact ? quick : cutRoom(bin, sizes, MOST_POINTS);
  const own = { steps: work.steps * SHARE_OF_PATTERNS };
  work.steps -= own.steps;
  let bound = 0;
  for (const room of new Set([quick, whole])) {
    const known = [...alone, ...pool];
    const relaxed = yield* relaxSheets({ room, sizes, counts, known }, ROUNDS, new Pace(own));
    pool.push(...relaxed.found);
    bound = Math.max(bound, relaxed.bound);
  }
  work.steps += own.steps;
  if (bound > 0) tellGuillotineBound?.(bound);
  const enough = Math.max(least, bound);
  const pace = new Pace(work);
  let found: readonly Pattern[] | null = null;
  for (let turn = 0; turn < TRIES && work.steps > 0; turn += 1) {
    const most: number = (found?.length ?? best.length) - 1;
    if (most < enough) break;
    const rounding = { bin, sizes, room: turn % 2 === 0 ? quick : whole, alone, pool };
    found = (yield* roundColumns(rounding, most, turn === 0 ? 0 : BOLD, pace, random)) ?? found;
  }
  if (found === null) return null;
  return handedOut(
    found.map(({ boxes }) => boxes),
    sizes,
  );
};

/** The sheets of the layout so far, each kind of sheet once. */
function knownPatterns(best: readonly (readonly LaidBox[])[], sizes: readonly SizeGroup[]): Pattern[] {
  const sizeOf = new Map(sizes.flatMap(({ members }, size) => members.map(({ kind }) => [kind, size])));
  const patterns = new Map<string, Pattern>();
  for (const boxes of best) {
    const pattern = patternOf(
      boxes.map((box) => ({ ...box, kind: sizeOf.get(box.kind) ?? 0 })),
      sizes.length,
    );
    patterns.set(pattern.counts.join(), pattern);
  }
  return [...patterns.values()];
}
