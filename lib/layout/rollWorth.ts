import { sheetSizes } from '@/shared/tables/sheetSizes';

const { letter } = sheetSizes;

/**
 * What is known of printing is known by the sheet: minutes, wear, the price of paper. A roll is counted in lengths that
 * have the area of a letter sheet, so that all of it holds for rolls too.
 *
 * @param rollWidthMm above 0
 * @returns the length of roll that counts as one sheet, mm
 */
export const rollWorthMm = (rollWidthMm: number): number => (letter.widthMm * letter.heightMm) / rollWidthMm;
