import type { RangeDesign } from '@/shared/schemas/stallDay';

/** A design as it is when it is added to a range. */
export const freshDesign = ({ jobId, lineId }: Pick<RangeDesign, 'jobId' | 'lineId'>): RangeDesign => ({
  ...{ jobId, lineId, name: '', share: 1, leftoverShare: null, isLeftOut: false },
});
