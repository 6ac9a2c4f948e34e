import type { CostFacts } from '@/lib/check/costFacts';
import type { CheckedJob } from '@/lib/job/checkedJob';
import { piecesOfJob } from '@/lib/job/piecesOfJob';
import type { Finding, Fix } from '@/shared/finding';
import { orderBlanksBy } from './orderBlanksBy';
import { sessionsOf } from './sessions';
import { workLoad } from './workLoad';

/**
 * The button that splits a job into sessions of so many pieces, each with a set-up and clean-down of its own.
 *
 * @returns null where it splits nothing, or where those minutes make a stop of the wanted day
 */
export function splitFix(job: CheckedJob, facts: CostFacts, pieces: number): Fix | null {
  const total = piecesOfJob(job);
  if (pieces < 1 || pieces >= total) return null;
  const { setUpMinutes, cleanDownMinutes } = job.rates;
  const more = Math.ceil(total / pieces) - sessionsOf(job);
  const minutes = more * (setUpMinutes.value + cleanDownMinutes.value) * (1 + job.rates.restAllowance.value);
  const after = {
    ...facts,
    attendedMinutes: facts.attendedMinutes + minutes,
    benchMinutes: facts.benchMinutes + minutes,
    work: {
      ...facts.work,
      press: facts.work.press && { ...facts.work.press, sessions: sessionsOf(job) + more },
    },
  };
  if (isLate(job, after) && !isLate(job, facts)) return null;
  return {
    label: 'splitSessions',
    facts: { pieces },
    changes: [{ document: 'job', path: ['piecesPerSession'], value: pieces }],
  };
}

const isLate = (job: CheckedJob, facts: CostFacts): boolean =>
  [...workLoad(job, facts), ...orderBlanksBy(job, facts)].some(
    ({ severity }: Finding) => severity === 'stop',
  );
