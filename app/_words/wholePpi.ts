import type { Formatter } from './formatter';

/** @returns pixels an inch in whole ones, rounded down: what misses a limit is never written as the limit. */
export const wholePpi = (ppi: number, formatter: Formatter): string =>
  formatter.number(Math.floor(ppi + 1e-6), 0);
