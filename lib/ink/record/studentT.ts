/*
 * Two-sided 95 % points of Student's t: Pearson and Hartley, Biometrika Tables for Statisticians, vol. I,
 * table 12, as printed in most textbooks.
 */
const POINTS: readonly number[] = [
  12.706, 4.303, 3.182, 2.776, 2.571, 2.447, 2.365, 2.306, 2.262, 2.228, 2.201, 2.179, 2.16, 2.145, 2.131,
  2.12, 2.11, 2.101, 2.093, 2.086, 2.08, 2.074, 2.069, 2.064, 2.06, 2.056, 2.052, 2.048, 2.045, 2.042,
];

/**
 * How many standard errors either side hold the true value 19 times of 20.
 *
 * @param freedom degrees of freedom, a whole number from 1
 */
export function studentT95(freedom: number): number {
  const printed = POINTS[freedom - 1];
  if (printed !== undefined) return printed;
  // Beyond the table: the first terms of the expansion around the normal point (Fisher and Cornish).
  const z = 1.959964;
  return z + (z ** 3 + z) / (4 * freedom) + (5 * z ** 5 + 16 * z ** 3 + 3 * z) / (96 * freedom ** 2);
}
