import type { CostFacts } from '@/lib/check/costFacts';
import type { CheckedJob } from '@/lib/job/checkedJob';
import { addDays, daysBetween } from '@/shared/days';
import { thresholds } from '@/shared/tables/thresholds';
import { lastDayForward } from './benchCalendar';
import { dayWithBlanks, isToOrder } from './blanksInTime';

/**
 * The earliest day that can be kept: hours enough with room to spare, and blanks that can be ordered and come in time.
 * One day for every finding about time, so that what one button mends another need not mend again.
 *
 * @returns null where free hours are not set, or the work takes longer than anybody plans
 */
export function earliestDay({ asOf, workshop, lines }: CheckedJob, facts: CostFacts): string | null {
  const free = workshop.freeHours;
  if (free === null) return null;
  const lastDay = lastDayForward(free, asOf, facts.attendedMinutes / 60 / thresholds.load.busy.value);
  if (lastDay === null) return null;
  const byHours = addDays(lastDay, 1);
  const leads = lines.filter(isToOrder).flatMap(({ blank }) => blank.leadWorkingDays ?? []);
  if (leads.length === 0) return byHours;
  const byBlanks = dayWithBlanks(asOf, free, facts.benchMinutes / 60, Math.max(...leads));
  if (byBlanks === null) return null;
  return daysBetween(byHours, byBlanks) > 0 ? byBlanks : byHours;
}
