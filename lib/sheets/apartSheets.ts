import type { LaidOutPrint } from './laidOutPrint';
import type { PlacedPiece } from './placedPiece';

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
}

/** @returns the sheets of prints that share none: full ones counted together, then the last with what is left. */
export const apartSheets = (prints: readonly LaidOutPrint[]): readonly PlannedSheet[] =>
  prints
    .filter(({ ganged }) => ganged === undefined)
    .flatMap((print) => {
      const full = Math.floor(print.pieces / print.perSheet);
      const pieces = print.placed.map((piece) => plannedPiece(print, piece));
      const rest = pieces.slice(0, print.pieces - full * print.perSheet);
      return [
        { count: full, pieces, spare: 0 },
        { count: rest.length === 0 ? 0 : 1, pieces: rest, spare: print.spare },
      ].filter(({ count }) => count > 0);
    });

/** @returns a piece of a layout with the print it is. */
export const plannedPiece = (
  { lineId, placementId, print }: LaidOutPrint,
  { xMm, yMm, widthMm, heightMm, turned }: PlacedPiece,
): PlannedPiece => ({ lineId, placementId, print, xMm, yMm, widthMm, heightMm, turned });
