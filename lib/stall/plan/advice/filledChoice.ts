import { type Choice, fits, lessMoves, type Move, moved, nextMoves } from './limitedChoice';
import type { LimitedDesign, LimitedGoods, Room } from './limitedDesigns';

const NOISE = 1e-9;

/** How many moves may still be weighed, for a choice must not make anybody wait, and what none can earn more than. */
export interface Patience {
  left: number;
  readonly bound: number;
}

/**
 * Adds what still fits, the best for its room first: pieces of a design that comes along, or the least of another.
 *
 * @param patience is spent by what is weighed, and ends nothing here
 */
export function filledChoice(
  designs: readonly LimitedDesign[],
  from: Choice,
  room: Room,
  patience: Patience,
): Choice {
  let choice = from;
  patience.left -= from.bring.length;
  const open = designs.map((design) => nextMoves(design, choice.bring));
  for (;;) {
    const [best, second] = bestTwo(open, choice, room, patience);
    if (best === null) return choice;
    const many = together(best.move, choice, room, second);
    choice = moved(choice, many);
    const design = designs[best.of];
    if (design !== undefined) open[best.of] = nextMoves(design, choice.bring);
  }
}

/**
 * Puts another piece or design in the place of one, fills the room anew, and goes on while that earns more: what a price
 * for room leaves may be room that nothing fits.
 *
 * @param patience ends it with the best that was found where it is spent, or where nothing better can be
 */
export function improvedChoice(
  designs: readonly LimitedDesign[],
  from: Choice,
  room: Room,
  patience: Patience,
): Choice {
  let best = from;
  for (;;) {
    const better = bestExchange(designs, best, room, patience);
    if (better === null) return best;
    best = better;
  }
}

// Helpers

function bestExchange(
  designs: readonly LimitedDesign[],
  from: Choice,
  room: Room,
  patience: Patience,
): Choice | null {
  let best: Choice | null = null;
  for (const less of designs.flatMap((design) => lessMoves(design, from.bring))) {
    const without = moved(from, less);
    // What may come next is looked up for all goods.
    patience.left -= from.bring.length;
    for (const more of designs.flatMap((design) => nextMoves(design, without.bring))) {
      if (patience.left <= 0 || (best ?? from).worth >= patience.bound - NOISE) return best;
      const exchanged = moved(without, more);
      patience.left -= from.bring.length;
      if (!fits(exchanged, room)) continue;
      const filled = filledChoice(designs, exchanged, room, patience);
      if (filled.worth > (best ?? from).worth + NOISE) best = filled;
    }
  }
  return best;
}

/** What a move earns for its part of the room. */
const earnsFor = ({ worth, takes }: Move, room: Room): number =>
  worth / (takes.pieces / room.pieces + takes.cash / room.cash || NOISE);

interface Weighed {
  readonly move: Move;
  /** Which design it is of. */
  readonly of: number;
}

/** @returns the best move that fits, and what the next best of other goods earns for its room; 0 where there is none. */
function bestTwo(
  open: readonly (readonly Move[])[],
  { takes }: Choice,
  room: Room,
  patience: Patience,
): readonly [Weighed | null, number] {
  let best: Weighed | null = null;
  let [first, second] = [0, 0];
  for (const [of, moves] of open.entries()) {
    patience.left -= moves.length;
    for (const move of moves) {
      const after = { pieces: takes.pieces + move.takes.pieces, cash: takes.cash + move.takes.cash };
      if (move.worth <= NOISE || !fits({ takes: after }, room)) continue;
      const earns = earnsFor(move, room);
      if (earns > first) {
        second = first;
        first = earns;
        best = { move, of };
      } else second = Math.max(second, earns);
    }
  }
  return [best, second];
}

/** As many pieces at once as earn no less than the next best, where a move is one piece of some goods. */
function together(move: Move, { bring, takes }: Choice, room: Room, next: number): Move {
  const [goods, ...others] = move.goods;
  if (goods === undefined || others.length > 0) return move;
  const before = bring[goods.at] ?? 0;
  const isWorth = (more: number): boolean => {
    const all = piecesAdded(goods, before, 1 + more).takes;
    const last = piecesAdded(goods, before + more, 1);
    const after = { pieces: takes.pieces + all.pieces, cash: takes.cash + all.cash };
    return fits({ takes: after }, room) && last.worth > NOISE && earnsFor(last, room) >= next;
  };
  return piecesAdded(goods, before, 1 + mostThat(goods.most - before - 1, isWorth));
}

const piecesAdded = (goods: LimitedGoods, before: number, pieces: number): Move => ({
  goods: [goods],
  pieces: [pieces],
  worth:
    pieces === 1 ? goods.worthOf(before + 1) : goods.worthOfAll(before + pieces) - goods.worthOfAll(before),
  takes: { pieces, cash: goods.cashOfAll(before + pieces) - goods.cashOfAll(before) },
});

/** @returns the largest number up to so many of which something holds that holds of all below it. */
function mostThat(most: number, holds: (count: number) => boolean): number {
  let [yes, no] = [0, 1];
  while (no <= most && holds(no)) [yes, no] = [no, no * 2];
  no = Math.min(no, most + 1);
  while (no - yes > 1) {
    const middle = Math.floor((yes + no) / 2);
    if (holds(middle)) yes = middle;
    else no = middle;
  }
  return yes;
}
