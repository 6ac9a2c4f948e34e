import type { LaidBox } from '@/lib/packing/box';
import { improveSheets } from './improveSheets';
import { OpenSheet } from './openSheet';
import type { SheetSearch, SheetsQuestion } from './sheetSearch';

/** Free places looked at in one go, about; some 7 ms. */
const SLICE_STEPS = 60_000;

/** Goes on taking sheets of the layout apart, in slices, until one sheet fewer is enough. */
export const goOnImproving: SheetSearch = function* ({ bin, best, least }, work, random) {
  let sheets: readonly OpenSheet[] = best.map((laid) => opened(laid, bin));
  while (work.steps > 0) {
    const steps = Math.min(SLICE_STEPS, work.steps);
    const slice = { steps };
    sheets = improveSheets(sheets, bin, least, slice, random);
    work.steps -= steps - slice.steps;
    if (sheets.length < best.length) return sheets.map(({ laid }) => laid);
    yield;
  }
  return null;
};

function opened(laid: readonly LaidBox[], { width, height }: SheetsQuestion['bin']): OpenSheet {
  const sheet = new OpenSheet(width, height);
  for (const box of laid) sheet.lay(box.kind, { ...box, score: 0, tie: 0 }, { steps: 0 });
  return sheet;
}
