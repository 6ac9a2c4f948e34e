import type { Line } from '@/shared/schemas/job';

/** @returns good pieces asked for over all sizes of some lines. */
export const wantedPieces = (lines: readonly Pick<Line, 'quantities'>[]): number =>
  lines.reduce(
    (sum, { quantities }) => quantities.reduce((running, { quantity }) => running + quantity, sum),
    0,
  );
