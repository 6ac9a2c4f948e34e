import { type CostSheet, caseValue } from './costSheet';
import type { FigureRef } from './traceFigure';

/** Ink of one print, and where the sheet has it. */
interface InkOfPrint {
  readonly ref: FigureRef;
  readonly mL: number;
  /** Currency units, unrounded. */
  readonly money: number;
}

/**
 * @param slot place of the placement in press order, from 1
 * @returns null where the sheet has no such print
 */
export function inkOfPrint(sheet: CostSheet, lineId: string, size: string, slot: number): InkOfPrint | null {
  const index = sheet.cases.findIndex((one) => one.lineId === lineId && one.size === size);
  const rowId = `inkPerPrint_${slot}`;
  if (index < 0 || sheet.values[rowId] === undefined) return null;
  const mL = caseValue(sheet, rowId, index);
  return { ref: { rowId, case: index }, mL, money: mL * (sheet.jobValues.inkPrice ?? 0) };
}
