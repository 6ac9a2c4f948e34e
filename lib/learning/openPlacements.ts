import type { Job, Line, Placement } from '@/shared/schemas/job';

/** Placements of jobs that are still to be priced or made: those done or put away keep what they were priced by. */
export const eachPlacement = (
  jobs: readonly { readonly id: string; readonly body: Job }[],
): readonly { readonly jobId: string; readonly line: Line; readonly placement: Placement }[] =>
  jobs
    .filter(({ body }) => body.state !== 'done' && body.archivedOn === null)
    .flatMap(({ id, body }) =>
      body.lines.flatMap((line) => line.placements.map((placement) => ({ jobId: id, line, placement }))),
    );
