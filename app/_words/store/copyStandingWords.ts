import type { Formatter } from '@/app/_words/formatter';

/** @returns the age of a copy: “made today”, “1 day old”, “12 days old”. */
export const copyAgeWords = (daysOld: number, formatter: Pick<Formatter, 'count'>): string =>
  daysOld === 0 ? 'made today' : `${formatter.count(daysOld, 'day')} old`;
