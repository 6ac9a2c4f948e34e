import { at } from '@/lib/packing/at';
import type { Box, BoxKind } from '@/lib/packing/box';
import type { CutRoom } from '@/lib/packing/columns/cutRoom';
import type { Counts } from '@/lib/packing/columns/masterProgram';
import type { Pace } from '@/lib/packing/columns/pace';
import { countsLeft } from '@/lib/packing/columns/pattern';
import { improvingRoll } from '@/lib/packing/roll/improveRoll';
import { rollBound } from '@/lib/packing/roll/rollBound';
import type { Random } from '@/lib/packing/seededRandom';
import { relaxRoll } from './relaxRoll';
import { neededOf, type Section, sectionOf } from './section';

/** Parts this near to whole are whole. */
const NEAR = 1e-6;

/** Tables for what is left, each time something is laid. */
const ROUNDS = 6;

/** All that stays the same from one rounding to the next. */
export interface RollRounding {
  readonly width: number;
  /** The longest print, ticks. */
  readonly longest: number;
  readonly sizes: readonly BoxKind[];
  readonly rooms: readonly CutRoom[];
  readonly alone: readonly Section[];
  /** Sections found; grows. */
  readonly pool: Section[];
  readonly measure: number;
}

/**
 * Lays each section as often as the whole of its part says, works out anew what parts would do for the boxes left,
 * and so on; where none is laid a whole time, the one nearest to it. The last boxes are laid freely on one piece.
 *
 * @param freely boxes are laid freely once they need less of a longest print than this share
 * @param freeSteps boxes looked at for the free end
 * @returns sections, the free end last
 */
export function* roundSections(
  rounding: RollRounding,
  freely: number,
  freeSteps: number,
  pace: Pace,
  random: Random,
): Generator<void, readonly Section[]> {
  const { longest, sizes, rooms, pool, measure } = rounding;
  const laid: Section[] = [];
  let left: Counts = sizes.map(({ count }) => count);
  let most = freely * longest;
  while (left.some((count) => count > 0)) {
    const known = [...aloneOf(rounding, left), ...neededOfAll(pool, left, measure)];
    const { program, found } = yield* relaxRoll({ rooms, sizes, counts: left, known, measure }, ROUNDS, pace);
    pool.push(...found);
    if (program.sheets * measure <= most) {
      const end = yield* freeEnd(rounding, left, freeSteps, random);
      if (end.length <= longest) return [...laid, end];
      most = program.sheets * measure * 0.8;
    }
    const before = laid.length;
    let nearest: { readonly section: Section; readonly part: number } | null = null;
    for (const { column, times } of program.uses) {
      const wanted = (times * measure) / column.length;
      for (let time = 1; time <= wanted + NEAR; time += 1) left = lay(column, left, laid, measure);
      const part = wanted % 1;
      if (nearest === null || part > nearest.part) nearest = { section: column, part };
    }
    if (laid.length > before) continue;
    if (nearest === null) throw new RangeError('boxes are left that no section holds');
    left = lay(nearest.section, left, laid, measure);
  }
  return laid;
}

/** For each size a row of it, of no more boxes than are left. */
const aloneOf = ({ alone, measure }: RollRounding, left: Counts): readonly Section[] =>
  alone.map((row, size) => {
    const some = left.map((count, other) => (other === size ? Math.max(1, count) : 0));
    return neededOf(row, some, measure) ?? row;
  });

const neededOfAll = (pool: readonly Section[], left: Counts, measure: number): readonly Section[] =>
  pool.flatMap((section) => neededOf(section, left, measure) ?? []);

function lay(section: Section, left: Counts, laid: Section[], measure: number): Counts {
  const needed = neededOf(section, left, measure);
  if (needed === null) return left;
  laid.push(needed);
  return countsLeft(left, needed.held);
}

/** @returns all boxes left on one piece of roll, as short as is found */
export function* freeEnd(
  { width, sizes, measure }: Pick<RollRounding, 'width' | 'sizes' | 'measure'>,
  left: Counts,
  steps: number,
  random: Random,
): Generator<void, Section> {
  const kinds = sizes
    .map((size, index) => ({ ...size, count: at(left, index) }))
    .filter(({ count }) => count > 0);
  const boxes = sizes.flatMap((size, kind) =>
    Array.from({ length: at(left, kind) }, (): Box => ({ kind, width: size.width, height: size.height })),
  );
  const mayTurn = sizes.some((size) => size.mayTurn);
  const built = yield* improvingRoll(boxes, { width, mayTurn }, rollBound(width, kinds), { steps }, random);
  return sectionOf(built.laid, sizes.length, measure);
}
