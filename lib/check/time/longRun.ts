import type { CostFacts } from '@/lib/check/costFacts';
import { makeFinding } from '@/lib/findings/makeFinding';
import type { CheckedJob } from '@/lib/job/checkedJob';
import type { Finding, Fix } from '@/shared/finding';
import { thresholds } from '@/shared/tables/thresholds';
import { HOURS_NOISE } from './benchCalendar';
import { piecesOf, sessionsOf } from './sessions';

/**
 * TIM-04: hours at the bench in one piece. A session ends with the free hours of its day at the latest; time allowed
 * for rest is a break.
 */
export function longRun(job: CheckedJob, { benchMinutes }: CostFacts): readonly Finding[] {
  const { freeHours } = job.workshop;
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
      fix: splitFix(job, benchMinutes),
    }),
  ];
}

/** Fewest sessions of which none is long, each with its own set-up and clean-down. */
function splitFix(job: CheckedJob, benchMinutes: number): Fix | null {
  const around = job.rates.setUpMinutes.value + job.rates.cleanDownMinutes.value;
  const work = benchMinutes - sessionsOf(job) * around;
  const room = thresholds.run.long.value * 60 - around;
  const total = piecesOf(job);
  if (room <= 0 || work <= 0) return null;
  const pieces = Math.floor((total * room) / work);
  if (pieces < 1 || pieces >= total) return null;
  return {
    label: 'splitSessions',
    facts: { pieces },
    changes: [{ document: 'job', path: ['piecesPerSession'], value: pieces }],
  };
}
