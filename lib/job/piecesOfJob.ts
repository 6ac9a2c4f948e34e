import type { CheckedJob } from './checkedJob';

/** @returns good pieces of a job. */
export const piecesOfJob = ({ lines }: Pick<CheckedJob, 'lines'>): number =>
  lines.flatMap(({ sizes }) => sizes).reduce((sum, { quantity }) => sum + quantity, 0);
