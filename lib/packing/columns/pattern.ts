import { at } from '@/lib/packing/at';
import type { BoxKind, LaidBox } from '@/lib/packing/box';
import type { Counts } from './masterProgram';

/** One way to fill a sheet. */
export interface Pattern {
  /** Boxes of each size on it. */
  readonly counts: Counts;
  /** Ticks; `kind` is the place among the sizes. */
  readonly boxes: readonly LaidBox[];
}

export function patternOf(boxes: readonly LaidBox[], sizes: number): Pattern {
  return { counts: countsOf(boxes, sizes), boxes };
}

/** Boxes of each size. */
export function countsOf(boxes: readonly LaidBox[], sizes: number): Counts {
  const counts = Array.from({ length: sizes }, () => 0);
  for (const { kind } of boxes) counts[kind] = at(counts, kind) + 1;
  return counts;
}

/** @returns a sheet of one size in rows and columns, the way up that holds more. */
export function gridPattern(
  bin: { readonly width: number; readonly height: number },
  kind: number,
  { width, height, mayTurn }: BoxKind,
  sizes: number,
): Pattern {
  const grid = (wide: number, high: number): readonly LaidBox[] => {
    const columns = Math.floor(bin.width / wide);
    const rows = Math.floor(bin.height / high);
    return Array.from({ length: columns * rows }, (_, index) => ({
      kind,
      x: (index % columns) * wide,
      y: Math.floor(index / columns) * high,
      width: wide,
      height: high,
    }));
  };
  const upright = grid(width, height);
  const turned = mayTurn ? grid(height, width) : [];
  return patternOf(turned.length > upright.length ? turned : upright, sizes);
}

/** @returns the pattern without the boxes that are not needed any more. */
export function withoutSurplus(pattern: Pattern, left: Counts): Pattern {
  if (pattern.counts.every((count, size) => count <= at(left, size))) return pattern;
  return patternOf(boxesNeeded(pattern.boxes, left), left.length);
}

/** @returns the first boxes of each size, as many as are left to lay */
export function boxesNeeded(boxes: readonly LaidBox[], left: Counts): readonly LaidBox[] {
  const free = [...left];
  return boxes.filter(({ kind }) => {
    const more = at(free, kind);
    free[kind] = more - 1;
    return more > 0;
  });
}

export const countsLeft = (left: Counts, taken: Counts): Counts =>
  left.map((count, size) => count - at(taken, size));
