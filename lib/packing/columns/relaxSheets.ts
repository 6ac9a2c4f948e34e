import { at } from '@/lib/packing/at';
import type { BoxKind } from '@/lib/packing/box';
import { type CutRoom, inTicks } from './cutRoom';
import { type Counts, MasterProgram } from './masterProgram';
import type { Pace } from './pace';
import { type Pattern, patternOf } from './pattern';

/** Prices are whole parts of a sheet, so that their sums are exact and so is the bound. */
const PARTS = 2 ** 30;

/** A column that saves less than this of a sheet is not worth its place. */
const LEAST_SAVING = 1e-7;

/** Products of numbers that take as long as one step of the other searches, about. */
const PRODUCTS_A_STEP = 5;

/** Part of the best prices so far in those that ask for the next sheet. */
const HELD_BACK = 0.5;

/** Boxes to lay, and what is known of sheets that hold some of them. */
interface Asked {
  readonly room: CutRoom;
  readonly sizes: readonly BoxKind[];
  readonly counts: Counts;
  /** For each size first a pattern that holds no other. */
  readonly known: readonly Pattern[];
}

/** What parts of sheets can do. */
interface Relaxed {
  readonly program: MasterProgram<Pattern>;
  /** No guillotine layout of those boxes needs fewer sheets; 0 where that is not known. */
  readonly bound: number;
  /** Patterns that were not known. */
  readonly found: readonly Pattern[];
}

/**
 * Finds how often which pattern would be used if parts of sheets counted, by column generation: the prices of the
 * boxes under the patterns so far ask for the dearest sheet, which becomes the next pattern, until no sheet is
 * worth more than it costs, or until more patterns cannot change the whole number of sheets.
 *
 * P. Gilmore, R. Gomory, "Multistage cutting stock problems of two and more dimensions", Operations Research 13,
 * 94-120, 1965. The bound holds at every step: A. Farley, "A note on bounding a class of linear programming
 * problems, including cutting stock problems", Operations Research 38, 922-923, 1990. Prices held back so that they
 * do not swing: P. Wentges, International Transactions in Operational Research 4, 151-162, 1997.
 *
 * @param rounds sheets asked for, at most
 */
export function* relaxSheets(asked: Asked, rounds: number, pace: Pace): Generator<void, Relaxed> {
  const { room, sizes, counts } = asked;
  const found: Pattern[] = [];
  const program = new MasterProgram(counts, asked.known.slice(0, counts.length));
  let bound = 0;
  let best: { readonly sheets: number; readonly prices: Float64Array } | null = null;
  let holds = true;
  yield* enterKnown(program, asked.known, pace);
  for (let round = 0; round < rounds && pace.left > 0; round += 1) {
    if (bound > 0 && bound >= Math.ceil(program.sheets - LEAST_SAVING)) break;
    const current = program.prices;
    const held: Float64Array | null = holds && best !== null ? best.prices : null;
    const prices = current.map((price, size) =>
      Math.floor(PARTS * Math.max(0, held === null ? price : mixed(price, at(held, size)))),
    );
    const value = yield* room.table.fill(prices, pace);
    if (value === 0) break;
    const sheets = worthOf(counts, prices) / value;
    if (room.exact) bound = Math.max(bound, Math.ceil(sheets));
    if (best === null || sheets > best.sheets)
      best = { sheets, prices: prices.map((price) => price / value) };
    const pattern = patternOf(inTicks(room.table.layOut(), room.unit, sizes), sizes.length);
    const saves = worthOf(pattern.counts, current) > 1 + LEAST_SAVING;
    if (!saves && held === null) break;
    holds = saves;
    if (!saves) continue;
    found.push(pattern);
    program.enter(pattern);
    yield* enterKnown(program, [...asked.known, ...found], pace);
  }
  return { program, bound, found };
}

const mixed = (price: number, held: number): number => HELD_BACK * held + (1 - HELD_BACK) * price;

function worthOf(counts: Counts, prices: Float64Array): number {
  let sum = 0;
  for (let size = 0; size < prices.length; size += 1) sum += (prices[size] ?? 0) * (counts[size] ?? 0);
  return sum;
}

/** Takes in patterns known until none saves anything; in a circle of equal programs it gives up. */
export function* enterKnown<Column extends { readonly counts: Counts }>(
  program: MasterProgram<Column>,
  known: readonly Column[],
  pace: Pace,
): Generator<void, void> {
  const size = known[0]?.counts.length ?? 0;
  for (let turn = 0; turn < 50 + 5 * size; turn += 1) {
    if (pace.spend((size * (6 * size + known.length)) / PRODUCTS_A_STEP)) yield;
    if (program.enterSurplus()) continue;
    const { prices } = program;
    let best: Column | null = null;
    let most = 1 + LEAST_SAVING;
    for (const pattern of known) {
      const worth = worthOf(pattern.counts, prices);
      if (worth > most) [best, most] = [pattern, worth];
    }
    if (best === null) return;
    program.enter(best);
  }
}
