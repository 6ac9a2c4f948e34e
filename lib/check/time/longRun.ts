import { freeHoursOf } from '@/lib/calendar/freeHours';
import type { CostFacts } from '@/lib/check/costFacts';
import { makeFinding } from '@/lib/findings/makeFinding';
import type { CheckedJob } from '@/lib/job/checkedJob';
import { piecesOfJob } from '@/lib/job/piecesOfJob';
import type { Finding, Fix } from '@/shared/finding';
import { thresholds } from '@/shared/tables/thresholds';
import { HOURS_NOISE } from './benchCalendar';
import { sessionsOf } from './sessions';
import { splitFix } from './splitFix';

/**
 * TIM-04: hours at the bench in one piece. A session ends with the free hours of its day at the latest; time allowed
 * for rest is a break.
 */
export function longRun(job: CheckedJob, facts: CostFacts): readonly Finding[] {
  const { benchMinutes } = facts;
  const freeHours = freeHoursOf(job.workshop);
  const longestDay = freeHours === null ? 24 : Math.max(...freeHours);
  const hours = Math.min(benchMinutes / sessionsOf(job) / 60, longestDay);
  const { long, tooLong } = thresholds.run;
  const isTooLong = hours > tooLong.value + HOURS_NOISE;
  const hasBreaks = job.rates.restAllowance.value > 0;
  if (!isTooLong && (hours <= long.value + HOURS_NOISE || hasBreaks)) return [];
  const most = (isTooLong ? tooLong : long).value;
  return [
    makeFinding({
      id: 'TIM-04',
      severity: isTooLong ? 'caution' : 'note',
      variant: isTooLong ? 'tooLong' : 'long',
      where: { document: 'job', path: ['piecesPerSession'] },
      found: { value: hours, unit: 'h' },
      limit: { value: most, unit: 'h' },
      facts: { hours, most },
      fix: shortRuns(job, facts),
    }),
  ];
}

/** Fewest sessions of which none is long, each with its own set-up and clean-down. */
function shortRuns(job: CheckedJob, facts: CostFacts): Fix | null {
  const around = job.rates.setUpMinutes.value + job.rates.cleanDownMinutes.value;
  const work = facts.benchMinutes - sessionsOf(job) * around;
  const room = thresholds.run.long.value * 60 - around;
  if (room <= 0 || work <= 0) return null;
  return splitFix(job, facts, Math.floor((piecesOfJob(job) * room) / work));
}
