/*
 * Days are written YYYY-MM-DD (ISO 8601) and counted in the proleptic Gregorian calendar without any time
 * zone: a day is a square on the wall calendar, not a moment.
 */

import { compareText } from './compareText';

const MS_PER_DAY = 86_400_000;

const SATURDAY = 5;

/** @returns whole days from one day to another, negative where `to` comes first. */
export const daysBetween = (from: string, to: string): number => dayNumber(to) - dayNumber(from);

/** @returns the day `count` days later, or earlier where negative. */
export const addDays = (day: string, count: number): string => dayOfNumber(dayNumber(day) + count);

/** @returns noon of a day in UTC, the middle of what is that day somewhere, ms since 1970. */
export const noonOf = (day: string): number => (dayNumber(day) + 0.5) * MS_PER_DAY;

/** The order of days; what has none comes after all that have one. */
export const compareDays = (one: string | null, other: string | null): number =>
  one === null || other === null ? Number(one === null) - Number(other === null) : compareText(one, other);

/** @returns 0 for Monday to 6 for Sunday. */
export const weekdayOf = (day: string): number => weekdayOfNumber(dayNumber(day));

/** @returns whether suppliers and carriers work: Monday to Friday; holidays are not known here. */
export const isWorkingDay = (day: string): boolean => weekdayOf(day) < SATURDAY;

/**
 * Steps over working days, by their numbers: a calendar of orders asks thousands of times, and each text written and
 * read again costs more than the step.
 *
 * @param count how many; negative goes back; 0 stays, also on a weekend
 * @returns the working day reached
 */
export function addWorkingDays(day: string, count: number): string {
  const step = Math.sign(count);
  let reached = dayNumber(day);
  for (let left = Math.abs(count); left > 0; ) {
    reached += step;
    if (weekdayOfNumber(reached) < SATURDAY) left -= 1;
  }
  return dayOfNumber(reached);
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

// Helpers

/** @returns days since 1 January 1970. */
const dayNumber = (day: string): number => Date.parse(`${day}T00:00:00Z`) / MS_PER_DAY;

const dayOfNumber = (number: number): string =>
  new Date(number * MS_PER_DAY).toISOString().replace(/T.*/, '');

// Day 0 was a Thursday.
const weekdayOfNumber = (number: number): number => (((number + 3) % 7) + 7) % 7;
