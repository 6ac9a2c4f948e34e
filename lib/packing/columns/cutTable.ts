import { at } from '@/lib/packing/at';
import type { Box, LaidBox } from '@/lib/packing/box';
import type { CutPoints } from './cutPoints';
import type { Pace } from './pace';

/** How the best of a rectangle comes about. */
const EMPTY = 0;
const NARROWER = 1;
const LOWER = 2;
const ONE_BOX = 3;
const CUT_ACROSS = 4;
const CUT_DOWN = 5;

/** Sums compared in the time of one step of the other searches, about. */
const SUMS_A_STEP = 20;

/**
 * The dearest boxes that cuts from edge to edge can take out of one room, each kind as often as one likes.
 *
 * Each rectangle of the table is a box, or two rectangles beside or above each other: P. Gilmore, R. Gomory, "The
 * theory and computation of knapsack functions", Operations Research 14, 1045-1074, 1966. Of two rectangles beside
 * each other the second is one that cuts of the same direction cannot divide further: there are few of those.
 */
export class CutTable {
  readonly #rows: number;
  readonly #best: Float64Array;
  readonly #how: Uint8Array;
  /** The box, or the place of the part cut off. */
  readonly #part: Int32Array;
  /** Boxes by the smallest rectangle that holds them. */
  readonly #boxes = new Map<number, number[]>();
  /** Widths that cannot be cut further across, for each height. */
  readonly #strips: Int32Array;
  readonly #stripCounts: Int32Array;

  /**
   * @param ways each box each way it may lie, sides in the units of the points
   */
  constructor(
    private readonly across: CutPoints,
    private readonly down: CutPoints,
    private readonly ways: readonly Box[],
  ) {
    this.#rows = down.lengths.length;
    const size = across.lengths.length * this.#rows;
    this.#best = new Float64Array(size);
    this.#how = new Uint8Array(size);
    this.#part = new Int32Array(size);
    this.#strips = new Int32Array(size);
    this.#stripCounts = new Int32Array(this.#rows);
    for (const [index, { width, height }] of ways.entries()) {
      const column = across.lengths.findIndex((length) => length >= width);
      const row = down.lengths.findIndex((length) => length >= height);
      if (column < 0 || row < 0) continue;
      const key = column * this.#rows + row;
      this.#boxes.set(key, [...(this.#boxes.get(key) ?? []), index]);
    }
  }

  /**
   * @param prices of one box of each kind, whole numbers of which a room full is below 2^53
   * @returns what the dearest filling is worth
   */
  *fill(prices: Float64Array, pace: Pace): Generator<void, number> {
    this.#stripCounts.fill(0);
    const columns = this.across.lengths.length;
    for (let column = 1; column < columns; column += 1) {
      if (pace.spend(this.#fillColumn(column, prices) / SUMS_A_STEP)) yield;
    }
    return at(this.#best, columns * this.#rows - 1);
  }

  /** @returns sums compared */
  #fillColumn(column: number, prices: Float64Array): number {
    const rows = this.#rows;
    const best = this.#best;
    const strips = this.#strips;
    const columns = this.across.lengths.length;
    const { lengths: widths, within: columnWithin } = this.across;
    const { lengths: heights, within: rowWithin } = this.down;
    const width = widths[column] ?? 0;
    const base = column * rows;
    const stack = new Int32Array(rows);
    let stacked = 0;
    let sums = 0;
    for (let row = 1; row < rows; row += 1) {
      const key = base + row;
      const height = heights[row] ?? 0;
      const narrower = best[key - rows] ?? 0;
      const lower = best[key - 1] ?? 0;
      let value = Math.max(narrower, lower);
      let how = value === 0 ? EMPTY : value === narrower ? NARROWER : LOWER;
      let part = 0;
      for (const index of this.#boxes.get(key) ?? NONE) {
        const price = prices[this.ways[index]?.kind ?? 0] ?? 0;
        if (price > value) [value, how, part] = [price, ONE_BOX, index];
      }
      let mostAcross = 0;
      const first = row * columns;
      const last = first + (this.#stripCounts[row] ?? 0);
      for (let place = first; place < last; place += 1) {
        const strip = strips[place] ?? 0;
        const rest = columnWithin[width - (widths[strip] ?? 0)] ?? 0;
        const sum = (best[strip * rows + row] ?? 0) + (best[rest * rows + row] ?? 0);
        if (sum > mostAcross) {
          mostAcross = sum;
          if (sum > value) [value, how, part] = [sum, CUT_ACROSS, strip];
        }
      }
      let mostDown = 0;
      for (let place = 0; place < stacked; place += 1) {
        const strip = stack[place] ?? 0;
        const rest = rowWithin[height - (heights[strip] ?? 0)] ?? 0;
        const sum = (best[base + strip] ?? 0) + (best[base + rest] ?? 0);
        if (sum > mostDown) {
          mostDown = sum;
          if (sum > value) [value, how, part] = [sum, CUT_DOWN, strip];
        }
      }
      sums += last - first + stacked + 2;
      best[key] = value;
      this.#how[key] = how;
      this.#part[key] = part;
      if (value > narrower && mostAcross < value) {
        strips[last] = column;
        this.#stripCounts[row] = last - first + 1;
      }
      if (value > lower && mostDown < value) {
        stack[stacked] = row;
        stacked += 1;
      }
    }
    return sums;
  }

  /** Lengths of rooms as wide as the whole, shorter ones too, with what their dearest filling is worth. */
  get lengths(): readonly { readonly length: number; readonly worth: number }[] {
    const last = (this.across.lengths.length - 1) * this.#rows;
    return [...this.down.lengths].map((length, row) => ({ length, worth: at(this.#best, last + row) }));
  }

  /**
   * @param row place of a shorter room among `lengths`; the whole one where it is left out
   * @returns the boxes of the dearest filling where they lie, in the units of the points
   */
  layOut(row = this.#rows - 1): readonly LaidBox[] {
    const laid: LaidBox[] = [];
    this.#layOut(this.across.lengths.length - 1, row, 0, 0, laid);
    return laid;
  }

  #layOut(column: number, row: number, x: number, y: number, laid: LaidBox[]): void {
    const key = column * this.#rows + row;
    const part = at(this.#part, key);
    const how = at(this.#how, key);
    if (how === NARROWER) this.#layOut(column - 1, row, x, y, laid);
    else if (how === LOWER) this.#layOut(column, row - 1, x, y, laid);
    else if (how === ONE_BOX) laid.push({ ...at(this.ways, part), x, y });
    else if (how === CUT_ACROSS) {
      const width = at(this.across.lengths, part);
      const rest = at(this.across.within, at(this.across.lengths, column) - width);
      this.#layOut(part, row, x, y, laid);
      this.#layOut(rest, row, x + width, y, laid);
    } else if (how === CUT_DOWN) {
      const height = at(this.down.lengths, part);
      const rest = at(this.down.within, at(this.down.lengths, row) - height);
      this.#layOut(column, part, x, y, laid);
      this.#layOut(column, rest, x, y + height, laid);
    }
  }
}

const NONE: readonly number[] = [];
