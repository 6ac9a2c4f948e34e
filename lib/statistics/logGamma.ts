/** Coefficients for g = 7 and nine terms, C. Lanczos, SIAM Journal on Numerical Analysis B 1, 86–96, 1964; from memory. */
const SERIES = [
  0.99999999999980993, 676.5203681218851, -1259.1392167224028, 771.32342877765313, -176.61502916214059,
  12.507343278686905, -0.13857109526572012, 9.9843695780195716e-6, 1.5056327351493116e-7,
] as const;
const G = 7;

/**
 * @param x above 0
 * @returns natural logarithm of the gamma function; within 1e-13 of it where that is near 1
 */
export function logGamma(x: number): number {
  const below = x - 1;
  const [first, ...rest] = SERIES;
  const sum = rest.reduce<number>((running, part, at) => running + part / (below + at + 1), first);
  const t = below + G + 0.5;
  return 0.5 * Math.log(2 * Math.PI) + (below + 0.5) * Math.log(t) - t + Math.log(sum);
}
