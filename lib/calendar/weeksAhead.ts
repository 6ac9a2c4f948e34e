import { addDays, daysBetween, weekdayOf } from '@/shared/days';
import type { Calendar } from './calendar';
import { minutesBetween } from './freeMinutes';
import { type Load, loadOf, type OrderLoad, plansOf } from './load';
import type { WorkPlan } from './workPlan';

/** A week of the board. Minutes; `free` is all that is free from today on, whatever is planned in it. */
export interface WeekAhead {
  readonly monday: string;
  readonly free: number;
  readonly accepted: number;
  /** What open quotes would add if all of them came. */
  readonly quoted: number;
}

const WEEKS = 4;

/**
 * This week and the next three.
 *
 * @param from today
 * @param accepted the load as it stands
 * @param quotes orders of which the quote is open
 */
export function weeksAhead(
  calendar: Calendar,
  from: string,
  accepted: Load,
  quotes: readonly OrderLoad[],
): readonly WeekAhead[] {
  const plans = plansOf(accepted);
  // Behind what is accepted, which keeps its place.
  const open = accepted.until === null ? [] : plansOf(loadOf(calendar, quotes, from, accepted.until));
  return Array.from({ length: WEEKS }, (_, index) => {
    const monday = addDays(from, index * 7 - weekdayOf(from));
    const sunday = addDays(monday, 6);
    return {
      monday,
      free: minutesBetween(calendar, daysBetween(monday, from) > 0 ? from : monday, sunday),
      accepted: minutesWithin(plans, monday, sunday),
      quoted: minutesWithin(open, monday, sunday),
    };
  });
}

/** Work belongs to the week it begins in. */
const minutesWithin = (plans: readonly WorkPlan[], monday: string, sunday: string): number =>
  plans
    .flatMap(({ sessions, loose }) => [...sessions, ...loose])
    .filter(({ day }) => daysBetween(monday, day) >= 0 && daysBetween(day, sunday) >= 0)
    .reduce((sum, { minutes }) => sum + minutes, 0);
