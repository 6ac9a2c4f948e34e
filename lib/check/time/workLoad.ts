import { calendarOf } from '@/lib/calendar/calendar';
import { minutesBetween } from '@/lib/calendar/freeMinutes';
import { MINUTES_NOISE } from '@/lib/calendar/minutes';
import type { CostFacts } from '@/lib/check/costFacts';
import { makeFinding } from '@/lib/findings/makeFinding';
import type { CheckedJob } from '@/lib/job/checkedJob';
import { addDays, daysBetween } from '@/shared/days';
import type { Finding } from '@/shared/finding';
import { thresholds } from '@/shared/tables/thresholds';
import { earliestDay, planAll } from './earliestDay';
import { moveDateFix } from './moveDateFix';

/**
 * TIM-01: all paid work against the free minutes from today to the day before the goods are wanted, and whether the
 * free blocks hold it as it must be done: each heating-up of the press in one piece.
 *
 * @returns nothing where no day is agreed
 */
export function workLoad(checked: CheckedJob, facts: CostFacts): readonly Finding[] {
  const { job, workshop, asOf } = checked;
  const { wantedOn } = job;
  if (wantedOn === null) return [];
  const neededHours = facts.attendedMinutes / 60;
  const calendar = calendarOf(workshop);
  if (calendar === null) {
    return [
      makeFinding({
        id: 'TIM-01',
        severity: 'caution',
        variant: 'unknown',
        where: { document: 'workshop', path: ['blocks'] },
        facts: { neededHours, wantedOn },
      }),
    ];
  }
  const { full, busy } = thresholds.load;
  const free = minutesBetween(calendar, asOf, addDays(wantedOn, -1));
  const freeHours = free / 60;
  const isOver = facts.attendedMinutes > free * full.value + MINUTES_NOISE;
  const isBusy = facts.attendedMinutes > free * busy.value + MINUTES_NOISE;
  const planned = planAll(checked, facts, calendar);
  const isInTime = planned.kind === 'planned' && daysBetween(planned.plan.lastDay, wantedOn) > 0;
  if (!isBusy && isInTime) return [];
  const honest = earliestDay(checked, facts, isOver ? 'stop' : 'caution');
  const work = { neededHours, freeHours, wantedOn };
  const of = isOver
    ? honest === null
      ? ({ variant: 'never', facts: work } as const)
      : ({ variant: 'over', facts: { ...work, honest } } as const)
    : planned.kind === 'noBlock'
      ? ({
          variant: 'noBlock',
          facts: {
            wantedOn,
            sessionHours: planned.neededMinutes / 60,
            longestHours: planned.longestMinutes / 60,
          },
        } as const)
      : ({ variant: isInTime ? 'busy' : 'blocks', facts: { ...work, honest: honest ?? '' } } as const);
  return [
    makeFinding({
      id: 'TIM-01',
      severity: isOver ? 'stop' : 'caution',
      ...of,
      where: { document: 'job', path: ['wantedOn'] },
      found: { value: neededHours, unit: 'h' },
      limit: { value: freeHours, unit: 'h' },
      fix: moveDateFix(honest),
    }),
  ];
}
