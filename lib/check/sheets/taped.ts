import type { ResolvedJob } from '@/lib/job/checkedJob';
import type { SizeMm } from '@/lib/job/tidyLength';
import { tapeMarginMm } from '@/lib/layout/tapeMarginMm';
import { inset, turned } from './sheetShare';

/** @returns the factor, at most 1, that makes a print fit its sheet with room for tape, either way round. */
export function taped(job: ResolvedJob, print: SizeMm): number {
  const room = inset(job.sheet, Math.max(tapeMarginMm(job.workshop), job.printer.marginMm));
  const factor = (size: SizeMm) => Math.min(room.widthMm / size.widthMm, room.heightMm / size.heightMm, 1);
  return Math.max(0, factor(print), factor(turned(print)));
}
