import type { BoxKind } from '@/lib/packing/box';
import { type CutRoom, inTicks } from '@/lib/packing/columns/cutRoom';
import { type Counts, MasterProgram } from '@/lib/packing/columns/masterProgram';
import type { Pace } from '@/lib/packing/columns/pace';
import { enterKnown } from '@/lib/packing/columns/relaxSheets';
import { type Section, sectionOf } from './section';

/** Prices are whole numbers, so that their sums are exact. */
const PARTS = 2 ** 30;

/** A section that saves less than this part of its length is not worth its place. */
const LEAST_SAVING = 1e-7;

/** Sections of different lengths taken from one table. */
const SECTIONS_A_TABLE = 4;

/** Boxes to lay on a roll, and what is known of sections that hold some of them. */
interface Asked {
  /** Rooms as wide as the roll. */
  readonly rooms: readonly CutRoom[];
  readonly sizes: readonly BoxKind[];
  readonly counts: Counts;
  /** For each size first a section that holds no other. */
  readonly known: readonly Section[];
  /** Ticks of roll that count as one. */
  readonly measure: number;
}

interface Relaxed {
  readonly program: MasterProgram<Section>;
  /** Sections that were not known. */
  readonly found: readonly Section[];
}

/**
 * Finds how much roll would be laid by which section if parts of sections counted: as with sheets, but each new
 * section may have any length and is judged by what it is worth for its length.
 *
 * P. Gilmore, R. Gomory, "Multistage cutting stock problems of two and more dimensions", Operations Research 13,
 * 94-120, 1965.
 *
 * @param rounds tables worked out, at most
 */
export function* relaxRoll(asked: Asked, rounds: number, pace: Pace): Generator<void, Relaxed> {
  const { rooms, sizes, counts, known, measure } = asked;
  const found: Section[] = [];
  const program = new MasterProgram<Section>(counts, known.slice(0, counts.length));
  yield* enterKnown(program, known, pace);
  let idle = 0;
  for (let round = 0; round < rounds && idle < rooms.length && pace.left > 0; round += 1) {
    const room = rooms[round % rooms.length];
    if (room === undefined) break;
    const prices = program.prices.map((price) => Math.floor(PARTS * Math.max(0, price)));
    yield* room.table.fill(prices, pace);
    const fresh = dearest(room, measure).map((row) =>
      sectionOf(inTicks(room.table.layOut(row), room.unit, sizes), sizes.length, measure),
    );
    idle = fresh.length === 0 ? idle + 1 : 0;
    found.push(...fresh);
    if (fresh.length > 0) yield* enterKnown(program, [...known, ...found], pace);
  }
  return { program, found };
}

/** @returns rows of the lengths that are worth the most for what they take, where that saves anything. */
function dearest({ table, unit }: CutRoom, measure: number): readonly number[] {
  return table.lengths
    .map(({ length, worth }, row) => ({
      row,
      saves: length === 0 ? 0 : (worth / PARTS / (length * unit)) * measure,
    }))
    .filter(({ saves }) => saves > 1 + LEAST_SAVING)
    .sort((a, b) => b.saves - a.saves || a.row - b.row)
    .slice(0, SECTIONS_A_TABLE)
    .map(({ row }) => row);
}
