import { newId } from '@/app/_documents/newId';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { DocumentBodies } from '@/lib/kinds/kinds';
import type { MakingJob } from '@/lib/stall/making/makingJobs';
import { withNumbers } from '@/lib/stall/making/withNumbers';
import type { Edit } from '@/lib/stored/prepareEdit';
import type { Job } from '@/shared/schemas/job';
import type { StallDay } from '@/shared/schemas/stallDay';

/** Writes what is to be pressed into its jobs, and makes those that are still to be made: one step to undo. */
export function putIntoJobs(
  { edit, jobs: known }: Pick<ReadyWorkspace, 'edit' | 'jobs'>,
  stallDayId: string,
  stallDay: StallDay,
  jobs: readonly MakingJob[],
): void {
  const added = jobs.flatMap(({ jobId, designId, job }) =>
    jobId === null ? [{ id: newId(), of: designId, job }] : [],
  );
  const edits: readonly Edit<DocumentBodies>[] = [
    ...jobs.flatMap(({ jobId, isSet, job }): readonly Edit<DocumentBodies>[] => {
      if (jobId === null || isSet) return [];
      const before = known.find(({ id }) => id === jobId)?.job ?? job;
      return [{ do: 'change', kind: 'job', id: jobId, to: (now: Job): Job => withNumbers(now, before, job) }];
    }),
    ...added.map(({ id, job }): Edit<DocumentBodies> => ({ do: 'add', kind: 'job', id, body: job })),
    ...(added.length === 0
      ? []
      : [
          {
            ...({ do: 'change', kind: 'stallDay', id: stallDayId } as const),
            to: (now: StallDay): StallDay => ({
              ...now,
              made: [...now.made, ...added.map(({ id, of }) => ({ jobId: id, of }))],
            }),
          },
        ]),
  ];
  edit(`Numbers of ${stallDay.name}`, edits);
}
