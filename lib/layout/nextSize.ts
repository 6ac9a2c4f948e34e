import type { ResolvedJob } from '@/lib/job/checkedJob';
import { type SizeMm, scaledSize } from '@/lib/job/tidyLength';
import { piecesPerSheet } from '@/lib/packing/equal/piecesPerSheet';
import { sizeSweetSpots } from '@/lib/packing/equal/sizeSweetSpots';
import { sheetQuestion } from './sheetQuestion';

/**
 * The largest size of the same shape at which a sheet carries more, as a maker would type it.
 *
 * @returns null where a small change gains nothing
 */
export function nextSize(
  job: Pick<ResolvedJob, 'sheet' | 'printer' | 'workshop'>,
  print: SizeMm,
): { readonly to: SizeMm; readonly perSheetNow: number; readonly perSheet: number } | null {
  // A roll is cut anywhere: there is no sheet on which one more would go.
  if (job.sheet.form === 'roll') return null;
  const question = sheetQuestion(job, print);
  const perSheetNow = piecesPerSheet(question).count;
  if (perSheetNow === 0) return null;
  const spot = sizeSweetSpots(question).find(({ scale, count }) => scale < 1 && count > perSheetNow);
  if (spot === undefined) return null;
  const to = scaledSize(print, spot.scale, job.workshop.units.length);
  const perSheet = piecesPerSheet(sheetQuestion(job, to)).count;
  return perSheet > perSheetNow ? { to, perSheetNow, perSheet } : null;
}
