import { byteReader } from '@/lib/picture/byteReader';
import { type Pair, spaceOf } from './knownColours';
import { toSrgbFrom } from './toSrgbFrom';

/** What the numbers of a PNG without a profile mean in light. */
export interface PngLight {
  /** An encoded value is the light to this power: 1/2.2 is usual, 1 is plain light. */
  readonly gamma: number;
  /** From light of its primaries to that of sRGB, row by row; null where they are those of sRGB or not told. */
  readonly toSrgb: readonly (readonly number[])[] | null;
}

type DataOf = (type: string) => Uint8Array | null;

/** The gamma of sRGB and its like as a PNG stores it, 1/2.2 × 100,000, and how far a file may stray and still mean it. */
const USUAL_GAMMA = 45_455;
const GAMMA_SLACK = 500;
const ONE = 100_000;

/**
 * gAMA and cHRM count only where nothing that says more is there: PNG Specification, third edition, 4.3 and 11.3.2.
 * Primaries without a gamma are passed over, as browsers do, for then the curve would be a guess.
 *
 * @returns null where the numbers are those of sRGB or followed by a profile
 */
export function pngLight(dataOf: DataOf): PngLight | null {
  if (['cICP', 'iCCP', 'sRGB'].some((type) => dataOf(type) !== null)) return null;
  const gamma = byteReader(dataOf('gAMA') ?? new Uint8Array()).u32(0);
  if (gamma === null || gamma === 0) return null;
  const xy = primariesOf(dataOf);
  const isSrgb = xy === null || spaceOf(xy.slice(1), 'xy') === 'sRGB';
  return { gamma: gamma / ONE, toSrgb: isSrgb ? null : toSrgbFrom(xy) };
}

/** Whether such light is nearly that of sRGB. */
export const isUsualLight = ({ gamma, toSrgb }: PngLight): boolean =>
  toSrgb === null && Math.abs(gamma * ONE - USUAL_GAMMA) <= GAMMA_SLACK;

/** x and y of white, red, green and blue. */
export function primariesOf(dataOf: DataOf): readonly Pair[] | null {
  const reader = byteReader(dataOf('cHRM') ?? new Uint8Array());
  const pairs = [0, 8, 16, 24].map(
    (at): Pair => [(reader.u32(at) ?? 0) / ONE, (reader.u32(at + 4) ?? 0) / ONE],
  );
  return pairs.every(([x, y]) => x + y <= 1 && y > 0) ? pairs : null;
}
