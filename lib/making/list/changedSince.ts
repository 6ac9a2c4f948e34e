import type { RunStandard } from '@/shared/schemas/making/runPapers';

/**
 * @param frozen what the run is held against; null where it has not begun
 * @param now what it would be by the documents of now; null while nobody knows
 * @returns names of jobs that are otherwise than when the run began
 */
export function changedSince(
  frozen: Pick<RunStandard, 'works'> | null,
  now: Pick<RunStandard, 'works'> | null,
): readonly string[] {
  if (frozen === null || now === null) return [];
  return frozen.works.flatMap((work) => {
    const same = now.works.find(({ jobId }) => jobId === work.jobId);
    return same === undefined || same.sha256 === work.sha256 ? [] : [work.name];
  });
}
