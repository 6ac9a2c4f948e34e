import { packSheets } from '@/lib/packing/sheet/packSheets';
import type { PlannedPiece, PlannedSheet } from './apartSheets';
import type { LaidOutJob, LaidOutPrint } from './layOutJob';
import { sheetQuestion } from './sheetQuestion';
import { sheetsOf } from './sheetsOf';

/** Every sheet of the good pieces, nothing spoiled. */
export interface SheetsPlan {
  /** In the order they are printed, those shared by several prints first. */
  readonly sheets: readonly PlannedSheet[];
  readonly count: number;
  /** No layout of these prints, each by itself or together as asked, needs fewer sheets. */
  readonly lowerBound: number;
  /**
   * Where sheets are cut straight through, again and again, no layout needs fewer; null where nobody worked it out or it
   * says nothing that the bound of all layouts does not.
   */
  readonly guillotineBound: number | null;
  /** Share of all their paper that no print covers. */
  readonly wasteShare: number;
  /** Of a roll, what is cut off for all of them and the least any layout takes, mm; null for cut sheets. */
  readonly roll: { readonly lengthMm: number; readonly leastMm: number } | null;
}

/** @returns the sheets of a job, equal ones counted together. */
export function plannedSheets(laidOut: LaidOutJob): SheetsPlan {
  const { prints, shared, job } = laidOut;
  const { sheet } = job;
  const isRoll = sheet.form === 'roll';
  const sheets = sheetsOf(laidOut);
  const count = sheets.reduce((sum, one) => sum + one.count, 0);
  const printed = sheets.reduce((sum, one) => sum + one.count * areaOf(one.pieces), 0);
  const lengthMm = sheets.reduce((sum, one) => sum + one.count * (one.lengthMm ?? sheet.heightMm), 0);
  const apart = prints
    .filter(({ ganged }) => ganged === undefined)
    .reduce((sum, print) => sum + boundOf(laidOut, print), 0);
  const lowerBound = isRoll ? count : apart + (shared?.lowerBound ?? 0);
  const guillotineBound = apart + (shared?.guillotineBound ?? 0);
  return {
    sheets,
    count,
    lowerBound,
    guillotineBound: !isRoll && guillotineBound > lowerBound ? guillotineBound : null,
    wasteShare: count === 0 ? 0 : 1 - printed / (lengthMm * sheet.widthMm),
    roll: isRoll ? { lengthMm, leastMm: Math.min(lengthMm, printed / sheet.widthMm) } : null,
  };
}

/** What a print by itself needs at least; without borders where it goes no other way. */
function boundOf({ job }: LaidOutJob, { widthMm, heightMm, pieces, sheets }: LaidOutPrint): number {
  const { sheetWidthMm, sheetHeightMm, gutterMm, marginMm } = sheetQuestion(job, { widthMm, heightMm });
  const request = {
    sheetWidthMm,
    sheetHeightMm,
    gutterMm,
    rotate: true,
    pieces: [{ id: 'print', widthMm, heightMm, count: pieces }],
  };
  const bordered = packSheets({ ...request, marginMm });
  const packed = bordered.ok || !job.printer.borderless ? bordered : packSheets({ ...request, marginMm: 0 });
  return packed.ok ? packed.value.lowerBound : sheets;
}

const areaOf = (pieces: readonly PlannedPiece[]): number =>
  pieces.reduce((sum, { widthMm, heightMm }) => sum + widthMm * heightMm, 0);
