import type { PictureAnalysis } from '@/lib/artwork/analysePicture';
import type { InkProfile } from '@/lib/ink/inkProfile';
import type { PictureHeader, PixelSize } from '@/lib/picture/pictureHeader';
import type { PictureProblem } from '@/lib/picture/pictureProblem';
import type { PixelBox } from '@/lib/picture/pixelGrid';
import type { ProfileName } from '@/lib/picture/profile/knownColours';

/** What the page asks of the artwork worker. Each picture has a number; a new one ends the one before. */
export type PictureQuestion =
  | {
      readonly kind: 'read';
      readonly number: number;
      readonly file: Blob;
      /** Width of the print, for drawings of lines, which are turned into pixels at their final size. */
      readonly printWidthMm: number;
      /** The part that is printed where a picture is cropped to fill its place; null for all of it. */
      readonly crop: PixelBox | null;
    }
  /** A drawing the page has turned into pixels: workers cannot. */
  | { readonly kind: 'drawn'; readonly number: number; readonly bitmap: ImageBitmap }
  | { readonly kind: 'notDrawn'; readonly number: number; readonly why: string }
  | { readonly kind: 'cancel'; readonly number: number };

/** What is known of a picture once it is read. */
export interface PictureReading {
  readonly header: PictureHeader;
  /** Pixels measured, upright: those of the file, or of a drawing at its final size. */
  readonly size: PixelSize;
  readonly analysis: PictureAnalysis;
  readonly profile: InkProfile;
  /** What its colour numbers mean; null where it does not say. */
  readonly colours: ProfileName | null;
  /** Fonts that live text names and this device lacks. */
  readonly liveFonts: readonly string[];
}

/** The file that was read, as it is kept: bytes of its own, so that nothing becomes of it with the file on the disk. */
interface ReadFile {
  readonly sha256: string;
  readonly content: Blob;
}

export type PictureReply =
  | {
      readonly kind: 'progress';
      readonly number: number;
      readonly stage: 'reading' | 'decoding' | 'measuring';
      /** 0–1 of the whole way. */
      readonly share: number;
    }
  /** The page shall turn this drawing, found harmless, into pixels of this size. */
  | { readonly kind: 'draw'; readonly number: number; readonly svg: string; readonly size: PixelSize }
  | {
      readonly kind: 'read';
      readonly number: number;
      readonly reading: PictureReading;
      readonly file: ReadFile;
      /** The whole picture, small, with its clear parts; null where none was drawn. */
      readonly preview: ImageBitmap | null;
    }
  | { readonly kind: 'refused'; readonly number: number; readonly problem: PictureProblem }
  | { readonly kind: 'cancelled'; readonly number: number }
  /** A fault of ours, never of the file. */
  | { readonly kind: 'failed'; readonly number: number; readonly why: string };
