import { at } from '@/lib/packing/at';

/** The lengths worth cutting a room to, in units of one search. */
export interface CutPoints {
  /** Rising, from 0 to the longest row of sides within the room. */
  readonly lengths: Int32Array;
  /** Place of the longest of them within each whole length up to the room. */
  readonly within: Int32Array;
  /** No layout needs other lengths; false where there were too many and longer rows of sides were left out. */
  readonly complete: boolean;
}

/**
 * Raster points: a cut that cannot be moved towards the corner lies at a sum of sides, and what is beyond it is a
 * sum of sides as well once it is moved the other way.
 *
 * Sums of sides: J. Herz, IBM Journal of Research and Development 16, 462-469, 1972. Both ways at once:
 * G. Scheithauer, "Equivalence and dominance for problems of optimal packing of rectangles", Ricerca Operativa 27,
 * 3-34, 1997; for cuts from edge to edge G. Cintra and others, European Journal of Operational Research 191, 61-85,
 * 2008.
 *
 * @param room whole units
 * @param sides whole units, above 0
 * @param most points; where there are more, rows of fewer sides must do
 */
export function cutPoints(room: number, sides: readonly number[], most: number): CutPoints {
  const fewest = fewestSides(room, sides);
  const longest = longestSums(fewest);
  const all = rasterOf(fewest, longest, room, most);
  if (all !== null) return { ...indexed(room, all), complete: true };
  let some = rasterOf(fewest, longest, 1, Number.POSITIVE_INFINITY) ?? [];
  for (let row = 2; ; row += 1) {
    const more = rasterOf(fewest, longest, row, most);
    if (more === null) return { ...indexed(room, some), complete: false };
    some = more;
  }
}

/** @returns for each length how few sides add up to it exactly; -1 where none do */
function fewestSides(room: number, sides: readonly number[]): Int32Array {
  const fewest = new Int32Array(room + 1).fill(-1);
  fewest[0] = 0;
  for (let length = 1; length <= room; length += 1) {
    let least = -1;
    for (const side of sides) {
      const before = side <= length ? (fewest[length - side] ?? -1) : -1;
      if (before >= 0 && (least < 0 || before + 1 < least)) least = before + 1;
    }
    fewest[length] = least;
  }
  return fewest;
}

/** @returns the longest sum within each length */
function longestSums(fewest: Int32Array): Int32Array {
  const longest = new Int32Array(fewest.length);
  for (let length = 1; length < fewest.length; length += 1) {
    longest[length] = at(fewest, length) >= 0 ? length : at(longest, length - 1);
  }
  return longest;
}

/**
 * @param row sides that add up to a sum from either end, at most
 * @returns the longest sum within what each sum leaves of the room, and within what that leaves; rising. Null where
 * there are more than `most`
 */
function rasterOf(
  fewest: Int32Array,
  longest: Int32Array,
  row: number,
  most: number,
): readonly number[] | null {
  const room = fewest.length - 1;
  const raster = new Set([0, at(longest, room)]);
  for (let length = 0; length <= room; length += 1) {
    const sidesNeeded = fewest[length] ?? -1;
    if (sidesNeeded < 0 || sidesNeeded > row) continue;
    const rest = at(longest, room - length);
    raster.add(rest).add(at(longest, room - rest));
    if (raster.size > most) return null;
  }
  return [...raster].sort((a, b) => a - b);
}

function indexed(room: number, points: readonly number[]): Pick<CutPoints, 'lengths' | 'within'> {
  const within = new Int32Array(room + 1);
  let place = 0;
  for (let length = 0; length <= room; length += 1) {
    if (points[place + 1] === length) place += 1;
    within[length] = place;
  }
  return { lengths: Int32Array.from(points), within };
}
