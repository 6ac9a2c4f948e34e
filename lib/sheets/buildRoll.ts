import { at } from './at';
import type { Box, LaidBox, Work } from './box';

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
  room: { readonly width: number; readonly mayTurn: boolean },
  longest: number,
  work: Work,
): BuiltRoll | null {
  const steps = new Steps(room.width);
  const queue = new Queue(order);
  const laid: LaidBox[] = [];
  let length = 0;
  while (!queue.isEmpty) {
    const gap = steps.lowest();
    const choice = choose(boxes, queue, gap, room.mayTurn, work);
    if (choice === null) {
      steps.level();
      continue;
    }
    const { width, height } = choice;
    const x = choice.atRight ? gap.left + gap.width - width : gap.left;
    length = Math.max(length, gap.base + height);
    if (length > longest) return null;
    laid.push({ kind: at(boxes, choice.box).kind, x, y: gap.base, width, height });
    queue.take(choice.before);
    steps.raise(width, height, choice.atRight);
  }
  return { length, laid };
}

interface Gap {
  readonly left: number;
  readonly width: number;
  readonly base: number;
  /** How far the walls rise above the gap; Infinity at the edges of the roll. */
  readonly wallLeft: number;
  readonly wallRight: number;
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

function choose(boxes: readonly Box[], queue: Queue, gap: Gap, mayTurn: boolean, work: Work): Choice | null {
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
function markOf({ width: room, wallLeft, wallRight }: Gap, width: number, height: number): number {
  if (width > room) return -1;
  const isLevel = height === wallLeft || height === wallRight;
  if (width < room) return isLevel ? 1 : 0;
  if (isLevel) return BEST_MARK;
  return height < Math.max(wallLeft, wallRight) ? 3 : 2;
}

/** Boxes not laid yet, in order; place 0 stands before the first. */
class Queue {
  readonly #next: Int32Array;

  constructor(private readonly order: Int32Array) {
    this.#next = Int32Array.from({ length: order.length + 1 }, (_, place) =>
      place < order.length ? place + 1 : 0,
    );
  }

  get isEmpty(): boolean {
    return this.#next[0] === 0;
  }

  /** @returns the next place, 0 after the last. */
  after(place: number): number {
    return this.#next[place] ?? 0;
  }

  boxAt(place: number): number {
    return this.order[place - 1] ?? 0;
  }

  take(before: number): void {
    this.#next[before] = this.after(this.after(before));
  }
}

/** The edge of what is laid, as steps from left to right. */
class Steps {
  readonly #widths: number[];
  readonly #heights: number[];
  #low = 0;

  constructor(width: number) {
    this.#widths = [width];
    this.#heights = [0];
  }

  lowest(): Gap {
    let low = 0;
    let left = 0;
    let passed = 0;
    for (let place = 0; place < this.#heights.length; place += 1) {
      if ((this.#heights[place] ?? 0) < (this.#heights[low] ?? 0)) {
        low = place;
        left = passed;
      }
      passed += this.#widths[place] ?? 0;
    }
    this.#low = low;
    const base = at(this.#heights, low);
    return {
      left,
      width: at(this.#widths, low),
      base,
      wallLeft: (this.#heights[low - 1] ?? Number.POSITIVE_INFINITY) - base,
      wallRight: (this.#heights[low + 1] ?? Number.POSITIVE_INFINITY) - base,
    };
  }

  /** Gives the lowest gap up: it becomes part of its lower neighbour. */
  level(): void {
    const left = this.#heights[this.#low - 1] ?? Number.POSITIVE_INFINITY;
    const right = this.#heights[this.#low + 1] ?? Number.POSITIVE_INFINITY;
    this.#heights[this.#low] = Math.min(left, right);
    this.#join(this.#low);
  }

  raise(width: number, height: number, atRight: boolean): void {
    const low = this.#low;
    const rest = at(this.#widths, low) - width;
    const base = at(this.#heights, low);
    const place = atRight && rest > 0 ? low + 1 : low;
    if (rest > 0) {
      this.#widths.splice(low, 1, atRight ? rest : width, atRight ? width : rest);
      this.#heights.splice(low, 1, base, base);
    }
    this.#heights[place] = base + height;
    this.#join(place);
  }

  #join(place: number): void {
    for (const first of [place, place - 1]) {
      if (first < 0 || this.#heights[first] !== this.#heights[first + 1]) continue;
      this.#widths[first] = at(this.#widths, first) + at(this.#widths, first + 1);
      this.#widths.splice(first + 1, 1);
      this.#heights.splice(first + 1, 1);
    }
  }
}
