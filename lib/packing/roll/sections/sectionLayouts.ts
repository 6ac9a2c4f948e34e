import type { Work } from '@/lib/packing/box';
import { type CutRoom, cutRoom } from '@/lib/packing/columns/cutRoom';
import { Pace } from '@/lib/packing/columns/pace';
import type { SizeGroup } from '@/lib/packing/columns/sizeGroups';
import { inSlices } from '@/lib/packing/inSlices';
import type { Random } from '@/lib/packing/seededRandom';
import { relaxRoll } from './relaxRoll';
import { freeEnd, type RollRounding, roundSections } from './roundSections';
import { rowOf, type Section } from './section';

/** Places for cuts in each direction. */
const POINTS = 140;

/** Rooms that sections are cut from, in longest sides of a box. */
const ROOMS = [1, 2.5] as const;

/** Tables for all boxes, at most. */
const ROUNDS = 120;

/** Beyond so many sizes hardly any is laid twice in one way. */
const MOST_SIZES = 40;

/** Boxes looked at on free ends in the time of one step of the tables. */
const LOOKS_A_STEP = 3;

/** What the last boxes need of a longest print when they are laid freely, a try each. */
const FREELY = [1, 0.6, 0.35, 0.8, 0.2] as const;

/** Parts of the work: for boxes that go on one print, and for finding sections. */
const SHARES = { onePrint: 0.5, sections: 0.3 } as const;

/**
 * Ways to lay boxes on a roll: all of them freely where they go on one print, and by sections that are laid again and
 * again with what is left over laid freely.
 *
 * @param longest print, ticks
 * @yields null after each slice, or a whole layout
 */
export function* sectionLayouts(
  width: number,
  longest: number,
  sizes: readonly SizeGroup[],
  work: Work,
  random: Random,
): Generator<readonly Section[] | null, void> {
  const counts = sizes.map(({ count }) => count);
  const measure = longest;
  const area = sizes.reduce((sum, size) => sum + size.width * size.height * size.count, 0);
  if (area <= width * longest) {
    const steps = work.steps * SHARES.onePrint;
    work.steps -= steps;
    const end = yield* inSlices(freeEnd({ width, sizes, measure }, counts, steps * LOOKS_A_STEP, random));
    if (end.length <= longest) yield [end];
  }
  if (sizes.length > MOST_SIZES) return;
  const alone = sizes.map((size, kind) => rowOf(width, longest, kind, size, sizes.length, measure));
  const side = Math.max(...sizes.map((size) => Math.max(size.width, size.height)));
  const rooms: CutRoom[] = [];
  for (const sides of ROOMS) {
    rooms.push(cutRoom({ width, height: Math.min(longest, sides * side) }, sizes, POINTS));
    yield null;
  }
  const own = { steps: work.steps * SHARES.sections };
  work.steps -= own.steps;
  const known = [...alone];
  const { found } = yield* inSlices(
    relaxRoll({ rooms, sizes, counts, known, measure }, ROUNDS, new Pace(own)),
  );
  work.steps += own.steps;
  const rounding: RollRounding = { width, longest, sizes, rooms, alone, pool: [...found], measure };
  for (const [turn, freely] of FREELY.entries()) {
    if (work.steps <= 0) return;
    const free = work.steps / (FREELY.length - turn) / 2;
    work.steps -= free;
    yield yield* inSlices(roundSections(rounding, freely, free * LOOKS_A_STEP, new Pace(work), random));
  }
}
