import { betaQuantile } from '@/lib/statistics/betaQuantile';

/** Presses that a standard rate of scrap weighs as much as; common practice. */
export const PRIOR_PRESSES = 50;
/** Sheets that a standard share of rejects weighs as much as, and blanks that one of faulty blanks does. */
export const PRIOR_SHEETS = 50;
export const PRIOR_BLANKS = 100;

const UPPER_CHANCE = 0.9;

interface LearnedShare {
  readonly measured: number;
  /** With 90 % the true share is no more. */
  readonly upper: number;
  /** Standard deviation of the estimate. */
  readonly spread: number;
}

/**
 * What a share comes to that was assumed and then seen: the standard counted like so many observations, as the mean of
 * a Beta distribution. A standard of 0 proves nothing, however much it is counted: its upper bound is that of what was
 * seen alone (Clopper and Pearson), 1 − 0.1^(1/n) of none in n.
 *
 * @param standard 0 or more, below 1
 * @param prior observations the standard is worth
 * @param seen in `of`; more seen than there were is read as all of them
 * @example learnedShare(0.035, 50, 2, 41).measured // => 3.75 ÷ 91
 */
export function learnedShare(standard: number, prior: number, seen: number, of: number): LearnedShare {
  const most = Math.min(seen, of);
  const a = prior * standard + most;
  const b = prior * (1 - standard) + (of - most);
  const all = a + b;
  const measured = a / all;
  return {
    measured,
    upper: standard > 0 ? upperOf(a, b) : upperOf(most + 1, of - most),
    spread: Math.sqrt((measured * (1 - measured)) / (all + 1)),
  };
}

// Helpers

/** Where none was left over the share may be all. */
const upperOf = (a: number, b: number): number => (b > 0 ? betaQuantile(UPPER_CHANCE, a, b) : 1);
