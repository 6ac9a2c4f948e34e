import type { PictureFormat } from './pictureHeader';

/** Why a picture is not taken, with the facts a sentence about it needs. */
export type PictureProblem =
  | { readonly kind: 'empty' }
  | { readonly kind: 'tooManyBytes'; readonly bytes: number; readonly most: number }
  /** No format known here begins like this; the first bytes are given in hexadecimal. */
  | { readonly kind: 'notAPicture'; readonly bytes: number; readonly begins: string }
  /** A format that is known, but not read. */
  | { readonly kind: 'otherFormat'; readonly format: string }
  | { readonly kind: 'cutShort'; readonly format: PictureFormat; readonly bytes: number }
  | { readonly kind: 'damaged'; readonly format: PictureFormat; readonly part: string }
  | { readonly kind: 'tooLong'; readonly width: number; readonly height: number; readonly mostSidePx: number }
  | { readonly kind: 'tooManyPixels'; readonly width: number; readonly height: number; readonly most: number }
  | {
      readonly kind: 'tooSmall';
      readonly width: number;
      readonly height: number;
      readonly leastSidePx: number;
    }
  /** A JPEG of four inks. `adobe` carries the APP14 marker, whose writers store the inks inverted. */
  | { readonly kind: 'cmyk'; readonly marker: 'adobe' | 'none' }
  /** A JPEG whose way of packing browsers do not read. */
  | { readonly kind: 'oddCoding'; readonly coding: 'lossless' | 'arithmetic' | 'moreThan8Bits' }
  | { readonly kind: 'svgUnsafe'; readonly found: SvgDanger; readonly text: string }
  /** Drawing it would keep the page busy for longer than anybody waits. */
  | { readonly kind: 'svgTooMuch'; readonly load: SvgLoad }
  | { readonly kind: 'svgSize'; readonly state: 'none' | 'zero' | 'negative'; readonly given: string }
  | { readonly kind: 'cannotDecode'; readonly format: PictureFormat; readonly why: string }
  /** The decoder found another size than the file declares. */
  | {
      readonly kind: 'sizeDiffers';
      readonly declared: { readonly width: number; readonly height: number };
      readonly decoded: { readonly width: number; readonly height: number };
    };

export type SvgLoad =
  | {
      readonly what: 'elements' | 'shapes' | 'copies' | 'effects';
      readonly count: number;
      readonly most: number;
    }
  /** A part that holds itself, by its id or else its kind. */
  | { readonly what: 'loop'; readonly name: string };

export type SvgDanger = 'script' | 'handler' | 'embedded' | 'outside' | 'entity';
