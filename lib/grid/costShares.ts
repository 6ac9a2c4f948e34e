import { type CostLineId, costLineIds } from './costLines';
import { type CostSheet, wholeJob } from './costSheet';

interface CostShare {
  readonly rowId: CostLineId;
  /** Share of the whole job's full cost, 0 to 1. */
  readonly share: number;
}

/**
 * Where the money of a job goes.
 *
 * @returns the cost lines by their share of full cost, the largest first; none where nothing costs anything
 */
export function costShares(sheet: CostSheet): readonly CostShare[] {
  if (!(sheet.fullCost > 0)) return [];
  return costLineIds
    .map((rowId) => ({ rowId, share: wholeJob(sheet, rowId) / sheet.fullCost }))
    .sort((a, b) => b.share - a.share);
}
