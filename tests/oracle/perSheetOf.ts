import type { CostedJob } from '@/lib/grid/costJob';
import type { PrintsPerSheet } from './planOf';

/** Counts of prints on a sheet as the job was laid out; the counts themselves have proofs of their own. */
export const perSheetOf =
  ({ laidOut }: CostedJob): PrintsPerSheet =>
  (lineId, placementId, print) =>
    laidOut.prints.find(
      (one) => one.lineId === lineId && one.placementId === placementId && one.print === print,
    )?.perSheet ?? Number.NaN;
