import type { CostFacts } from '@/lib/check/costFacts';
import { makeFinding } from '@/lib/findings/makeFinding';
import type { CheckedJob, ResolvedLine } from '@/lib/job/checkedJob';
import { addDays, addWorkingDays, daysBetween, workingDaysBetween } from '@/shared/days';
import type { Finding } from '@/shared/finding';
import { thresholds } from '@/shared/tables/thresholds';
import { type FreeHours, firstDayBack, lastDayForward } from './benchCalendar';
import { moveDateFix } from './moveDateFix';

/** One working day between the last press and the day the goods are wanted. */
const BUFFER_DAYS = 1;

/**
 * TIM-02: the last day on which blanks can be ordered: bench work walked back from the wanted day with a
 * working day of buffer, blanks in the working day before it begins, less the supplier's working days.
 *
 * @returns nothing where no day is agreed, free hours are not known or all blanks lie on the shelf
 */
export function orderBlanksBy(checked: CheckedJob, facts: CostFacts): readonly Finding[] {
  const { wantedOn } = checked.job;
  const free = checked.workshop.freeHours;
  const toOrder = checked.lines.filter(isToOrder);
  if (wantedOn === null || free === null || toOrder.length === 0) return [];
  const unknown = toOrder.find(({ blank }) => blank.leadWorkingDays === null);
  if (unknown !== undefined) return [leadUnknown(unknown)];
  const lead = Math.max(...toOrder.map(({ blank }) => blank.leadWorkingDays ?? 0));
  const hours = facts.benchMinutes / 60;
  const latest = latestOrderDay(free, wantedOn, hours, lead);
  // Where the work takes longer than anybody plans, TIM-01 says so.
  if (latest === null) return [];
  const days = workingDaysBetween(checked.asOf, latest);
  const soon = thresholds.orderSoon.value;
  const isPassed = daysBetween(checked.asOf, latest) < 0;
  const severity = isPassed ? 'stop' : days <= soon ? 'caution' : 'note';
  const later = severity === 'note' ? null : laterDay(checked.asOf, free, hours, lead);
  return [
    makeFinding({
      id: 'TIM-02',
      severity,
      variant: isPassed ? 'passed' : days <= soon ? 'soon' : 'later',
      where: { document: 'job', path: ['wantedOn'] },
      found: latest,
      limit: checked.asOf,
      facts: { latest, days, lead, wantedOn, later: later ?? '' },
      fix: moveDateFix(later),
    }),
  ];
}

/** @returns null where the work takes longer than anybody plans. */
function latestOrderDay(free: FreeHours, wantedOn: string, hours: number, lead: number): string | null {
  const firstBenchDay = firstDayBack(free, lastBenchDayBefore(wantedOn), hours);
  return firstBenchDay === null ? null : addWorkingDays(addWorkingDays(firstBenchDay, -1), -lead);
}

/** The first wanted day for which there is time enough to order, worked forward from the order. */
function laterDay(asOf: string, free: FreeHours, hours: number, lead: number): string | null {
  const ordered = addWorkingDays(asOf, thresholds.orderSoon.value + 1);
  const arrived = addWorkingDays(ordered, lead);
  const lastBenchDay = lastDayForward(free, addDays(arrived, 1), hours);
  if (lastBenchDay === null) return null;
  let wanted = addDays(lastBenchDay, 1);
  while (daysBetween(lastBenchDay, lastBenchDayBefore(wanted)) < 0) wanted = addDays(wanted, 1);
  return wanted;
}

const lastBenchDayBefore = (wantedOn: string): string => addDays(addWorkingDays(wantedOn, -BUFFER_DAYS), -1);

/** Good pieces alone decide here; spares are the business of the buying list. */
const isToOrder = ({ sizes, blank }: ResolvedLine): boolean =>
  sizes.some(({ size, quantity }) => quantity > (blank.sizes.find(({ name }) => name === size)?.onHand ?? 0));

function leadUnknown({ line, blank }: ResolvedLine): Finding {
  return makeFinding({
    id: 'TIM-02',
    severity: 'caution',
    variant: 'unknown',
    where: { document: 'blank', id: line.blankId, path: ['leadWorkingDays'], lineId: line.id },
    facts: { blank: blank.name },
  });
}
