import type { ResolvedJob } from '@/lib/check/checkedJob';
import type { SizeMm } from '@/lib/check/tidyLength';
import { piecesPerSheet } from '@/lib/sheets/piecesPerSheet';

/**
 * How many of a print the job's sheet carries; without borders where it goes no other way and the printer can.
 *
 * @returns 0 where not one fits
 */
export function sheetCount({ sheet, printer, workshop }: ResolvedJob, size: SizeMm): number {
  const question = {
    sheetWidthMm: sheet.widthMm,
    sheetHeightMm: sheet.heightMm,
    marginMm: printer.marginMm,
    gutterMm: workshop.policy.gutterMm,
    pieceWidthMm: size.widthMm,
    pieceHeightMm: size.heightMm,
  };
  const { count } = piecesPerSheet(question);
  return count === 0 && printer.borderless ? piecesPerSheet({ ...question, marginMm: 0 }).count : count;
}
