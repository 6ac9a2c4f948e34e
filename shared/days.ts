/*
 * Days are written YYYY-MM-DD (ISO 8601) and counted in the proleptic Gregorian calendar without any time
 * zone: a day is a square on the wall calendar, not a moment.
 */

const MS_PER_DAY = 86_400_000;

/** @returns whole days from one day to another, negative where `to` comes first. */
export const daysBetween = (from: string, to: string): number => dayNumber(to) - dayNumber(from);

/** @returns the day `count` days later, or earlier where negative. */
export const addDays = (day: string, count: number): string =>
  new Date((dayNumber(day) + count) * MS_PER_DAY).toISOString().split('T')[0] ?? day;

/** @returns noon of a day in UTC, the middle of what is that day somewhere, ms since 1970. */
export const noonOf = (day: string): number => (dayNumber(day) + 0.5) * MS_PER_DAY;

/** @returns 0 for Monday to 6 for Sunday. */
export const weekdayOf = (day: string): number =>
  // Day 0, 1 January 1970, was a Thursday.
  (((dayNumber(day) + 3) % 7) + 7) % 7;

/** @returns whether suppliers and carriers work: Monday to Friday; holidays are not known here. */
export const isWorkingDay = (day: string): boolean => weekdayOf(day) < 5;

/**
 * Steps over working days.
 *
 * @param count how many; negative goes back; 0 stays, also on a weekend
 * @returns the working day reached
 */
export function addWorkingDays(day: string, count: number): string {
  const step = Math.sign(count);
  let reached = day;
  for (let left = Math.abs(count); left > 0; ) {
    reached = addDays(reached, step);
    if (isWorkingDay(reached)) left -= 1;
  }
  return reached;
}

/**
 * Counts working days without walking them one by one, so that a slip in a year costs no time.
 *
 * @returns working days after `from` up to and with `to`; negative, and the same read backwards, where `to`
 *   comes first
 */
export function workingDaysBetween(from: string, to: string): number {
  if (daysBetween(from, to) < 0) return -workingDaysBetween(to, from);
  const weeks = Math.floor(daysBetween(from, to) / 7);
  let count = weeks * 5;
  for (let day = addDays(from, weeks * 7); daysBetween(day, to) > 0; ) {
    day = addDays(day, 1);
    if (isWorkingDay(day)) count += 1;
  }
  return count;
}

const dayNumber = (day: string): number => Date.parse(`${day}T00:00:00Z`) / MS_PER_DAY;
