import type { ShownPart } from '@/lib/artwork/shownPicture';
import type { PlacedPiece } from '@/lib/packing/placedPiece';

/** A picture's file as it is embedded, its pixels upright. */
export interface PictureFile {
  readonly kind: 'png' | 'jpeg';
  readonly bytes: Uint8Array;
}

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
  /** Height of the page: of the paper, or of what is cut off a roll. */
  readonly heightMm: number;
  readonly pieces: readonly PieceToPrint[];
}

/** Sheets as a file for the printer. Lengths in millimetres. */
export interface SheetsToPrint {
  readonly title: string;
  readonly widthMm: number;
  /** One page each. */
  readonly sheets: readonly SheetToPrint[];
  readonly pictures: ReadonlyMap<string, PictureFile>;
}
