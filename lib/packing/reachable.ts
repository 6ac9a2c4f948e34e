import { at } from './at';
import { commonMeasure } from './commonMeasure';

interface Sides {
  readonly width: number;
  readonly height: number;
}

/** A room in the largest unit that divides every side, and which lengths rows of sides can have in it. */
interface Reachable {
  /** Ticks. */
  readonly unit: number;
  /** The room in units; where boxes may turn, no longer than rows of sides can be. */
  readonly width: number;
  readonly height: number;
  /** The longest row of sides within each length, units. */
  readonly longestWithin: Int32Array;
}

/** Longer tables cost more than the search they serve: such sides have hardly a measure in common. */
const LONGEST_TABLE = 1_000;

/**
 * Which lengths a row or column of boxes can have, each side as often as one likes: what is between is lost.
 *
 * @returns null where the sides have no common measure coarse enough
 */
export function reachable(bin: Sides, boxes: readonly Sides[]): Reachable | null {
  const sides = [...new Set(boxes.flatMap(({ width, height }) => [width, height]))];
  const unit = commonMeasure(boxes);
  const width = Math.floor(bin.width / unit);
  const height = Math.floor(bin.height / unit);
  const longest = Math.max(width, height);
  if (!(longest <= LONGEST_TABLE)) return null;
  const longestWithin = new Int32Array(longest + 1);
  const steps = sides.map((side) => side / unit);
  for (let length = 1; length <= longest; length += 1) {
    const exact = steps.some((side) => {
      const before = length - side;
      return before >= 0 && at(longestWithin, before) === before;
    });
    longestWithin[length] = exact ? length : at(longestWithin, length - 1);
  }
  return { unit, width: at(longestWithin, width), height: at(longestWithin, height), longestWithin };
}
