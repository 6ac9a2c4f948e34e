import type { FreeHours } from '@/lib/calendar/freeHours';
import { addDays, daysBetween, weekdayOf } from '@/shared/days';

/** A few milliseconds of work are no reason for another day. */
export const HOURS_NOISE = 1e-6;

/** A search for a day ends after this many weeks: further ahead nobody plans. */
const MOST_WEEKS = 104;

/** @returns free hours of a week. */
const weekHours = (free: FreeHours): number => free.reduce((sum, hours) => sum + hours, 0);

/** @returns free hours from `from` to `to`, both days included; 0 where `to` comes first. */
export function hoursBetween(free: FreeHours, from: string, to: string): number {
  const days = daysBetween(from, to) + 1;
  if (days <= 0) return 0;
  const weeks = Math.floor(days / 7);
  const rest = Array.from({ length: days - weeks * 7 }, (_, index) => hoursOn(free, addDays(from, index)));
  return weeks * weekHours(free) + rest.reduce((sum, hours) => sum + hours, 0);
}

/**
 * Walks forward until enough hours have come together.
 *
 * @param hours hours of work, 0 or more
 * @returns the last day of the work, or null where it takes longer than anybody plans
 */
export function lastDayForward(free: FreeHours, from: string, hours: number): string | null {
  return walk(free, from, hours, 1);
}

/** @returns the first day of work that ends with `to`, or null where it takes longer than anybody plans. */
export function firstDayBack(free: FreeHours, to: string, hours: number): string | null {
  return walk(free, to, hours, -1);
}

/** Whole weeks first, then at most one more day by day. */
function walk(free: FreeHours, start: string, hours: number, step: 1 | -1): string | null {
  const perWeek = weekHours(free);
  if (hours <= HOURS_NOISE) return start;
  const weeks = Math.max(0, Math.ceil((hours - HOURS_NOISE) / perWeek) - 1);
  if (!(weeks < MOST_WEEKS)) return null;
  let left = hours - weeks * perWeek;
  for (let day = addDays(start, step * weeks * 7); ; day = addDays(day, step)) {
    left -= hoursOn(free, day);
    if (left <= HOURS_NOISE) return day;
  }
}

const hoursOn = (free: FreeHours, day: string): number => free[weekdayOf(day)] ?? 0;
