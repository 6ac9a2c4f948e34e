import type { Orientation, PixelSize } from '@/lib/picture/pictureHeader';

/** What the numbers of a picture mean, as a PDF says it (ISO 32000-1, section 8.6). */
export type Colours =
  /** Grey or sRGB as the device takes them: nothing else is known of them. */
  | { readonly kind: 'device'; readonly channels: 1 | 3 }
  /** A colour profile, packed as a zlib stream or not. */
  | {
      readonly kind: 'profile';
      readonly channels: 1 | 3;
      readonly profile: Uint8Array;
      readonly isPacked: boolean;
    }
  /** An exponent, and for colours the white and the primaries it goes with, in CIE XYZ. */
  | {
      readonly kind: 'calibrated';
      readonly channels: 1 | 3;
      readonly gamma: number;
      readonly white: readonly number[];
      readonly matrix: readonly number[];
    }
  | { readonly kind: 'palette'; readonly base: Colours; readonly entries: Uint8Array };

/** How the data of a picture are packed: a JPEG as it is, or rows filtered as in a PNG within a zlib stream. */
type Packing =
  | { readonly kind: 'jpeg'; readonly isPlainRgb: boolean }
  | { readonly kind: 'rows'; readonly channels: number; readonly bits: number };

/** What is to be said of a picture's colours. */
export type ColourNote =
  /** Its profile is of another colour space, or cannot be read: it is taken as sRGB. */
  | 'otherSpace'
  | 'unreadable'
  /** The browser turned its colours into sRGB. */
  | 'converted';

/** Thrown where a file holds no picture after all; its sentence begins small. */
export class DamagedPicture extends Error {}

/** Unpacks and packs zlib streams by what the platform has. */
export interface Zip {
  /** @throws DamagedPicture where the stream is broken */
  readonly inflate: (pieces: readonly Uint8Array[]) => AsyncIterable<Uint8Array>;
  readonly deflater: (take: TakeBytes) => Deflater;
}

export interface Deflater {
  /** Resolves when more may come. */
  readonly write: (bytes: Uint8Array<ArrayBuffer>) => Promise<void>;
  readonly end: () => Promise<void>;
}

export type TakeBytes = (bytes: Uint8Array) => void;

/** How see-through a picture is, packed rows of one channel. */
export interface PackedMask {
  readonly bits: number;
  readonly data: readonly Uint8Array[];
}

/** A picture as a PDF holds it. */
export interface EmbeddedPicture {
  readonly stored: PixelSize;
  /** How it is turned to stand upright: by the page, never by packing it anew. */
  readonly orientation: Orientation;
  readonly bits: number;
  readonly colours: Colours;
  readonly packing: Packing;
  /** From and to of each channel of the one colour that is clear; null where none is. */
  readonly clearColour: readonly number[] | null;
  readonly hasMask: boolean;
  readonly note: ColourNote | null;
  /**
   * Gives its data, and at the end the mask where it has one. Throws DamagedPicture.
   *
   * @param goOn hears the share that is done, 0–1
   */
  readonly write: (take: TakeBytes, goOn: (share: number) => void) => Promise<PackedMask | null>;
}
