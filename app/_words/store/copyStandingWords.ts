import type { Formatter } from '@/app/_words/formatter';

/** @returns the age of a copy: “made today”, “1 day old”, “12 days old”. */
export const copyAgeWords = (daysOld: number, formatter: Pick<Formatter, 'count'>): string =>
  daysOld === 0 ? 'made today' : `${formatter.count(daysOld, 'day')} old`;

/**
 * @param daysOld of the last copy; null where none was made
 * @returns how old the last copy is, and whether it still holds everything
 */
export function lastCopyWords(
  { daysOld, hasNew }: { readonly daysOld: number | null; readonly hasNew: boolean },
  formatter: Pick<Formatter, 'count'>,
): string {
  if (daysOld === null) return hasNew ? 'No copy was made yet.' : '';
  const age = daysOld === 0 ? 'was made today' : `is ${copyAgeWords(daysOld, formatter)}`;
  return `The last one ${age}${hasNew ? '; something was changed since' : ', and nothing was changed since'}.`;
}
