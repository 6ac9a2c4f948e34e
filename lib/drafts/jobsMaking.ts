import type { Job } from '@/shared/schemas/job';

/** One size of one blank. */
interface MadeSize {
  readonly blankId: string;
  readonly size: string;
}

/** @returns the jobs with pieces in a size, which its removal would stop. */
export const jobsMaking = (jobs: readonly Job[], { blankId, size }: MadeSize): readonly Job[] =>
  jobs.filter(({ lines }) =>
    lines.some(
      (line) =>
        line.blankId === blankId &&
        line.quantities.some((entry) => entry.size === size && entry.quantity > 0),
    ),
  );
