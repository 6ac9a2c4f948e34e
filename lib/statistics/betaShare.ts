import { logGamma } from './logGamma';

/** Beyond this many turns nothing is gained: shapes up to a million need fewer. */
const MOST_TURNS = 20_000;
const SMALLEST = 1e-300;

/**
 * The regularised incomplete beta function, by its continued fraction (NIST Digital Library of Mathematical Functions
 * 8.17.22) in the form of Lentz.
 *
 * @param x 0 to 1
 * @param a above 0
 * @param b above 0
 * @returns the chance that a share drawn from Beta(a, b) is no more than x
 * @example betaShare(0.5, 1, 1) // => 0.5
 */
export function betaShare(x: number, a: number, b: number): number {
  if (!(a > 0) || !(b > 0)) throw new RangeError(`Beta(${a}, ${b}) is no distribution`);
  if (x <= 0) return 0;
  if (x >= 1) return 1;
  const front = Math.exp(a * Math.log(x) + b * Math.log1p(-x) + logGamma(a + b) - logGamma(a) - logGamma(b));
  // The fraction comes to its end fast on this side of the mean alone.
  return x < (a + 1) / (a + b + 2)
    ? (front * fraction(x, a, b)) / a
    : 1 - (front * fraction(1 - x, b, a)) / b;
}

// Helpers

function fraction(x: number, a: number, b: number): number {
  let c = 1;
  let d = 1 / awayFromZero(1 - ((a + b) * x) / (a + 1));
  let value = d;
  for (let m = 1; m <= MOST_TURNS; m += 1) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m));
    d = 1 / awayFromZero(1 + even * d);
    c = awayFromZero(1 + even / c);
    value *= d * c;
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1));
    d = 1 / awayFromZero(1 + odd * d);
    c = awayFromZero(1 + odd / c);
    value *= d * c;
    if (Math.abs(d * c - 1) < 1e-15) break;
  }
  return value;
}

const awayFromZero = (value: number): number => (Math.abs(value) < SMALLEST ? SMALLEST : value);
