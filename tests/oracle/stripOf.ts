import type { Decimal } from 'decimal.js';
import type { JobInput } from '@/shared/schemas/request';
import { exact, known, ONE } from './exact';

/** ANSI letter, 8.5 × 11 in of 25.4 mm. */
const LETTER_MM2 = exact('8.5').times(11).times('25.4').times('25.4');

/** What the eye does not see is no reason to leave a print out. */
const FORGIVEN_MM = exact('0.01');

/** What stands for one sheet: how many prints are on it, and how many letter sheets its paper is. */
export interface StripPlan {
  readonly across: Decimal;
  readonly letters: Decimal;
}

/**
 * A print on the roll of a job, from its documents alone: strips of as many as go across, the way round that takes
 * less length a piece, each as long as its part of the longest print the printer makes.
 *
 * @returns null where the job's paper is cut sheets
 */
export function stripOf(
  { job, workshop }: JobInput,
  size: { readonly widthMm: number; readonly heightMm: number },
): StripPlan | null {
  const paper = known(
    workshop.sheets.find(({ id }) => id === job.sheetId),
    'sheet',
  );
  if (paper.form === 'cut') return null;
  const printer = known(
    workshop.printers.find(({ id }) => id === job.printerId),
    'printer',
  );
  const borders = exact(printer.marginMm).times(2);
  const gutter = exact(workshop.policy.gutterMm);
  const roomFor = (room: number, piece: Decimal) =>
    exact(room).plus(FORGIVEN_MM).minus(borders).plus(gutter).div(piece.plus(gutter)).floor();
  const way = (wide: Decimal, long: Decimal) => ({
    long,
    across: roomFor(paper.widthMm, wide),
    strips: roomFor(paper.heightMm, long),
  });
  const [width, height] = [exact(size.widthMm), exact(size.heightMm)];
  const [best] = [way(width, height), way(height, width)]
    .filter(({ across, strips }) => across.gt(0) && strips.gt(0))
    .sort((a, b) => perPiece(a, gutter).cmp(perPiece(b, gutter)));
  const { long, across, strips } = known(best, 'a roll that is wide enough');
  // Between strips lies a gutter, round a longest print a border, which its strips bear in equal parts.
  const print = strips.times(long).plus(strips.minus(1).times(gutter)).plus(borders);
  return { across, letters: print.div(strips).times(exact(paper.widthMm)).div(LETTER_MM2) };
}

/** @returns the length of a roll that has the area of a letter sheet, m. */
export const metresOfLetter = (widthMm: number): Decimal => LETTER_MM2.div(exact(widthMm)).div(1000);

/** Cut sheets count as they are. */
export const wholeSheet = (prints: number): StripPlan => ({ across: exact(prints), letters: ONE });

const perPiece = ({ long, across }: { readonly long: Decimal; readonly across: Decimal }, gutter: Decimal) =>
  long.plus(gutter).div(across);
