import { at } from '@/lib/packing/at';
import type { BoxKind } from '@/lib/packing/box';
import { dualFeasible } from '@/lib/packing/dualFeasible';

interface Bin {
  readonly width: number;
  readonly height: number;
}

/**
 * A number of sheets below which no layout can go: the highest of area, of boxes no two of which share a sheet,
 * and of boxes measured by dual feasible functions.
 *
 * S. Fekete, J. Schepers, "A general framework for bounds for higher-dimensional orthogonal packing problems",
 * Mathematical Methods of Operations Research 60, 311-329, 2004. A box that may turn counts the way it weighs
 * less, as it is not known which way it will lie.
 *
 * @returns 1 or more
 */
export function sheetBound(bin: Bin, kinds: readonly BoxKind[]): number {
  const sides = [...new Set(kinds.flatMap(({ width, height }) => [width, height]))];
  const across = weigh(bin.width, sides, kinds);
  const down = weigh(bin.height, sides, kinds);
  let most = crowd(bin, kinds);
  for (const wide of across) {
    for (const high of down) most = Math.max(most, Math.ceil(weightOf(kinds, wide, high) - 1e-9));
  }
  return Math.max(1, most);
}

/** Weights of all boxes under one measure of one direction; Infinity for a side that is longer than the room. */
interface Weights {
  readonly ofWidth: Float64Array;
  readonly ofHeight: Float64Array;
}

function weigh(bin: number, sides: readonly number[], kinds: readonly BoxKind[]): readonly Weights[] {
  return dualFeasible(
    bin,
    sides.filter((side) => side <= bin),
  ).map((measure) => {
    const weight = (side: number) => (side > bin ? Number.POSITIVE_INFINITY : measure(side));
    return {
      ofWidth: Float64Array.from(kinds, ({ width }) => weight(width)),
      ofHeight: Float64Array.from(kinds, ({ height }) => weight(height)),
    };
  });
}

function weightOf(kinds: readonly BoxKind[], across: Weights, down: Weights): number {
  let sum = 0;
  for (let index = 0; index < kinds.length; index += 1) {
    const { count, mayTurn } = at(kinds, index);
    const upright = product(across.ofWidth[index], down.ofHeight[index]);
    const turned = mayTurn ? product(across.ofHeight[index], down.ofWidth[index]) : upright;
    sum += count * Math.min(upright, turned);
  }
  return sum;
}

/** A way that does not fit weighs more than any that does, even beside a weight of 0. */
const product = (one = 0, other = 0): number =>
  one === Number.POSITIVE_INFINITY || other === Number.POSITIVE_INFINITY
    ? Number.POSITIVE_INFINITY
    : one * other;

/** @returns how many boxes are found of which no two go on one sheet, the largest tried first. */
function crowd(bin: Bin, kinds: readonly BoxKind[]): number {
  const largest = kinds
    .filter((kind) => !shareSheet(bin, kind, kind) || kind.count === 1)
    .toSorted((a, b) => Math.min(b.width, b.height) - Math.min(a.width, a.height));
  const chosen: BoxKind[] = [];
  for (const kind of largest.slice(0, 400)) {
    if (chosen.every((other) => !shareSheet(bin, kind, other))) chosen.push(kind);
  }
  return chosen.reduce((sum, kind) => sum + (shareSheet(bin, kind, kind) ? 1 : kind.count), 0);
}

/** Two boxes on one sheet lie beside or above each other. */
function shareSheet(bin: Bin, one: BoxKind, other: BoxKind): boolean {
  return waysOf(one).some(([w, h]) =>
    waysOf(other).some(
      ([v, g]) =>
        (w + v <= bin.width && Math.max(h, g) <= bin.height) ||
        (h + g <= bin.height && Math.max(w, v) <= bin.width),
    ),
  );
}

const waysOf = ({ width, height, mayTurn }: BoxKind): readonly (readonly [number, number])[] =>
  mayTurn
    ? [
        [width, height],
        [height, width],
      ]
    : [[width, height]];
