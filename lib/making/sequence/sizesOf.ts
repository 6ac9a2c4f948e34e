import type { RunJob } from '@/lib/making/runPlan';
import { blanksOfJob } from '@/lib/making/standard/blanksOfJob';
import type { Run } from '@/shared/schemas/making/run';
import { sizeOrder } from './sizeOrder';
import type { PressTurn, SizeTurn } from './turns';

/** @returns the sizes of a run in the order in which they are pressed */
export const sizesOf = (
  jobs: readonly RunJob[],
  turns: readonly PressTurn[],
  run: Pick<Run, 'sizesFirst' | 'cover'>,
): readonly SizeTurn[] =>
  sizeOrder(
    jobs.flatMap((job) =>
      blanksOfJob(job, run.cover).map(({ lineId, size, wanted, take }) => ({
        jobId: job.work.jobId,
        ...{ lineId, size, wanted },
        spare: take - wanted,
      })),
    ),
    turns,
    run.sizesFirst,
  );
