import { calendarOf } from '@/lib/calendar/calendar';
import type { CostFacts } from '@/lib/check/costFacts';
import { makeFinding } from '@/lib/findings/makeFinding';
import type { CheckedJob } from '@/lib/job/checkedJob';
import { piecesOfJob } from '@/lib/job/piecesOfJob';
import type { Finding } from '@/shared/finding';
import { planAll } from './earliestDay';
import { splitFix } from './splitFix';

/**
 * TIM-01: no free block holds the work at the press in one piece, so that it is heated up more often than the job is
 * priced for. The button prices it so.
 *
 * @returns nothing where no day is agreed
 */
export function moreHeatings(job: CheckedJob, facts: CostFacts): readonly Finding[] {
  const calendar = calendarOf(job.workshop);
  if (job.job.wantedOn === null || calendar === null) return [];
  const planned = planAll(job, facts, calendar);
  if (planned.kind !== 'planned' || planned.plan.extra.sessions === 0) return [];
  const { sessions, extra } = planned.plan;
  return [
    makeFinding({
      id: 'TIM-01',
      severity: 'note',
      variant: 'heatings',
      where: { document: 'job', path: ['piecesPerSession'] },
      found: { value: sessions.length, unit: 'times' },
      facts: { sessions: sessions.length, more: extra.sessions, minutes: extra.minutes, inkMl: extra.inkMl },
      fix: splitFix(job, facts, Math.ceil(piecesOfJob(job) / sessions.length)),
    }),
  ];
}
