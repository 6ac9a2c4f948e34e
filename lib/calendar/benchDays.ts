import { addDays, daysBetween } from '@/shared/days';
import type { Calendar } from './calendar';
import { minutesBetween } from './freeMinutes';
import type { WorkPlan } from './workPlan';

/** One day at the bench as an order sees it, minutes. */
export interface BenchDay {
  readonly day: string;
  /** Free by the calendar, whatever is planned in it. */
  readonly free: number;
  /** Of this order. */
  readonly own: number;
  /** Of other orders. */
  readonly others: number;
  readonly isWanted: boolean;
}

/** Further ahead nobody looks at single days. */
const MOST_DAYS_AHEAD = 120;

/**
 * The days from today to the wanted one or the last at the bench, those on which nothing can be done and nothing is
 * left out.
 *
 * @param most of them
 */
export function benchDays(
  calendar: Calendar,
  own: WorkPlan | null,
  others: readonly WorkPlan[],
  {
    from,
    wantedOn,
    most,
  }: { readonly from: string; readonly wantedOn: string | null; readonly most: number },
): readonly BenchDay[] {
  const ends = [from, ...(wantedOn === null ? [] : [wantedOn]), ...(own === null ? [] : [own.lastDay])];
  const last = ends.toSorted().at(-1) ?? from;
  const count = Math.min(MOST_DAYS_AHEAD, daysBetween(from, last) + 1);
  const days = Array.from({ length: count }, (_, index): BenchDay => {
    const day = addDays(from, index);
    return {
      day,
      free: minutesBetween(calendar, day, day),
      own: minutesOn(own === null ? [] : [own], day),
      others: minutesOn(others, day),
      isWanted: day === wantedOn,
    };
  }).filter((one) => one.free > 0 || one.own > 0 || one.others > 0 || one.isWanted);
  return fewerDays(days, most);
}

/**
 * @returns no more days than asked for: those before the order’s own work go first, then idle ones from the last on, then
 *   the last; never the wanted one
 */
export function fewerDays(days: readonly BenchDay[], most: number): readonly BenchDay[] {
  const over = days.length - most;
  if (over <= 0) return days;
  const firstOwn = days.findIndex(({ own }) => own > 0);
  const early = days.slice(0, Math.max(0, firstOwn));
  const rest = days.slice(early.length).toReversed();
  const idle = rest.filter((one) => one.own === 0 && one.others === 0 && !one.isWanted);
  const busy = rest.filter((one) => !idle.includes(one) && !one.isWanted);
  const gone = new Set([...early, ...idle, ...busy].slice(0, over));
  return days.filter((one) => !gone.has(one));
}

/** Work belongs to the day it begins on. */
const minutesOn = (plans: readonly WorkPlan[], day: string): number =>
  plans
    .flatMap(({ sessions, loose }) => [...sessions, ...loose])
    .filter((one) => one.day === day)
    .reduce((sum, { minutes }) => sum + minutes, 0);

/** @returns minutes of a plan, all sessions and all other work. */
export const planMinutes = ({ sessions, loose }: WorkPlan): number =>
  [...sessions, ...loose].reduce((sum, { minutes }) => sum + minutes, 0);
