import type { ShownPart } from '@/lib/artwork/shownPicture';
import type { PlacedPiece } from '@/lib/packing/placedPiece';
import type { PageBox, WasteStrip } from './wasteStrip';

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

/** What stands in the strip that is cut off, in words that are made already. */
export interface WasteLine {
  /** Shortened where there is no room. */
  readonly name: string;
  readonly words: readonly string[];
}

/** What is printed beside the art and never pressed. */
export interface SheetWaste {
  readonly strip: WasteStrip | null;
  /** One for each page that is alike. */
  readonly lines: readonly WasteLine[];
  /** Where a roll is cut. */
  readonly marks: readonly PageBox[];
}

interface SheetToPrint {
  /** Pages that are alike. */
  readonly count: number;
  /** Height of the page: of the paper, or of what is cut off a roll. */
  readonly heightMm: number;
  readonly pieces: readonly PieceToPrint[];
  /** Only where the maker asks for it. */
  readonly waste?: SheetWaste;
}

/** Sheets as a file for the printer. Lengths in millimetres. */
export interface SheetsToPrint {
  readonly title: string;
  readonly widthMm: number;
  readonly sheets: readonly SheetToPrint[];
}
