import { at } from '@/lib/packing/at';
import type { CutPositions } from './cutPositions';

/** A piece in a block layout, ticks from the corner of the room. */
export interface BlockPlace {
  readonly x: number;
  readonly y: number;
  /** True when the piece's long side lies along x. */
  readonly lying: boolean;
}

/** How a rectangle is filled: one grid, two parts, or five around a pinwheel. */
type Plan =
  | { readonly kind: 'grid'; readonly lying: boolean }
  | { readonly kind: 'parts'; readonly parts: readonly Part[] };

interface Sides {
  readonly width: number;
  readonly height: number;
}

/** Two cuts across, and what they leave at the right and between them, as places. */
interface Across {
  readonly x1: number;
  readonly x2: number;
  readonly right1: number;
  readonly right2: number;
  readonly middle: number;
}

interface Part {
  /** Places among the cut positions. */
  readonly width: number;
  readonly height: number;
  readonly x: number;
  readonly y: number;
}

/**
 * The most equal pieces by blocks within blocks: each rectangle is a grid, is cut in two, or is split into a
 * pinwheel of five, and so on inside each part.
 *
 * Recursive five-block heuristic: R. Morabito, S. Morales, "A simple and effective recursive procedure for the
 * manufacturer's pallet loading problem", Journal of the Operational Research Society 49, 819-828, 1998; cut
 * positions as in E. Birgin, R. Lobato, R. Morabito, ibid. 61, 306-320, 2010.
 *
 * @param room sides as places among the cut positions
 * @param piece its sides with the gutter, ticks
 * @param limits `enough` pieces end the search, as no more can fit; after `steps` pinwheels only cuts in two are tried
 */
export function blockLayout(
  bin: { readonly width: number; readonly height: number },
  piece: { readonly long: number; readonly short: number },
  cuts: CutPositions,
  limits: { readonly enough: number; readonly steps: number },
): readonly BlockPlace[] {
  return new BlockSearch(cuts, piece, limits.enough, limits.steps).layOut(bin.width, bin.height);
}

class BlockSearch {
  readonly #size: number;
  readonly #best: Int32Array;
  readonly #bound: Int32Array;
  readonly #plans = new Map<number, Plan>();
  #left: number;

  constructor(
    private readonly cuts: CutPositions,
    private readonly piece: { readonly long: number; readonly short: number },
    private readonly enough: number,
    steps: number,
  ) {
    this.#size = cuts.lengths.length;
    this.#best = new Int32Array(this.#size ** 2).fill(-1);
    const { lengths } = cuts;
    const each = piece.long * piece.short;
    this.#bound = Int32Array.from({ length: this.#size ** 2 }, (_, key) =>
      Math.floor((at(lengths, Math.floor(key / this.#size)) * at(lengths, key % this.#size)) / each + 1e-9),
    );
    this.#left = steps;
  }

  layOut(width: number, height: number): readonly BlockPlace[] {
    this.#solve(width, height);
    return this.#build({ width, height, x: 0, y: 0 });
  }

  /** Pieces that the area alone would let in. */
  #most(width: number, height: number): number {
    return this.#bound[width * this.#size + height] ?? 0;
  }

  /** The sides change places freely, as pieces may turn: only rectangles at least as wide as high are kept. */
  #solve(a: number, b: number): number {
    const width = Math.max(a, b);
    const height = Math.min(a, b);
    const key = width * this.#size + height;
    const known = at(this.#best, key);
    if (known >= 0) return known;
    const lying = this.#gridCount(width, height);
    const standing = this.#gridCount(height, width);
    this.#plans.set(key, { kind: 'grid', lying: lying >= standing });
    this.#best[key] = Math.max(lying, standing);
    this.#cutInTwo(width, height, key);
    this.#pinwheel(width, height, key);
    return at(this.#best, key);
  }

  #gridCount(along: number, across: number): number {
    const { lengths } = this.cuts;
    return (
      Math.floor(at(lengths, along) / this.piece.long) * Math.floor(at(lengths, across) / this.piece.short)
    );
  }

  #isFull(width: number, height: number, key: number): boolean {
    return at(this.#best, key) >= Math.min(this.enough, this.#most(width, height));
  }

  #cutInTwo(width: number, height: number, key: number): void {
    for (const [x, rest] of this.cuts.halvings(width)) {
      if (this.#isFull(width, height, key)) return;
      this.#try(key, [
        { width: x, height, x: 0, y: 0 },
        { width: rest, height, x, y: 0 },
      ]);
    }
    for (const [y, rest] of this.cuts.halvings(height)) {
      if (this.#isFull(width, height, key)) return;
      this.#try(key, [
        { width, height: y, x: 0, y: 0 },
        { width, height: rest, x: 0, y },
      ]);
    }
  }

  /** Two cuts each way, around a middle. */
  #pinwheel(width: number, height: number, key: number): void {
    const { lengths, rasters, rests } = this.cuts;
    const size = this.#size;
    const xs = at(rasters, width).slice(1, -1);
    const ys = Int32Array.from(at(rasters, height).slice(1, -1));
    for (const [i, x1] of xs.entries()) {
      const right1 = at(rests, width * size + x1);
      for (const x2 of xs.slice(i)) {
        // Turned by 180° a pinwheel swaps its cuts: one of the two is enough.
        if (at(lengths, x1) + at(lengths, x2) > at(lengths, width)) break;
        if (this.#left <= 0 || this.#isFull(width, height, key)) return;
        const right2 = at(rests, width * size + x2);
        this.#turnAround(
          key,
          { width, height },
          { x1, x2, right1, right2, middle: at(rests, x2 * size + x1) },
          ys,
        );
      }
    }
  }

  /** All pairs of cuts down for one pair across. Most are refused by area alone, so this loop is kept bare. */
  #turnAround(key: number, whole: Sides, across: Across, ys: Int32Array): void {
    const { x1, x2, right1, right2, middle } = across;
    const { rests } = this.cuts;
    const bound = this.#bound;
    const size = this.#size;
    const from = whole.height * size;
    for (let i = 0; i < ys.length; i += 1) {
      const y1 = ys[i] ?? 0;
      const below1 = rests[from + y1] ?? 0;
      const beside = (bound[right1 * size + y1] ?? 0) + (bound[right2 * size + below1] ?? 0);
      const best = at(this.#best, key);
      for (let j = i; j < ys.length; j += 1) {
        this.#left -= 1;
        const y2 = ys[j] ?? 0;
        const below2 = rests[from + y2] ?? 0;
        const centre = rests[y2 * size + y1] ?? 0;
        const most =
          beside +
          (bound[x1 * size + y2] ?? 0) +
          (bound[x2 * size + below2] ?? 0) +
          (bound[middle * size + centre] ?? 0);
        if (most <= best) continue;
        this.#try(key, [
          { width: x1, height: y2, x: 0, y: 0 },
          { width: x2, height: below2, x: 0, y: y2 },
          { width: right1, height: y1, x: x1, y: 0 },
          { width: right2, height: below1, x: x2, y: y1 },
          { width: middle, height: centre, x: x1, y: y1 },
        ]);
        if (this.#left <= 0 || this.#isFull(whole.width, whole.height, key)) return;
      }
    }
  }

  /** Solves part after part and gives up as soon as even full remaining parts would not beat the best known. */
  #try(key: number, parts: readonly Part[]): void {
    let hope = parts.reduce((sum, { width, height }) => sum + this.#most(width, height), 0);
    for (const { width, height } of parts) {
      if (hope <= at(this.#best, key)) return;
      hope += this.#solve(width, height) - this.#most(width, height);
    }
    if (hope <= at(this.#best, key)) return;
    this.#best[key] = hope;
    this.#plans.set(key, { kind: 'parts', parts });
  }

  #build(part: Part): readonly BlockPlace[] {
    if (part.width < part.height) {
      const swapped = this.#build({ width: part.height, height: part.width, x: 0, y: 0 });
      const { lengths } = this.cuts;
      const [left, top] = [at(lengths, part.x), at(lengths, part.y)];
      return swapped.map(({ x, y, lying }) => ({ x: left + y, y: top + x, lying: !lying }));
    }
    const plan = this.#plans.get(part.width * this.#size + part.height);
    if (plan === undefined) return [];
    const { lengths } = this.cuts;
    const left = at(lengths, part.x);
    const top = at(lengths, part.y);
    if (plan.kind === 'parts') {
      return plan.parts
        .flatMap((inner) => this.#build(inner))
        .map(({ x, y, lying }) => ({ x: left + x, y: top + y, lying }));
    }
    const across = plan.lying ? this.piece.long : this.piece.short;
    const down = plan.lying ? this.piece.short : this.piece.long;
    const columns = Math.floor(at(lengths, part.width) / across);
    const rows = Math.floor(at(lengths, part.height) / down);
    return Array.from({ length: columns * rows }, (_, index) => ({
      x: left + (index % columns) * across,
      y: top + Math.floor(index / columns) * down,
      lying: plan.lying,
    }));
  }
}
