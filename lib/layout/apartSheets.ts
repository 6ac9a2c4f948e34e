import type { PlacedPiece } from '@/lib/packing/placedPiece';
import { centred, middleOf } from './centred';
import type { LaidOutPrint } from './laidOutPrint';
import { stripCuts } from './stripCuts';

/** A piece where it lies, and which print of the job it is. */
export interface PlannedPiece extends PlacedPiece {
  readonly lineId: string;
  readonly placementId: string;
  /** Place of the print size in the placement's list. */
  readonly print: number;
}

/** Sheets that are laid alike. */
export interface PlannedSheet {
  readonly count: number;
  readonly pieces: readonly PlannedPiece[];
  /** Places that a full sheet of this kind has and these leave free. */
  readonly spare: number;
  /** Of a roll, what is cut off for it, mm; null for cut sheets. */
  readonly lengthMm: number | null;
  /** Of a roll, where it is cut straight across without meeting a piece, mm from its start. */
  readonly cutsMm: readonly number[];
}

/**
 * @returns the sheets of prints that share none: full ones counted together, then the last with what is left. That
 *   one lies as the full ones do, since a stack is cut at the same lines; by itself it lies in the middle.
 */
export const apartSheets = (prints: readonly LaidOutPrint[]): readonly PlannedSheet[] =>
  prints
    .filter(({ ganged }) => ganged === undefined)
    .flatMap((print) => {
      const { roll, placed } = print;
      // On a roll a print is as long as the printer makes it; on cut sheets it is the sheet.
      const places = roll === undefined ? print.perSheet : placed.length;
      const full = Math.floor(print.pieces / places);
      const left = placed.slice(0, print.pieces - full * places);
      const middle = middleOf(placed);
      const rest = full > 0 ? left : centred(left, roll === undefined ? middle : { ...middle, yMm: null });
      const sheetOf = (count: number, pieces: readonly PlacedPiece[], spare: number): PlannedSheet => ({
        count,
        pieces: pieces.map((piece) => plannedPiece(print, piece)),
        spare,
        lengthMm: lengthOf(pieces, roll),
        cutsMm: roll === undefined ? [] : stripCuts(pieces, roll.gutterMm),
      });
      return [sheetOf(full, placed, 0), sheetOf(rest.length === 0 ? 0 : 1, rest, print.spare)].filter(
        ({ count }) => count > 0,
      );
    });

/** @returns a piece of a layout with the print it is. */
export const plannedPiece = (
  { lineId, placementId, print }: LaidOutPrint,
  { xMm, yMm, widthMm, heightMm, turned }: PlacedPiece,
): PlannedPiece => ({ lineId, placementId, print, xMm, yMm, widthMm, heightMm, turned });

/** @returns the length of roll that pieces take with the border behind the last, mm; null where there is no roll. */
export const lengthOf = (
  pieces: readonly PlacedPiece[],
  roll: { readonly marginMm: number } | undefined,
): number | null =>
  roll === undefined
    ? null
    : pieces.reduce((longest, { yMm, heightMm }) => Math.max(longest, yMm + heightMm), 0) + roll.marginMm;
