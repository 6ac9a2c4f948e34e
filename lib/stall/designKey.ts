import type { StallGoods } from '@/shared/schemas/stallDay';

/** @returns one text for a design, a line of a job, by which it is told from all others; ids hold no slash. */
export const designKey = ({ jobId, lineId }: Pick<StallGoods, 'jobId' | 'lineId'>): string =>
  `${jobId}/${lineId}`;
