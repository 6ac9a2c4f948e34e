import type { ResolvedJob } from '@/lib/job/checkedJob';
import type { SheetQuestion } from '@/lib/packing/equal/piecesPerSheet';

/** @returns how many of a print go on the sheet of a job, as a question. */
export const sheetQuestion = (
  { sheet, printer, workshop }: Pick<ResolvedJob, 'sheet' | 'printer' | 'workshop'>,
  print: { readonly widthMm: number; readonly heightMm: number },
): SheetQuestion => ({
  sheetWidthMm: sheet.widthMm,
  sheetHeightMm: sheet.heightMm,
  marginMm: printer.marginMm,
  gutterMm: workshop.policy.gutterMm,
  pieceWidthMm: print.widthMm,
  pieceHeightMm: print.heightMm,
});
