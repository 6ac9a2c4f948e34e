import { calendarOf } from '@/lib/calendar/calendar';
import { latestDates } from '@/lib/calendar/orderDates';
import type { CostFacts } from '@/lib/check/costFacts';
import { makeFinding } from '@/lib/findings/makeFinding';
import type { CheckedJob, ResolvedLine } from '@/lib/job/checkedJob';
import { onHandOf } from '@/lib/job/onHandOf';
import { daysBetween, workingDaysBetween } from '@/shared/days';
import type { Finding } from '@/shared/finding';
import { thresholds } from '@/shared/tables/thresholds';
import { isToOrder, leadOf } from './blanksToOrder';
import { earliestDay } from './earliestDay';
import { moveDateFix } from './moveDateFix';

/**
 * TIM-02: the last day on which blanks can be ordered: bench work laid into free blocks back from the
 * wanted day with a working day of buffer, blanks in the working day before the press is heated up, less the supplier's
 * working days.
 *
 * @returns nothing where no day is agreed, free hours are not known or all blanks lie on the shelf
 */
export function orderBlanksBy(checked: CheckedJob, facts: CostFacts): readonly Finding[] {
  const { wantedOn } = checked.job;
  const calendar = calendarOf(checked.workshop);
  const toOrder = checked.lines.filter(isToOrder(checked));
  if (wantedOn === null || calendar === null || toOrder.length === 0) return [];
  const unknown = toOrder.find(({ blank }) => blank.leadWorkingDays === null);
  if (unknown !== undefined) return [leadUnknown(unknown)];
  const lead = leadOf(checked) ?? 0;
  const found = latestDates(calendar, [facts.work], wantedOn, lead);
  // Where no block holds the work, or it takes longer than anybody plans, TIM-01 says so.
  const latest = found.kind === 'latest' ? found.dates.orderBlanksBy : null;
  if (latest === null) return [];
  const days = workingDaysBetween(checked.asOf, latest);
  const soon = thresholds.orderSoon.value;
  const isPassed = daysBetween(checked.asOf, latest) < 0;
  const severity = isPassed ? 'stop' : days <= soon ? 'caution' : 'note';
  const later = severity === 'note' ? null : earliestDay(checked, facts, severity);
  const order = { latest, lead, wantedOn, uncounted: uncountedOf(checked, toOrder) };
  return [
    makeFinding({
      id: 'TIM-02',
      severity,
      ...(severity === 'note'
        ? ({ variant: 'later', facts: order } as const)
        : ({ variant: isPassed ? 'passed' : 'soon', facts: { ...order, later: later ?? '' } } as const)),
      where: { document: 'job', path: ['wantedOn'] },
      found: latest,
      limit: checked.asOf,
      fix: moveDateFix(later),
    }),
  ];
}

/** Blanks to order of which some wanted size was never counted. */
function uncountedOf(job: CheckedJob, lines: readonly ResolvedLine[]): string {
  const names = lines.flatMap(({ line, blank, sizes }) =>
    sizes.some(({ size }) => onHandOf(job, line.blankId, size) === null) ? [blank.name] : [],
  );
  return [...new Set(names)].join(', ');
}

function leadUnknown({ line, blank }: ResolvedLine): Finding {
  return makeFinding({
    id: 'TIM-02',
    severity: 'caution',
    variant: 'unknown',
    where: { document: 'blank', id: line.blankId, path: ['leadWorkingDays'], lineId: line.id },
    facts: { blank: blank.name },
  });
}
