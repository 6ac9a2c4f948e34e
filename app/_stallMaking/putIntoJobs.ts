import { newId } from '@/app/_documents/newId';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { DocumentBodies } from '@/lib/kinds/kinds';
import type { MakingJob } from '@/lib/stall/making/makingJobs';
import type { Edit } from '@/lib/stored/prepareEdit';
import type { Job } from '@/shared/schemas/job';
import type { StallDay } from '@/shared/schemas/stallDay';

/** Writes what is to be pressed into its jobs, and makes those that are still to be made: one step to undo. */
export function putIntoJobs(
  { edit }: Pick<ReadyWorkspace, 'edit'>,
  stallDayId: string,
  stallDay: StallDay,
  jobs: readonly MakingJob[],
): void {
  const added = jobs.flatMap(({ jobId, designId, job }) =>
    jobId === null ? [{ id: newId(), of: designId, job }] : [],
  );
  const edits: readonly Edit<DocumentBodies>[] = [
    ...jobs.flatMap(({ jobId, isSet, job: { lines } }): readonly Edit<DocumentBodies>[] =>
      jobId === null || isSet
        ? []
        : [{ do: 'change', kind: 'job', id: jobId, to: (now: Job): Job => ({ ...now, lines }) }],
    ),
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
