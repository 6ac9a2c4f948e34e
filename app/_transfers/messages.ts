import type { ColourNote } from '@/lib/embedding/embeddedPicture';
import type { SheetsToPrint } from '@/lib/exports/sheetsToPrint';
import type { PixelSize } from '@/lib/picture/pictureHeader';

/** What the page tells the worker that writes transfers. A worker writes one file in its life. */
export type TransferQuestion =
  | { readonly kind: 'write'; readonly job: SheetsToPrint }
  /** The file of a picture that was asked for; null where it is no longer kept. */
  | { readonly kind: 'file'; readonly file: Blob | null }
  /** Rows of a drawing that were asked for: workers cannot draw them. */
  | { readonly kind: 'rows'; readonly bitmap: ImageBitmap }
  | { readonly kind: 'notDrawn' };

export interface WrittenTransfers {
  readonly file: Blob;
  /** Keys of pictures that could not be read: their places are empty. */
  readonly lost: readonly string[];
  readonly notes: ReadonlyMap<string, ColourNote>;
}

export type TransferReply =
  /** 0–1 of the whole way. */
  | { readonly kind: 'progress'; readonly share: number }
  | { readonly kind: 'fileWanted'; readonly key: string }
  /** Rows of a drawing, found harmless, which is this many pixels large; null for more of the same. */
  | {
      readonly kind: 'rowsWanted';
      readonly svg: string | null;
      readonly size: PixelSize;
      readonly y: number;
      readonly height: number;
    }
  | ({ readonly kind: 'written' } & WrittenTransfers)
  /** A fault of ours or of the device, never of a picture. */
  | { readonly kind: 'failed'; readonly why: string };
