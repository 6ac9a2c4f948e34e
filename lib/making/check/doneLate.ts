import { makeFinding } from '@/lib/findings/makeFinding';
import type { RunJob, RunPlan } from '@/lib/making/runPlan';
import { daysBetween } from '@/shared/days';
import type { Finding } from '@/shared/finding';

/**
 * TIM-01: jobs of a run that is done after the day on which they are wanted. All of a run is packed together, so each is
 * held against the day on which the last of it is done.
 */
export const doneLate = (
  runId: string,
  jobs: readonly RunJob[],
  { lastDay }: Pick<RunPlan, 'lastDay'>,
): readonly Finding[] =>
  jobs.flatMap(({ input: { job } }): readonly Finding[] => {
    const days = job.wantedOn === null ? 0 : daysBetween(job.wantedOn, lastDay);
    if (job.wantedOn === null || days <= 0) return [];
    return [
      makeFinding({
        id: 'TIM-01',
        severity: 'caution',
        variant: 'runLate',
        where: { document: 'run', id: runId, path: ['works'] },
        facts: { job: job.name, days, wantedOn: job.wantedOn, doneOn: lastDay },
      }),
    ];
  });
