import { type FreeHours, freeHoursOf } from '@/lib/calendar/freeHours';
import type { CostFacts } from '@/lib/check/costFacts';
import type { CheckedJob } from '@/lib/job/checkedJob';
import { addDays, addWorkingDays, daysBetween } from '@/shared/days';
import { thresholds } from '@/shared/tables/thresholds';
import { lastDayForward } from './benchCalendar';
import { dayAfterBuffer, dayWithBlanks, isToOrder } from './blanksInTime';

/**
 * The day that every finding about time offers. Under a stop it is the earliest that can be kept: hours enough, blanks
 * ordered today, and a working day to spare. Where the wanted day can be kept already and is only close, it is the first
 * with room: hours to spare, and blanks that need not be ordered at once. A caution beside a stop offers none, so that
 * one day is told at a time.
 *
 * @returns null where there is none to offer: free hours are not set, or the work takes longer than anybody plans
 */
export function earliestDay(
  checked: CheckedJob,
  facts: CostFacts,
  severity: 'stop' | 'caution',
): string | null {
  const free = freeHoursOf(checked.workshop);
  if (free === null) return null;
  // Today, or Monday on a weekend.
  const atOnce = addWorkingDays(addDays(checked.asOf, -1), 1);
  const kept = latest(
    byHours(checked.asOf, free, facts.attendedMinutes / 60, dayAfterBuffer),
    byBlanks(checked, facts, free, atOnce),
  );
  if (severity === 'stop' || kept === null) return kept;
  const first = latest(
    byHours(checked.asOf, free, facts.attendedMinutes / 60, nextDay),
    byBlanks(checked, facts, free, atOnce),
  );
  const { wantedOn } = checked.job;
  const isStopped = wantedOn !== null && first !== null && daysBetween(wantedOn, first) > 0;
  if (isStopped) return null;
  const easy = facts.attendedMinutes / 60 / thresholds.load.busy.value;
  return latest(
    byHours(checked.asOf, free, easy, nextDay),
    byBlanks(checked, facts, free, addWorkingDays(checked.asOf, thresholds.orderSoon.value + 1)),
  );
}

// Helpers

/** Undefined where nothing has to wait, null where the wait has no end. */
type Day = string | null | undefined;

function latest(...days: readonly Day[]): string | null {
  const waited = days.filter((day) => day !== undefined);
  if (waited.includes(null)) return null;
  return waited.reduce((last, day) =>
    last === null || day === null ? null : daysBetween(last, day) > 0 ? day : last,
  );
}

const nextDay = (lastBenchDay: string): string => addDays(lastBenchDay, 1);

function byHours(asOf: string, free: FreeHours, hours: number, ready: (lastBenchDay: string) => string): Day {
  const lastBenchDay = lastDayForward(free, asOf, hours);
  return lastBenchDay === null ? null : ready(lastBenchDay);
}

/** @param ordered the working day on which blanks are ordered */
function byBlanks(job: CheckedJob, facts: CostFacts, free: FreeHours, ordered: string): Day {
  const leads = job.lines.filter(isToOrder(job)).flatMap(({ blank }) => blank.leadWorkingDays ?? []);
  return leads.length === 0
    ? undefined
    : dayWithBlanks(ordered, free, facts.benchMinutes / 60, Math.max(...leads));
}
