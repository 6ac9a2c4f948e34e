import { addDays, daysBetween } from '@/shared/days';

export const DAY_MINUTES = 1440;
export const WEEK_MINUTES = 7 * DAY_MINUTES;

/** A few milliseconds of work are no reason for another day. */
export const MINUTES_NOISE = 6e-5;

/** A search for a day ends after this many days: further ahead nobody plans. */
export const MOST_DAYS = 104 * 7;

/** A Monday, so that whole weeks of minutes are weeks of the calendar. */
const FIRST_DAY = '1969-12-29';

/** @returns minutes of the wall clock from a Monday long ago to the beginning of a day. */
export const minuteOf = (day: string): number => daysBetween(FIRST_DAY, day) * DAY_MINUTES;

/** @returns the day a minute lies in. */
export const dayOfMinute = (minute: number): string => addDays(FIRST_DAY, Math.floor(minute / DAY_MINUTES));

/** @returns the day before which a span ends: what ends at midnight is done on the day that ends there. */
export const dayOfEnd = (minute: number): string =>
  dayOfMinute(Math.ceil(minute / DAY_MINUTES) * DAY_MINUTES - 1);
