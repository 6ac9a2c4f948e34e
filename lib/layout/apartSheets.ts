import type { PlacedPiece } from '@/lib/packing/placedPiece';
import type { LaidOutPrint } from './laidOutPrint';

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
  /** Where it is cut into strips across, mm from its start. */
  readonly cutsMm: readonly number[];
}

/** @returns the sheets of prints that share none: full ones counted together, then the last with what is left. */
export const apartSheets = (prints: readonly LaidOutPrint[]): readonly PlannedSheet[] =>
  prints
    .filter(({ ganged }) => ganged === undefined)
    .flatMap((print) => {
      // On a roll a print is as long as the printer makes it; on cut sheets it is the sheet.
      const places = print.roll === undefined ? print.perSheet : print.placed.length;
      const full = Math.floor(print.pieces / places);
      const pieces = print.placed.map((piece) => plannedPiece(print, piece));
      const rest = pieces.slice(0, print.pieces - full * places);
      return [
        {
          count: full,
          pieces,
          spare: 0,
          lengthMm: lengthOf(pieces, print.roll),
          cutsMm: cutsOf(pieces, print),
        },
        {
          count: rest.length === 0 ? 0 : 1,
          pieces: rest,
          spare: print.spare,
          lengthMm: lengthOf(rest, print.roll),
          cutsMm: cutsOf(rest, print),
        },
      ].filter(({ count }) => count > 0);
    });

/** @returns a piece of a layout with the print it is. */
export const plannedPiece = (
  { lineId, placementId, print }: LaidOutPrint,
  { xMm, yMm, widthMm, heightMm, turned }: PlacedPiece,
): PlannedPiece => ({ lineId, placementId, print, xMm, yMm, widthMm, heightMm, turned });

/** In the middle of the gutter behind each strip but the last. */
function cutsOf(pieces: readonly PlacedPiece[], { roll }: LaidOutPrint): readonly number[] {
  if (roll === undefined) return [];
  const ends = [...new Set(pieces.map(({ yMm, heightMm }) => yMm + heightMm))];
  return ends.slice(0, -1).map((end) => end + roll.gutterMm / 2);
}

/** @returns the length of roll that pieces take with the border behind the last, mm; null where there is no roll. */
export const lengthOf = (
  pieces: readonly PlacedPiece[],
  roll: { readonly marginMm: number } | undefined,
): number | null =>
  roll === undefined
    ? null
    : pieces.reduce((longest, { yMm, heightMm }) => Math.max(longest, yMm + heightMm), 0) + roll.marginMm;
