import { calendarOf, longestBlock } from '@/lib/calendar/calendar';
import { MINUTES_NOISE } from '@/lib/calendar/minutes';
import type { CostFacts } from '@/lib/check/costFacts';
import { makeFinding } from '@/lib/findings/makeFinding';
import type { CheckedJob } from '@/lib/job/checkedJob';
import { piecesOfJob } from '@/lib/job/piecesOfJob';
import type { Finding, Fix } from '@/shared/finding';
import { thresholds } from '@/shared/tables/thresholds';
import { sessionsOf } from './sessions';
import { splitFix } from './splitFix';

/**
 * TIM-04: hours at the bench in one piece. A session ends with its free block at the latest; time allowed for rest is
 * a break.
 */
export function longRun(job: CheckedJob, facts: CostFacts): readonly Finding[] {
  const { benchMinutes } = facts;
  const calendar = calendarOf(job.workshop);
  const longest = calendar === null ? Number.POSITIVE_INFINITY : longestBlock(calendar);
  const hours = Math.min(benchMinutes / sessionsOf(job), longest) / 60;
  const { long, tooLong } = thresholds.run;
  const isTooLong = hours > tooLong.value + MINUTES_NOISE / 60;
  const hasBreaks = job.rates.restAllowance.value > 0;
  if (!isTooLong && (hours <= long.value + MINUTES_NOISE / 60 || hasBreaks)) return [];
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
