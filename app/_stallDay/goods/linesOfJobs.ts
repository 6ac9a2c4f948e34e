import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { designKey } from '@/lib/stall/designKey';
import type { StallRange } from '@/shared/schemas/stallDay';

/** A line that may be brought, with the names of both. */
interface LineOfJob {
  readonly jobId: string;
  readonly lineId: string;
  readonly job: string;
  readonly line: string;
}

/** @returns every line of a job made to stock, of the jobs changed last first, that no range names yet */
export const linesLeft = (
  { jobs }: Pick<ReadyWorkspace, 'jobs'>,
  ranges: readonly StallRange[],
): readonly LineOfJob[] => linesOf(jobs, 'stock', ranges);

/** @returns the same of jobs made for an order that no order names: one of those is somebody's, and stays as it is */
export function linesForOrder(
  { jobs, orders }: Pick<ReadyWorkspace, 'jobs' | 'orders'>,
  ranges: readonly StallRange[],
): readonly LineOfJob[] {
  const ordered = new Set(orders.flatMap(({ order }) => order.jobIds));
  return linesOf(
    jobs.filter(({ id }) => !ordered.has(id)),
    'order',
    ranges,
  );
}

/** @returns what a design is called; null where its job or line is not here */
export const lineNameOf = (
  { jobs }: Pick<ReadyWorkspace, 'jobs'>,
  jobId: string,
  lineId: string,
): string | null =>
  jobs.find(({ id }) => id === jobId)?.job.lines.find(({ id }) => id === lineId)?.name ?? null;

/** @returns the sizes that the blanks of a range have, in their order */
export const sizesOfRange = (
  { designs }: StallRange,
  { jobs, blanks }: Pick<ReadyWorkspace, 'jobs' | 'blanks'>,
): readonly string[] => [
  ...new Set(
    designs.flatMap(({ jobId, lineId }) => {
      const line = jobs.find(({ id }) => id === jobId)?.job.lines.find(({ id }) => id === lineId);
      return blanks[line?.blankId ?? '']?.sizes.map(({ name }) => name) ?? [];
    }),
  ),
];

// Helpers

function linesOf(
  jobs: ReadyWorkspace['jobs'],
  madeFor: 'order' | 'stock',
  ranges: readonly StallRange[],
): readonly LineOfJob[] {
  const named = new Set(ranges.flatMap(({ designs }) => designs.map(designKey)));
  return jobs
    .filter(({ job }) => job.archivedOn === null && job.madeFor === madeFor)
    .flatMap(({ id, job }) =>
      job.lines.map((line) => ({ jobId: id, lineId: line.id, job: job.name, line: line.name })),
    )
    .filter((line) => !named.has(designKey(line)));
}
