import type { BoxKind } from '@/lib/packing/box';
import { commonMeasure } from '@/lib/packing/commonMeasure';
import { dualFeasible } from '@/lib/packing/dualFeasible';

/**
 * A length below which no layout on a roll can go: that of the area, of the longest box, and of boxes measured
 * across by dual feasible functions, which sees what cannot lie side by side. Sources: as for `sheetBound`.
 *
 * @param width ticks
 * @param kinds each goes on the roll by itself
 * @returns ticks, gutter of the last row included
 */
export function rollBound(width: number, kinds: readonly BoxKind[]): number {
  const sides = [...new Set(kinds.flatMap((kind) => [kind.width, kind.height]))];
  const fitting = sides.filter((side) => side <= width);
  const longest = kinds.reduce((most, kind) => Math.max(most, shortestStand(width, kind)), 0);
  const measured = dualFeasible(width, fitting).map((measure) =>
    kinds.reduce((sum, kind) => {
      const upright = kind.width <= width ? measure(kind.width) * kind.height : Number.POSITIVE_INFINITY;
      const turned =
        kind.mayTurn && kind.height <= width ? measure(kind.height) * kind.width : Number.POSITIVE_INFINITY;
      return sum + kind.count * Math.min(upright, turned);
    }, 0),
  );
  const length = Math.max(longest, ...measured);
  // Lengths add up from sides, so they are whole multiples of their common measure.
  const unit = commonMeasure(kinds);
  return Math.ceil(length / unit - 1e-6) * unit;
}

/** @returns length along the roll that a box takes at least. */
function shortestStand(width: number, kind: BoxKind): number {
  const upright = kind.width <= width ? kind.height : Number.POSITIVE_INFINITY;
  const turned = kind.mayTurn && kind.height <= width ? kind.width : Number.POSITIVE_INFINITY;
  return Math.min(upright, turned);
}
