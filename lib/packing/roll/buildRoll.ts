import { at } from '@/lib/packing/at';
import type { Box, LaidBox, Work } from '@/lib/packing/box';
import { BoxQueue } from './boxQueue';
import { type Gap, RollEdge } from './rollEdge';

export interface BuiltRoll {
  /** Ticks from the roll's start to the end of the last box, gutter included. */
  readonly length: number;
  readonly laid: readonly LaidBox[];
}

/**
 * Lays boxes on a roll: always in the lowest gap, the box that fits it best, the earlier one of equals.
 *
 * Lowest gap and best fit: E. Burke, G. Kendall, G. Whitwell, Operations Research 52, 655-671, 2004. Marks for a
 * fit: S. Leung, D. Zhang, K. M. Sim, European Journal of Operational Research 215, 57-69, 2011.
 *
 * @param order places in `boxes`, those to be used first at the front
 * @param longest gives up beyond this length, ticks
 * @returns null where it gave up
 */
export function buildRoll(
  boxes: readonly Box[],
  order: Int32Array,
  bin: { readonly width: number; readonly mayTurn: boolean },
  longest: number,
  work: Work,
): BuiltRoll | null {
  const edge = new RollEdge(bin.width);
  const queue = new BoxQueue(order);
  const laid: LaidBox[] = [];
  let length = 0;
  while (!queue.isEmpty) {
    const gap = edge.lowest();
    const choice = choose(boxes, queue, gap, bin.mayTurn, work);
    if (choice === null) {
      edge.level();
      continue;
    }
    const { width, height } = choice;
    const x = choice.atRight ? gap.left + gap.width - width : gap.left;
    length = Math.max(length, gap.base + height);
    if (length > longest) return null;
    laid.push({ kind: at(boxes, choice.box).kind, x, y: gap.base, width, height });
    queue.take(choice.before);
    edge.raise(width, height, choice.atRight);
  }
  return { length, laid };
}

interface Choice {
  readonly box: number;
  /** Place in the queue before it. */
  readonly before: number;
  readonly width: number;
  readonly height: number;
  readonly atRight: boolean;
}

/** A box that fills the gap and ends level with a wall cannot be beaten. */
const BEST_MARK = 4;

function choose(
  boxes: readonly Box[],
  queue: BoxQueue,
  gap: Gap,
  mayTurn: boolean,
  work: Work,
): Choice | null {
  let best = -1;
  let box = 0;
  let before = 0;
  let turned = false;
  for (let previous = 0, next = queue.after(0); next > 0; previous = next, next = queue.after(next)) {
    work.steps -= 1;
    const index = queue.boxAt(next);
    const { width, height } = at(boxes, index);
    for (let way = 0; way < 2; way += 1) {
      if (way === 1 && (!mayTurn || width === height)) break;
      const mark = way === 0 ? markOf(gap, width, height) : markOf(gap, height, width);
      if (mark <= best) continue;
      best = mark;
      box = index;
      before = previous;
      turned = way === 1;
    }
    if (best === BEST_MARK) break;
  }
  if (best < 0) return null;
  const { width, height } = at(boxes, box);
  const wide = turned ? height : width;
  const high = turned ? width : height;
  // Level with one wall it goes to that one, else to the higher: the gap that is left stays deep and narrow.
  const atRight = high === gap.wallRight || (high !== gap.wallLeft && gap.wallRight > gap.wallLeft);
  return { box, before, width: wide, height: high, atRight };
}

/** @returns -1 where it does not fit, up to 4 where it fills the gap and ends level with the lower wall. */
function markOf({ width: bin, wallLeft, wallRight }: Gap, width: number, height: number): number {
  if (width > bin) return -1;
  const isLevel = height === wallLeft || height === wallRight;
  if (width < bin) return isLevel ? 1 : 0;
  if (isLevel) return BEST_MARK;
  return height < Math.max(wallLeft, wallRight) ? 3 : 2;
}
