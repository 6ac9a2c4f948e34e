import type { ShownPart } from '@/lib/artwork/shownPicture';
import type { PlacedPiece } from '@/lib/packing/placedPiece';

/** A piece on a sheet to print. */
export interface PieceToPrint extends PlacedPiece {
  /** Key of its picture; null where the artwork keeps no file, whose place stays empty. */
  readonly picture: string | null;
  /** True where the picture is to be flipped on the paper. */
  readonly flipped: boolean;
  readonly fit: 'inside' | 'fill' | 'stretch';
  /** The part of the picture that is printed, in shares of its sides; null for all of it. */
  readonly shown: ShownPart | null;
}

interface SheetToPrint {
  /** Pages that are alike. */
  readonly count: number;
  /** Height of the page: of the paper, or of what is cut off a roll. */
  readonly heightMm: number;
  readonly pieces: readonly PieceToPrint[];
}

/** Sheets as a file for the printer. Lengths in millimetres. */
export interface SheetsToPrint {
  readonly title: string;
  readonly widthMm: number;
  readonly sheets: readonly SheetToPrint[];
}
