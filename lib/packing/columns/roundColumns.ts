import { at } from '@/lib/packing/at';
import type { BoxKind, Work } from '@/lib/packing/box';
import type { Random } from '@/lib/packing/seededRandom';
import type { Bin } from '@/lib/packing/sheet/fillSheets';
import { packBoxes } from '@/lib/packing/sheet/packBoxes';
import type { CutRoom } from './cutRoom';
import type { Counts } from './masterProgram';
import type { Pace } from './pace';
import { countsLeft, type Pattern, patternOf, withoutSurplus } from './pattern';
import { relaxSheets } from './relaxSheets';

/** Parts of sheets this near to whole are whole. */
const NEAR = 1e-6;

/** New patterns for what is left, each time something is laid. */
const ROUNDS = 6;

/** Sheets that boxes left over may need, at most, to be mixed freely rather than by patterns. */
const MIXED_SHEETS = 7;

/** Free places looked at for each mixing; some 5 ms. */
const MIX_STEPS = 40_000;

/** What it takes to see whether a pattern holds more than is left, about. */
const STEPS_A_PATTERN = 20;

/** All that stays the same from one rounding to the next. */
interface Rounding {
  readonly bin: Bin;
  readonly sizes: readonly BoxKind[];
  readonly room: CutRoom;
  /** A sheet of each size alone. */
  readonly alone: readonly Pattern[];
  /** Patterns found; grows. */
  readonly pool: Pattern[];
}

/**
 * Uses each pattern as often as the whole of what parts of sheets say, works out anew what parts would do for the
 * boxes left, and so on; where no pattern is used a whole time, one that nearly is. What is left at last is mixed
 * freely.
 *
 * Rounding down with new patterns for the rest: G. Wäscher, T. Gau, "Heuristics for the integer one-dimensional
 * cutting stock problem: a computational study", OR Spektrum 18, 131-144, 1996.
 *
 * @param most sheets, at most
 * @param bold how freely the pattern to round up is drawn; 0 takes the one nearest to whole
 * @returns null where more sheets were needed
 */
export function* roundColumns(
  rounding: Rounding,
  most: number,
  bold: number,
  pace: Pace,
  random: Random,
): Generator<void, readonly Pattern[] | null> {
  const { bin, sizes, room, pool } = rounding;
  const laid: Pattern[] = [];
  let left: Counts = sizes.map(({ count }) => count);
  while (left.some((count) => count > 0)) {
    const need = most - laid.length;
    if (need <= 0 || areaOf(left, sizes) > need * bin.width * bin.height || pace.left <= 0) return null;
    const alone = rounding.alone.map((pattern, size) =>
      withoutSurplus(
        pattern,
        left.map((count, other) => (other === size ? Math.max(1, count) : 0)),
      ),
    );
    const some = pool.map((pattern) => withoutSurplus(pattern, left));
    const known = [...alone, ...some];
    if (pace.spend(STEPS_A_PATTERN * known.length)) yield;
    const { program, found } = yield* relaxSheets({ room, sizes, counts: left, known }, ROUNDS, pace);
    pool.push(...found);
    const { uses } = program;
    if (program.sheets <= MIXED_SHEETS) {
      const steps = Math.min(pace.left, MIX_STEPS);
      const own = { steps };
      yield;
      const mixed = mix(left, rounding, need, own, random);
      if (pace.spend(steps - own.steps)) yield;
      if (mixed !== null) return [...laid, ...mixed];
    }
    if (program.sheets > need + NEAR) return null;
    const before = laid.length;
    for (const { column, times } of uses) {
      const whole = Math.floor((times + NEAR) * (1 - bold * random()));
      for (let time = 0; time < whole; time += 1) left = lay(column, left, laid);
    }
    if (laid.length > before) continue;
    const chosen = uses.reduce<{ pattern: Pattern | null; weight: number }>(
      (best, { column, times }) => {
        const weight = times * (1 - bold * random());
        return weight > best.weight ? { pattern: column, weight } : best;
      },
      { pattern: null, weight: 0 },
    ).pattern;
    if (chosen === null) return null;
    left = lay(chosen, left, laid);
  }
  return laid.length <= most ? laid : null;
}

function lay(pattern: Pattern, left: Counts, laid: Pattern[]): Counts {
  const kept = withoutSurplus(pattern, left);
  if (kept.boxes.length === 0) return left;
  laid.push(kept);
  return countsLeft(left, kept.counts);
}

function mix(
  left: Counts,
  { bin, sizes }: Rounding,
  need: number,
  work: Work,
  random: Random,
): readonly Pattern[] | null {
  const kinds = sizes.map((size, index) => ({ ...size, count: at(left, index) }));
  // A single sheet is not asked for: the search for one takes too long for a slice of work.
  const sheets = packBoxes(kinds, bin, Math.max(2, need), work, random);
  return sheets.length <= need ? sheets.map((boxes) => patternOf(boxes, sizes.length)) : null;
}

const areaOf = (counts: Counts, sizes: readonly BoxKind[]): number =>
  sizes.reduce((sum, { width, height }, size) => sum + width * height * at(counts, size), 0);
