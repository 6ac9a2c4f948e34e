import { daysBetween } from '@/shared/days';
import type { Calendar } from './calendar';
import { DAY_MINUTES, minuteOf, WEEK_MINUTES } from './minutes';
import type { Span } from './span';

/** @returns free minutes of Monday to Sunday, days off not counted; what runs past midnight belongs to the day after. */
export function minutesOfWeekdays({ week }: Calendar): readonly number[] {
  const free = [0, 0, 0, 0, 0, 0, 0];
  for (const { from, to } of week)
    for (let at = from; at < to; ) {
      const midnight = (Math.floor(at / DAY_MINUTES) + 1) * DAY_MINUTES;
      const day = Math.floor(at / DAY_MINUTES) % 7;
      free[day] = (free[day] ?? 0) + Math.min(to, midnight) - at;
      at = midnight;
    }
  return free;
}

/**
 * Counts whole weeks at once, so that a slip in a year costs no time.
 *
 * @returns free minutes from one day to another, both included; 0 where `to` comes first
 */
export function minutesBetween(calendar: Calendar, from: string, to: string): number {
  const days = daysBetween(from, to) + 1;
  if (days <= 0) return 0;
  const free = minutesOfWeekdays(calendar);
  const whole = { from: minuteOf(from), to: minuteOf(to) + DAY_MINUTES };
  return calendar.off.reduce(
    (left, off) => {
      const both = { from: Math.max(off.from, whole.from), to: Math.min(off.to, whole.to) };
      return both.from < both.to ? left - weekly(free, both) : left;
    },
    weekly(free, whole),
  );
}

/** @param days from midnight to midnight */
function weekly(free: readonly number[], days: Span): number {
  const weeks = Math.floor((days.to - days.from) / WEEK_MINUTES);
  let sum = weeks * free.reduce((all, minutes) => all + minutes, 0);
  for (let at = days.from + weeks * WEEK_MINUTES; at < days.to; at += DAY_MINUTES) {
    // The first minute is that of a Monday; days before it count as well.
    const weekday = (((at / DAY_MINUTES) % 7) + 7) % 7;
    sum += free[weekday] ?? 0;
  }
  return sum;
}
