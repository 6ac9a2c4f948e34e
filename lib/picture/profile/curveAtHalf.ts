import { byteReader } from '@/lib/picture/byteReader';

/** How many numbers each kind of formula has: ICC.1:2022, 10.18. */
const PARAMETERS = [1, 3, 4, 5, 7] as const;

/**
 * @param tag of type `curv` or `para`: ICC.1:2022, 10.6 and 10.18
 * @returns the light, 0 to 1, that a curve gives for half of an encoded value; null where it is none
 */
export function curveAtHalf(tag: Uint8Array | undefined): number | null {
  const reader = byteReader(tag ?? new Uint8Array());
  const type = reader.word(0, 4);
  if (type === 'curv') {
    const count = reader.u32(8);
    if (count === null) return null;
    if (count === 0) return 0.5;
    const value = (index: number) => reader.u16(12 + index * 2);
    if (count === 1) {
      const gamma = value(0);
      return gamma === null ? null : 0.5 ** (gamma / 256);
    }
    const [low, high, last] = [Math.floor((count - 1) / 2), Math.ceil((count - 1) / 2), count - 1].map(value);
    if (low == null || high == null || last == null) return null;
    return (low + high) / 2 / 65_535;
  }
  if (type !== 'para') return null;
  const kind = reader.u16(8) ?? PARAMETERS.length;
  const wanted = PARAMETERS[kind];
  if (wanted === undefined) return null;
  const numbers: number[] = [];
  for (let index = 0; index < wanted; index += 1) {
    const raw = reader.u32(12 + index * 4);
    if (raw === null) return null;
    numbers.push((raw | 0) / 65_536);
  }
  const [g = 1, a = 1, b = 0, c = 0, d = 0, e = 0, f = 0] = numbers;
  const power = Math.max(0, a * 0.5 + b) ** g;
  switch (kind) {
    case 0:
      return 0.5 ** g;
    case 1:
      return 0.5 >= -b / a ? power : 0;
    case 2:
      return 0.5 >= -b / a ? power + c : c;
    case 3:
      return 0.5 >= d ? power : c * 0.5;
    default:
      return 0.5 >= d ? power + e : c * 0.5 + f;
  }
}
