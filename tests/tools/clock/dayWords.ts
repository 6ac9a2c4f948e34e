import { TEST_YEAR } from './testDay';

/* Days as screens write them for a maker in the United States, worked out apart from the app. */

const wordsOf = (day: string, parts: Intl.DateTimeFormatOptions): string =>
  new Intl.DateTimeFormat('en-US', { ...parts, timeZone: 'UTC' }).format(new Date(`${day}T00:00:00Z`));

/** @example dayInFull('2026-12-04') // 'Dec 4, 2026' */
export const dayInFull = (day: string): string => wordsOf(day, { dateStyle: 'medium' });

/** @returns a day that is neither next to the tests' own nor on it: 'Fri Dec 4', or 'Fri Dec 4, 2026' in another year. */
export function dayInShort(day: string): string {
  const date = dayInFull(day);
  const thisYear = `, ${TEST_YEAR}`;
  const near = date.endsWith(thisYear) ? date.slice(0, -thisYear.length) : date;
  return `${wordsOf(day, { weekday: 'short' })} ${near}`;
}
