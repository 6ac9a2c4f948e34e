import type { JobInput } from '@/shared/schemas/request';

/** @returns the documents of an order of one line and nothing else, as a list sells it */
export function lineAlone(input: JobInput, lineId: string): JobInput {
  // Prepared for an earlier order is prepared, whichever print of the job says so.
  const said = input.job.lines.flatMap(({ placements }) => placements);
  const ready = new Set(said.filter(({ artReady }) => artReady).map(({ artworkId }) => artworkId));
  const lines = input.job.lines
    .filter(({ id }) => id === lineId)
    .map((line) => ({
      ...line,
      placements: line.placements.map((placement) =>
        ready.has(placement.artworkId) ? { ...placement, artReady: true as const } : placement,
      ),
    }));
  return { ...input, job: { ...input.job, lines } };
}
