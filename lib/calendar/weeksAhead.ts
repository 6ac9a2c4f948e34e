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
  const first = addDays(from, -weekdayOf(from));
  const sure = minutesByWeek(plansOf(accepted), first);
  // Behind what is accepted, which keeps its place.
  const open = accepted.until === null ? [] : plansOf(loadOf(calendar, quotes, from, accepted.until));
  const perhaps = minutesByWeek(open, first);
  return Array.from({ length: WEEKS }, (_, week) => {
    const monday = addDays(first, week * 7);
    return {
      monday,
      free: minutesBetween(calendar, week === 0 ? from : monday, addDays(monday, 6)),
      accepted: sure.get(week) ?? 0,
      quoted: perhaps.get(week) ?? 0,
    };
  });
}

/** Work belongs to the week it begins in. */
function minutesByWeek(plans: readonly WorkPlan[], first: string): ReadonlyMap<number, number> {
  const byWeek = new Map<number, number>();
  for (const { day, minutes } of plans.flatMap(({ sessions, loose }) => [...sessions, ...loose])) {
    const week = Math.floor(daysBetween(first, day) / 7);
    byWeek.set(week, (byWeek.get(week) ?? 0) + minutes);
  }
  return byWeek;
}
