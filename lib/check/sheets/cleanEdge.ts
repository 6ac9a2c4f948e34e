import type { SizeMm } from '@/lib/job/tidyLength';
import type { Sheet } from '@/shared/schemas/workshop';
import { fits } from './sheetShare';

/**
 * Clean paper beside a print that lies alone in the middle, mm. A roll is cut as far behind a print as is wanted, so
 * only its width counts.
 *
 * @returns null where the print does not go on the paper this way round
 */
export function cleanEdge(sheet: Pick<Sheet, 'form' | 'widthMm' | 'heightMm'>, print: SizeMm): number | null {
  if (!fits(print, sheet)) return null;
  const across = (sheet.widthMm - print.widthMm) / 2;
  return sheet.form === 'roll' ? across : Math.min(across, (sheet.heightMm - print.heightMm) / 2);
}
