import { cutMarks, type PageBox, type WasteStrip, wasteStrip } from '@/lib/exports/wasteStrip';
import type { PlannedSheet } from '@/lib/layout/apartSheets';
import type { JobInput } from '@/shared/schemas/request';
import type { Sheet } from '@/shared/schemas/workshop';

/** What has room beside the art of a sheet. */
export interface Waste {
  readonly strip: WasteStrip | null;
  readonly marks: readonly PageBox[];
}

/** @returns of each kind of sheet where a line and marks of cuts have room; none where the printer is not known. */
export function wasteOf(
  { job, workshop }: JobInput,
  paper: Sheet,
  sheets: readonly PlannedSheet[],
): readonly Waste[] {
  const printer = workshop.printers.find(({ id }) => id === job.printerId);
  return sheets.map(({ pieces, lengthMm, cutsMm }) => {
    if (printer === undefined) return { strip: null, marks: [] };
    const heightMm = lengthMm ?? paper.heightMm;
    const page = { widthMm: paper.widthMm, heightMm, marginMm: printer.marginMm, pieces };
    const strip = wasteStrip(page);
    return { strip, marks: cutMarks(page, cutsMm, strip) };
  });
}
