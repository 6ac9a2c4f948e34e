import { makeFinding } from '@/lib/findings/makeFinding';
import type { RunJob, RunPlan } from '@/lib/making/runPlan';
import { frozenPlan } from '@/lib/making/standard/frozenPlan';
import { daysBetween } from '@/shared/days';
import type { Finding } from '@/shared/finding';
import type { Job } from '@/shared/schemas/job';
import type { RunStandard } from '@/shared/schemas/making/runPapers';

interface WantedJob {
  readonly input: { readonly job: Pick<Job, 'name' | 'wantedOn'> };
}

/**
 * TIM-01: jobs of a run that is done after the day on which they are wanted. All of a run is packed together, so each is
 * held against the day on which the last of it is done.
 */
export const doneLate = (
  runId: string,
  jobs: readonly WantedJob[],
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

/** TIM-01 of a run that has begun: by the clock that was frozen, and the day on which each job is wanted now. */
export const begunLate = (standard: RunStandard, jobs: readonly RunJob[]): readonly Finding[] =>
  doneLate(
    standard.runId,
    standard.works.flatMap(({ jobId, name }): readonly WantedJob[] => {
      const now = jobs.find(({ work }) => work.jobId === jobId);
      return now === undefined ? [] : [{ input: { job: { name, wantedOn: now.input.job.wantedOn } } }];
    }),
    frozenPlan(standard),
  );
