import type { ShownPart } from '@/lib/artwork/shownPicture';
import type { PlacedPiece } from '@/lib/packing/placedPiece';

/** A picture's file as it is embedded, its pixels upright. */
export interface PictureFile {
  readonly kind: 'png' | 'jpeg';
  readonly bytes: Uint8Array;
}

/** A piece on a sheet to print. */
export interface PieceToPrint extends PlacedPiece {
  /** What the label and an empty box say. */
  readonly name: string;
  /** Key of its picture; null where the artwork keeps no file, which prints as a named box. */
  readonly picture: string | null;
  /** True where the picture is to be flipped on the paper. */
  readonly flipped: boolean;
  readonly fit: 'inside' | 'fill' | 'stretch';
  /** The part of the picture that is printed, in shares of its sides; null for all of it. */
  readonly shown: ShownPart | null;
}

interface SheetToPrint {
  /** Height of the page: of the paper, or of what is cut off a roll. */
  readonly heightMm: number;
  readonly pieces: readonly PieceToPrint[];
}

/** Sheets as a file for the printer. Lengths in millimetres. */
export interface SheetsToPrint {
  readonly title: string;
  readonly widthMm: number;
  /** Border the printer cannot reach: no label is put there. */
  readonly marginMm: number;
  /** One page each. */
  readonly sheets: readonly SheetToPrint[];
  readonly pictures: ReadonlyMap<string, PictureFile>;
}

export interface PrintedSheets {
  readonly bytes: Uint8Array;
  /** Letters of names that the labels' type does not have; such names are left off, never altered. */
  readonly notDrawn: readonly string[];
}
