import { at } from '@/lib/packing/at';
import { atOnce } from '@/lib/packing/atOnce';
import type { Box, Work } from '@/lib/packing/box';
import { boxSizes } from '@/lib/packing/boxSizes';
import type { Random } from '@/lib/packing/seededRandom';
import { type BuiltRoll, buildRoll } from './buildRoll';

/** How often a little longer roll is taken for the moment, to get away from where every change makes it longer. */
const DETOUR_CHANCE = 0.02;

/** By what share of the roll it may then be longer. */
const DETOUR = 0.015;

/** How often four boxes change places instead of two. */
const SECOND_CHANGE = 0.2;

/** Ways to put boxes in order, the largest first. */
const orders: readonly ((box: Box) => number)[] = [...boxSizes, ({ width }) => width, ({ height }) => height];

/** What laying a box and making room for it takes, in boxes looked at. */
const LOOKS_A_BOX = 24;

/** Boxes looked at between two pauses, about; some 8 ms. */
const STEPS_A_SLICE = 600_000;

/**
 * Looks for the shortest roll: builds it from several orders, then lets two boxes change places over and over and
 * keeps what is not longer, now and then what is.
 *
 * Lowest gap, best fit and local search over the order of the boxes: L. Wei, D. Zhang, Q. Chen, "A least wasted
 * first heuristic algorithm for the rectangular packing problem", Computers & Operations Research 36, 1608-1614,
 * 2009. Here the fit is marked as `buildRoll` says, and orders change by swaps.
 *
 * @param least stop at this length, ticks: no layout is shorter
 */
export function* improvingRoll(
  boxes: readonly Box[],
  bin: { readonly width: number; readonly mayTurn: boolean },
  least: number,
  work: Work,
  random: Random,
): Generator<void, BuiltRoll> {
  const start = firstRoll(boxes, bin, least, work);
  let best = start.roll;
  let pause = work.steps - STEPS_A_SLICE;
  let order = start.order;
  let length = best.length;
  while (work.steps > 0 && best.length > least) {
    work.steps -= order.length * LOOKS_A_BOX;
    const next = exchanged(order, random);
    const slack = random() < DETOUR_CHANCE ? best.length * DETOUR : 0;
    const roll = buildRoll(boxes, next, bin, length + slack, work);
    if (work.steps < pause) {
      yield;
      pause = work.steps - STEPS_A_SLICE;
    }
    if (roll === null) continue;
    order = next;
    length = roll.length;
    if (length < best.length) best = roll;
  }
  return best;
}

/** The same in one go. */
export const improveRoll = (...asked: Parameters<typeof improvingRoll>): BuiltRoll =>
  atOnce(improvingRoll(...asked));

interface Start {
  readonly roll: BuiltRoll;
  readonly order: Int32Array;
}

/** The best of all orders. */
function firstRoll(
  boxes: readonly Box[],
  bin: { readonly width: number; readonly mayTurn: boolean },
  least: number,
  work: Work,
): Start {
  let best: Start | null = null;
  for (const size of orders) {
    if (best !== null && (best.roll.length <= least || work.steps <= 0)) break;
    const order = Int32Array.from(
      boxes
        .map((box, index) => ({ index, size: size(box) }))
        .sort((a, b) => b.size - a.size || a.index - b.index),
      ({ index }) => index,
    );
    const roll = buildRoll(boxes, order, bin, best?.roll.length ?? Number.POSITIVE_INFINITY, work);
    if (roll !== null && (best === null || roll.length < best.roll.length)) best = { roll, order };
  }
  if (best === null) throw new RangeError('no boxes were to be laid on a roll');
  return best;
}

function exchanged(order: Int32Array, random: Random): Int32Array {
  const next = order.slice();
  const changes = random() < SECOND_CHANGE ? 2 : 1;
  for (let change = 0; change < changes; change += 1) {
    const one = Math.floor(random() * next.length);
    const other = Math.floor(random() * next.length);
    const kept = at(next, one);
    next[one] = at(next, other);
    next[other] = kept;
  }
  return next;
}
