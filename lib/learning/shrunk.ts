/** Runs that a standard weighs as much as; common practice. */
const PRIOR_RUNS = 5;

/**
 * A standard moved by what was measured since: (5 · standard + Σ actual) ÷ (5 + runs). It moves by every run and by none
 * far, so that no chance run of equal signs changes anything.
 *
 * @param actuals one of each run, in the unit of the standard
 * @returns `spread` is the standard deviation of the sample, null of fewer than two
 * @example shrunk(2.4, [3, 3]).measured // => 18 ÷ 7
 */
export function shrunk(
  standard: number,
  actuals: readonly number[],
): { readonly measured: number; readonly spread: number | null } {
  const many = actuals.length;
  const sum = actuals.reduce((running, value) => running + value, 0);
  const mean = sum / many;
  const squares = actuals.reduce((running, value) => running + (value - mean) ** 2, 0);
  return {
    measured: (PRIOR_RUNS * standard + sum) / (PRIOR_RUNS + many),
    spread: many < 2 ? null : Math.sqrt(squares / (many - 1)),
  };
}
