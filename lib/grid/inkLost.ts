import { type CostSheet, wholeJob } from './costSheet';

/**
 * Ink of the whole job that never lands in a print: cleaning, and what is lost while printing.
 *
 * @returns mL, of the ink expected to be used
 */
export function inkLost(sheet: CostSheet): number {
  const loss = sheet.jobValues.inkLoss ?? 0;
  const printed = wholeJob(sheet, 'inkRun') + wholeJob(sheet, 'inkTests');
  return wholeJob(sheet, 'inkSession') + (printed * loss) / (1 + loss);
}
