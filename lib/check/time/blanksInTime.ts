import type { FreeHours } from '@/lib/calendar/freeHours';
import type { ResolvedJob, ResolvedLine } from '@/lib/job/checkedJob';
import { onHandOf } from '@/lib/job/onHandOf';
import { addDays, addWorkingDays, daysBetween } from '@/shared/days';
import { firstDayBack, lastDayForward } from './benchCalendar';

/** One working day between the last press and the day the goods are wanted. */
const BUFFER_DAYS = 1;

/** Good pieces alone decide here; spares are the business of the buying list. A customer's own blanks are not ordered. */
export const isToOrder =
  (job: Pick<ResolvedJob, 'onHand'>) =>
  ({ line, sizes, blank }: ResolvedLine): boolean =>
    blank.suppliedBy === 'maker' &&
    sizes.some(({ size, quantity }) => quantity > (onHandOf(job, line.blankId, size) ?? 0));

/**
 * The last day on which blanks can be ordered.
 *
 * @param hours bench work between the blanks' arrival and the wanted day
 * @param lead working days from order to arrival
 * @returns null where the work takes longer than anybody plans
 */
export function latestOrderDay(
  free: FreeHours,
  wantedOn: string,
  hours: number,
  lead: number,
): string | null {
  const firstBenchDay = firstDayBack(free, lastBenchDayBefore(wantedOn), hours);
  return firstBenchDay === null ? null : addWorkingDays(addWorkingDays(firstBenchDay, -1), -lead);
}

/**
 * The first wanted day for which there is time enough, worked forward from the order.
 *
 * @param ordered a working day
 * @param lead working days from order to arrival
 * @returns null where the work takes longer than anybody plans
 */
export function dayWithBlanks(ordered: string, free: FreeHours, hours: number, lead: number): string | null {
  const arrived = addWorkingDays(ordered, lead);
  const lastBenchDay = lastDayForward(free, addDays(arrived, 1), hours);
  return lastBenchDay === null ? null : dayAfterBuffer(lastBenchDay);
}

/** @returns the first wanted day that leaves the buffer after the last day at the bench. */
export function dayAfterBuffer(lastBenchDay: string): string {
  let wanted = addDays(lastBenchDay, 1);
  while (daysBetween(lastBenchDay, lastBenchDayBefore(wanted)) < 0) wanted = addDays(wanted, 1);
  return wanted;
}

const lastBenchDayBefore = (wantedOn: string): string => addDays(addWorkingDays(wantedOn, -BUFFER_DAYS), -1);
