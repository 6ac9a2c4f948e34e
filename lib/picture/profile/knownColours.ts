/** Colour spaces that are told by name; whatever else a profile means is `unknown`. */
type KnownColours = 'sRGB' | 'displayP3' | 'adobeRgbLike';

/** What a colour profile says its numbers mean. */
export type ProfileName = KnownColours | 'unknown' | 'unreadable';

/** x and y of a colour: CIE 1931. */
export type Pair = readonly [number, number];

type Three = readonly [number, number, number];

interface KnownSpace {
  readonly name: KnownColours;
  /** x and y of red, green and blue, as published; white is D65 in all three. */
  readonly xy: readonly Pair[];
  /** X, Y and Z of the same, adapted to the D50 of profiles by Bradford's matrix. */
  readonly xyz: readonly [Three, Three, Three];
}

/** White of D65, then red, green and blue of sRGB: IEC 61966-2-1. */
export const srgbXy: readonly [Pair, Pair, Pair, Pair] = [
  [0.3127, 0.329],
  [0.64, 0.33],
  [0.3, 0.6],
  [0.15, 0.06],
];

export const knownSpaces: readonly KnownSpace[] = [
  {
    name: 'sRGB',
    xy: srgbXy.slice(1),
    xyz: [
      [0.4361, 0.2225, 0.0139],
      [0.3851, 0.7169, 0.0971],
      [0.1431, 0.0606, 0.7141],
    ],
  },
  {
    // SMPTE EG 432-1 with the white of D65.
    name: 'displayP3',
    xy: [
      [0.68, 0.32],
      [0.265, 0.69],
      [0.15, 0.06],
    ],
    xyz: [
      [0.5151, 0.2412, -0.0011],
      [0.292, 0.6922, 0.0419],
      [0.1571, 0.0666, 0.7841],
    ],
  },
  {
    // Adobe RGB (1998) Color Image Encoding; profiles of other makers mean the same by other names.
    name: 'adobeRgbLike',
    xy: [
      [0.64, 0.33],
      [0.21, 0.71],
      [0.15, 0.06],
    ],
    xyz: [
      [0.6097, 0.3111, 0.0195],
      [0.2053, 0.6257, 0.0609],
      [0.1492, 0.0632, 0.7446],
    ],
  },
];

/** Writers round and adapt in their own ways, by a few thousandths; the spaces lie further apart. */
const SLACK = 0.006;

/** @returns the known space with these primaries, each three or two numbers; null where none is near. */
export function spaceOf(primaries: readonly (readonly number[])[], by: 'xy' | 'xyz'): KnownColours | null {
  const isNear = (space: KnownSpace) =>
    primaries.length === 3 &&
    space[by].every((known, row) =>
      known.every((value, column) => Math.abs(value - (primaries[row]?.[column] ?? Number.NaN)) <= SLACK),
    );
  return knownSpaces.find(isNear)?.name ?? null;
}
