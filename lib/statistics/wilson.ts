/** Shares, 0 to 1. */
interface Limits {
  readonly lower: number;
  readonly upper: number;
}

/**
 * Between which shares a true one lies that was measured: E. B. Wilson, Journal of the American Statistical Association
 * 22, 209–212, 1927; NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.4.1.
 *
 * @param share as it was seen, 0 to 1
 * @param of how many were looked at, above 0
 * @param z the normal quantile beyond which each limit is not to lie: 1.959964 where both together hold with 95 %
 */
export function wilson(share: number, of: number, z: number): Limits {
  const middle = (share + z ** 2 / (2 * of)) / (1 + z ** 2 / of);
  const half = (z / (1 + z ** 2 / of)) * Math.sqrt((share * (1 - share)) / of + z ** 2 / (4 * of ** 2));
  return { lower: Math.max(0, middle - half), upper: Math.min(1, middle + half) };
}
