import type { Job, Line } from '@/shared/schemas/job';
import { freeName } from './freeName';

/**
 * A job with one of its lines twice: the copy stands behind the line, with everything of it but its name and ids.
 *
 * @param makeId gives a new id each time
 * @returns the same job where it has no such line
 */
export function withCopyOfLine(job: Job, lineId: string, makeId: () => string): Job {
  const at = job.lines.findIndex(({ id }) => id === lineId);
  const line = job.lines[at];
  if (line === undefined) return job;
  const copy: Line = {
    ...line,
    id: makeId(),
    name: freeName(
      line.name.replace(/ \d+$/, ''),
      job.lines.map(({ name }) => name),
    ),
    placements: line.placements.map((placement) => ({ ...placement, id: makeId() })),
  };
  return { ...job, lines: job.lines.toSpliced(at + 1, 0, copy) };
}
