import type { Box, LaidBox, Work } from '@/lib/packing/box';
import type { Bin } from '@/lib/packing/sheet/fillSheets';
import { type Counts, type PieceCounts, sumOf } from './pieceCounts';

/** Boxes put together into a rectangle that cuts from edge to edge take apart again. */
export interface Block {
  readonly width: number;
  readonly height: number;
  /** Area of its boxes, square ticks. */
  readonly area: number;
  readonly counts: Counts;
  readonly made: { readonly kind: number } | Joint;
}

/** Two blocks one above the other, or side by side. */
interface Joint {
  readonly first: Way;
  readonly second: Way;
  readonly above: boolean;
}

/** A block the way up it is used; turned, its sides have changed places. */
interface Way {
  readonly block: Block;
  readonly turned: boolean;
}

/** How much may be lost where blocks are joined. */
export interface Tolerance {
  /** Two sides may differ by this share of the bin's longer side. */
  readonly mismatch: number;
  /** A block may leave this share of itself free. */
  readonly loss: number;
  /** Blocks looked for, at most. */
  readonly blocks: number;
}

/** Blocks wait in this many queues by what they lose: those that lose least are joined first. */
const QUEUES = 32;

/** Pairs of blocks looked at, and blocks made, in the time of looking at one free place. */
const PAIRS_A_STEP = 4;
const STEPS_A_BLOCK = 8;

/** Blocks found so far, joined one after the other with all before. */
export class BlockPool {
  /** Blocks that fill a sheet. */
  readonly full: Block[] = [];
  readonly #queues: Block[][] = Array.from({ length: QUEUES }, () => []);
  readonly #heads = new Int32Array(QUEUES);
  /** Ways of the blocks by the side on which others are put: on it (0), beside it (1). */
  readonly #bySide: readonly Map<number, Way[]>[];
  readonly #seen = new Set<number>();
  readonly #grain: number;
  readonly #binArea: number;
  #made = 0;
  /** Blocks put together, those known before among them. */
  #joined = 0;

  constructor(
    sizes: readonly Box[],
    private readonly bin: Bin,
    private readonly spare: number,
    private readonly limits: PieceCounts,
    private readonly tolerance: Tolerance,
  ) {
    this.#grain = Math.max(1, tolerance.mismatch * Math.max(bin.width, bin.height));
    this.#bySide = bin.mayTurn ? [new Map()] : [new Map(), new Map()];
    this.#binArea = bin.width * bin.height;
    for (const [size, { kind, width, height }] of sizes.entries()) {
      this.#add({ width, height, area: width * height, counts: limits.one(size), made: { kind } });
    }
  }

  #add(block: Block): void {
    if (this.#made >= this.tolerance.blocks) return;
    const key = keyOf(block);
    if (this.#seen.has(key)) return;
    this.#seen.add(key);
    this.#made += 1;
    if (this.#binArea - block.area <= this.spare) this.full.push(block);
    const loss = 1 - block.area / (block.width * block.height);
    const queue =
      loss <= 0 ? 0 : Math.min(QUEUES - 1, 1 + Math.floor((loss / this.tolerance.loss) * (QUEUES - 2)));
    this.#queues[queue]?.push(block);
  }

  /** @returns false where every block has been joined with every other, or there are as many as wanted */
  joinNext(work: Work): boolean {
    const block = this.#made < this.tolerance.blocks ? this.#next() : null;
    if (block === null) return false;
    const before = this.#joined;
    let pairs = 1;
    for (const [axis, bySide] of this.#bySide.entries()) {
      // Put down first: a block may be joined with another like itself.
      for (const way of this.#waysOf(block)) {
        const bucket = Math.floor(sideOf(way, axis) / this.#grain);
        const list = bySide.get(bucket);
        if (list === undefined) bySide.set(bucket, [way]);
        else list.push(way);
      }
      for (const way of this.#waysOf(block)) {
        const side = sideOf(way, axis);
        const bucket = Math.floor(side / this.#grain);
        const reach = this.tolerance.mismatch > 0 ? 1 : 0;
        for (let near = bucket - reach; near <= bucket + reach; near += 1) {
          const others = bySide.get(near);
          if (others === undefined) continue;
          pairs += others.length;
          for (const other of others) this.#join(way, other, axis);
        }
      }
    }
    work.steps -= pairs / PAIRS_A_STEP + (this.#joined - before) * STEPS_A_BLOCK;
    return true;
  }

  #join(one: Way, other: Way, axis: number): void {
    if (!this.limits.fit(one.block.counts, other.block.counts)) return;
    const side = Math.max(sideOf(one, axis), sideOf(other, axis));
    const sum = sideOf(one, 1 - axis) + sideOf(other, 1 - axis);
    const area = one.block.area + other.block.area;
    const lost = side * sum - area;
    if (lost > this.spare || lost > this.tolerance.loss * side * sum) return;
    const [width, height] = axis === 0 ? [side, sum] : [sum, side];
    if (!fits(width, height, this.bin)) return;
    this.#joined += 1;
    const counts = sumOf(one.block.counts, other.block.counts);
    this.#add({ width, height, area, counts, made: { first: one, second: other, above: axis === 0 } });
  }

  #waysOf(block: Block): readonly Way[] {
    const way = { block, turned: false };
    return this.bin.mayTurn && block.width !== block.height ? [way, { block, turned: true }] : [way];
  }

  #next(): Block | null {
    for (let queue = 0; queue < QUEUES; queue += 1) {
      const head = this.#heads[queue] ?? 0;
      const block = this.#queues[queue]?.[head];
      if (block === undefined) continue;
      this.#heads[queue] = head + 1;
      return block;
    }
    return null;
  }
}

/** Axis 0: the width, of what is put one above the other; axis 1: the height. */
const sideOf = ({ block, turned }: Way, axis: number): number =>
  (axis === 0) === turned ? block.height : block.width;

const fits = (width: number, height: number, bin: Bin): boolean =>
  (width <= bin.width && height <= bin.height) || (bin.mayTurn && width <= bin.height && height <= bin.width);

/** Hardly ever the same for two different blocks; the same for a block and itself turned. */
function keyOf({ width, height, counts }: Block): number {
  let high = Math.max(width, height) | 0;
  let low = Math.min(width, height) | 0;
  high = Math.imul(high ^ (high >>> 15), 0x9e3779b1);
  low = Math.imul(low ^ (low >>> 13), 0x85ebca6b);
  for (const word of counts) {
    high = Math.imul(high ^ word, 0xc2b2ae35) ^ low;
    low = Math.imul(low ^ (word + 1), 0x27d4eb2f) ^ (high >>> 15);
    high ^= high >>> 13;
  }
  return (high >>> 6) * 2 ** 26 + (low >>> 6);
}

/** @returns the boxes of a block where they lie, the block at a corner of the sheet. */
export function layBlock(block: Block, bin: Bin): readonly LaidBox[] {
  const turned = block.width > bin.width || block.height > bin.height;
  const laid: LaidBox[] = [];
  put({ block, turned }, 0, 0, laid);
  return laid;
}

function put({ block, turned }: Way, x: number, y: number, laid: LaidBox[]): void {
  const { made } = block;
  if ('kind' in made) {
    const [width, height] = turned ? [block.height, block.width] : [block.width, block.height];
    laid.push({ kind: made.kind, x, y, width, height });
    return;
  }
  const { first, second, above } = made;
  const one = { block: first.block, turned: first.turned !== turned };
  const other = { block: second.block, turned: second.turned !== turned };
  put(one, x, y, laid);
  // Turned, what lay above lies beside.
  if (above !== turned) put(other, x, y + sideOf(one, 1), laid);
  else put(other, x + sideOf(one, 0), y, laid);
}
