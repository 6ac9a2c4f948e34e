import type { RunJob, RunPlan } from '@/lib/making/runPlan';
import type { PaperNumber } from '@/shared/schemas/happened';
import type { Run } from '@/shared/schemas/making/run';
import type { RunStandard } from '@/shared/schemas/making/runPapers';
import { blanksOfRun } from './blanksOfRun';
import { standardWork } from './standardWork';
import { withMoreHeatings } from './withMoreHeatings';

interface StandardAsked {
  readonly runId: string;
  readonly run: Run;
  readonly jobs: readonly RunJob[];
  readonly plan: RunPlan;
  readonly number: PaperNumber;
  /** YYYY-MM-DD. */
  readonly issuedOn: string;
}

/**
 * What a run is held against, from the sums that price its jobs. Heatings-up that were accepted beyond those of the price
 * are in it; those that are saved since jobs are made together are not taken out, for the price holds them.
 */
export function standardOf({ runId, run, jobs, plan, number, issuedOn }: StandardAsked): RunStandard {
  const blanks = blanksOfRun(jobs, run.cover);
  const works = jobs.map((job) =>
    standardWork(
      job,
      blanks.filter(({ jobId }) => jobId === job.work.jobId),
    ),
  );
  return {
    number,
    issuedOn,
    runId,
    title: run.name,
    currency: jobs[0]?.costed.sheet.currency ?? '',
    cover: run.cover,
    works: plan.more === null ? works : withMoreHeatings(works, jobs, plan.more.heatings),
    sizes: [...plan.sizes],
    clock: [...plan.clock],
  };
}
