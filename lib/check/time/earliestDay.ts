import { type Calendar, calendarOf } from '@/lib/calendar/calendar';
import { minuteOf } from '@/lib/calendar/minutes';
import { earliestPlan } from '@/lib/calendar/orderDates';
import { type Planned, planWork } from '@/lib/calendar/planWork';
import type { WorkPlan } from '@/lib/calendar/workPlan';
import type { CostFacts } from '@/lib/check/costFacts';
import type { CheckedJob } from '@/lib/job/checkedJob';
import { addDays, addWorkingDays, daysBetween } from '@/shared/days';
import { thresholds } from '@/shared/tables/thresholds';
import { leadOf } from './blanksToOrder';
import { paidWork } from './paidWork';

/**
 * The day that every finding about time offers. Under a stop it is the earliest that can be kept: hours enough, blanks
 * ordered today, and a working day to spare. Where the wanted day can be kept already and is only close, it is the first
 * with room: hours to spare, and blanks that need not be ordered at once. A caution beside a stop offers none, so that
 * one day is told at a time.
 *
 * @returns null where there is none to offer: free hours are not set, no block holds a session, or the work takes longer than anybody plans
 */
export function earliestDay(
  checked: CheckedJob,
  facts: CostFacts,
  severity: 'stop' | 'caution',
): string | null {
  const calendar = calendarOf(checked.workshop);
  if (calendar === null) return null;
  const { asOf } = checked;
  // Today, or Monday on a weekend.
  const atOnce = addWorkingDays(addDays(asOf, -1), 1);
  const whole = planAll(checked, facts, calendar);
  const atOnceBlanks = byBlanks(checked, facts, calendar, atOnce);
  const kept = latest(
    dayOf(whole, ({ ready }) => ready),
    atOnceBlanks,
  );
  if (severity === 'stop' || kept === null) return kept;
  const first = latest(dayOf(whole, nextDay), atOnceBlanks);
  const { wantedOn } = checked.job;
  const isStopped = wantedOn !== null && first !== null && daysBetween(wantedOn, first) > 0;
  if (isStopped) return null;
  const easy = { what: 'desk', minutes: facts.attendedMinutes / thresholds.load.busy.value } as const;
  return latest(
    first,
    dayOf(planWork(calendar, [{ before: [easy], press: null, after: [] }], minuteOf(asOf)), nextDay),
    byBlanks(checked, facts, calendar, addWorkingDays(asOf, thresholds.orderSoon.value + 1)),
  );
}

/** @returns all paid work from today on, as if no blanks had to come. */
export const planAll = (job: CheckedJob, facts: CostFacts, calendar: Calendar): Planned =>
  planWork(calendar, [paidWork(facts)], minuteOf(job.asOf));

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

const nextDay = ({ lastDay }: WorkPlan): string => addDays(lastDay, 1);

const dayOf = (planned: Planned, day: (plan: WorkPlan) => string): Day =>
  planned.kind === 'planned' ? day(planned.plan) : null;

/** @param ordered the working day on which blanks are ordered */
function byBlanks(job: CheckedJob, facts: CostFacts, calendar: Calendar, ordered: string): Day {
  const lead = leadOf(job);
  if (lead === null) return undefined;
  const planned = earliestPlan(calendar, [facts.work], minuteOf(job.asOf), { ordered, lead });
  return dayOf(planned, ({ ready }) => ready);
}
