import { at } from '@/lib/packing/at';
import type { BoxKind, LaidBox } from '@/lib/packing/box';
import type { Counts } from '@/lib/packing/columns/masterProgram';
import { boxesNeeded, countsOf } from '@/lib/packing/columns/pattern';

/** A piece of roll as wide as it is, cut straight through in front and behind. */
export interface Section {
  /** Along the roll, ticks. */
  readonly length: number;
  /** Ticks from its corner; `kind` is the place among the sizes. */
  readonly boxes: readonly LaidBox[];
  /** Boxes of each size on it. */
  readonly held: Counts;
  /** Boxes of each size on a measure of roll, were it laid with nothing else. */
  readonly counts: Counts;
}

/**
 * @param measure ticks of roll that count as one
 */
export function sectionOf(boxes: readonly LaidBox[], sizes: number, measure: number): Section {
  const held = countsOf(boxes, sizes);
  const length = boxes.reduce((longest, { y, height }) => Math.max(longest, y + height), 0);
  return { length, boxes, held, counts: held.map((count) => (count * measure) / length) };
}

/**
 * @param longest print, ticks: the box goes on it one way round at least
 * @returns one row across the roll of one size, of the ways that go on a print the one that takes less roll for a box
 */
export function rowOf(
  width: number,
  longest: number,
  kind: number,
  size: BoxKind,
  sizes: number,
  measure: number,
): Section {
  const rows = [
    [size.width, size.height],
    [size.height, size.width],
  ].slice(0, size.mayTurn ? 2 : 1);
  const built = rows.flatMap(([wide = 0, high = 0]) => {
    const across = Math.floor(width / wide);
    const boxes = Array.from({ length: across }, (_, index) => ({
      kind,
      x: index * wide,
      y: 0,
      width: wide,
      height: high,
    }));
    return across === 0 || high > longest ? [] : [sectionOf(boxes, sizes, measure)];
  });
  return built.reduce((best, next) => (at(next.counts, kind) > at(best.counts, kind) ? next : best));
}

/** @returns the section without the boxes that are not needed any more, ending behind its last one; null where none are. */
export function neededOf(section: Section, left: Counts, measure: number): Section | null {
  if (section.held.every((count, size) => count <= at(left, size))) return section;
  const kept = boxesNeeded(section.boxes, left);
  return kept.length === 0 ? null : sectionOf(kept, left.length, measure);
}
