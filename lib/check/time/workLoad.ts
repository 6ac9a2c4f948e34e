import { freeHoursOf } from '@/lib/calendar/freeHours';
import type { CostFacts } from '@/lib/check/costFacts';
import { makeFinding } from '@/lib/findings/makeFinding';
import type { CheckedJob } from '@/lib/job/checkedJob';
import { addDays } from '@/shared/days';
import type { Finding } from '@/shared/finding';
import { thresholds } from '@/shared/tables/thresholds';
import { HOURS_NOISE, hoursBetween } from './benchCalendar';
import { earliestDay } from './earliestDay';
import { moveDateFix } from './moveDateFix';

/**
 * TIM-01: all paid work against the free bench hours from today to the day before the goods are wanted.
 *
 * @returns nothing where no day is agreed
 */
export function workLoad(checked: CheckedJob, facts: CostFacts): readonly Finding[] {
  const { job, workshop, asOf } = checked;
  const { wantedOn } = job;
  if (wantedOn === null) return [];
  const neededHours = facts.attendedMinutes / 60;
  const free = freeHoursOf(workshop);
  if (free === null) {
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
  const freeHours = hoursBetween(free, asOf, addDays(wantedOn, -1));
  if (neededHours <= freeHours * busy.value + HOURS_NOISE) return [];
  const isOver = neededHours > freeHours * full.value + HOURS_NOISE;
  const honest = earliestDay(checked, facts, isOver ? 'stop' : 'caution');
  const work = { neededHours, freeHours, wantedOn };
  return [
    makeFinding({
      id: 'TIM-01',
      severity: isOver ? 'stop' : 'caution',
      ...(isOver && honest === null
        ? ({ variant: 'never', facts: work } as const)
        : ({ variant: isOver ? 'over' : 'busy', facts: { ...work, honest: honest ?? '' } } as const)),
      where: { document: 'job', path: ['wantedOn'] },
      found: { value: neededHours, unit: 'h' },
      limit: { value: freeHours, unit: 'h' },
      fix: moveDateFix(honest),
    }),
  ];
}
