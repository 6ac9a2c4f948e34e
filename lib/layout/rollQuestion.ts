import type { ResolvedJob } from '@/lib/job/checkedJob';
import type { RollQuestion } from '@/lib/packing/roll/rollStrips';

/** @returns how a print lies on the roll of a job, as a question. */
export const rollQuestion = (
  { sheet, printer, workshop }: Pick<ResolvedJob, 'sheet' | 'printer' | 'workshop'>,
  print: { readonly widthMm: number; readonly heightMm: number },
): RollQuestion => ({
  rollWidthMm: sheet.widthMm,
  longestMm: sheet.heightMm,
  marginMm: printer.marginMm,
  gutterMm: workshop.policy.gutterMm,
  pieceWidthMm: print.widthMm,
  pieceHeightMm: print.heightMm,
});
