import { addDays, weekdayOf } from '@/shared/days';

const FRIDAY = 4;

/** From a Wednesday on these lead to a Friday. */
const LEAST_DAYS = 16;

/**
 * The day the club of the worked example wants its shirts: the first Friday sixteen days away or more. Work is
 * reckoned back from the event over weekends, so a number of days alone would leave too little time to order the
 * blanks when the example is opened late in a week. With the event always on a Friday the last day to order is
 * always the Monday eleven days before, and at least three working days off: the same findings on every weekday.
 */
export function clubEventDay(day: string): string {
  const soonest = addDays(day, LEAST_DAYS);
  return addDays(soonest, (FRIDAY - weekdayOf(soonest) + 7) % 7);
}
