import { normalQuantile } from './normalQuantile';

/** Limits of a share, 0 to 1. */
interface Limits {
  readonly lower: number;
  readonly upper: number;
}

/**
 * Between what a true share may lie, seen so many times in so many; E. Wilson, Journal of the American Statistical
 * Association 22, 209–212, 1927.
 *
 * @param seen whole, 0 to `of`
 * @param of whole, 1 or more
 * @param confidence above 0, below 1: that of both limits together, or of each alone where `sides` is 1
 */
export function wilson(seen: number, of: number, confidence: number, sides: 1 | 2 = 2): Limits {
  if (!(of >= 1) || !(seen >= 0 && seen <= of)) throw new RangeError(`${seen} in ${of} is no share`);
  const z = normalQuantile(sides === 2 ? 1 - (1 - confidence) / 2 : confidence);
  const share = seen / of;
  const square = z ** 2 / of;
  const middle = (share + square / 2) / (1 + square);
  const half = (z * Math.sqrt((share * (1 - share)) / of + square / (4 * of))) / (1 + square);
  return { lower: Math.max(0, middle - half), upper: Math.min(1, middle + half) };
}
