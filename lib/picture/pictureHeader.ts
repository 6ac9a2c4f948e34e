export type PictureFormat = 'png' | 'jpeg' | 'webp' | 'gif' | 'svg';

/** How a stored picture is turned to stand upright, as in EXIF: 1 not at all, 6 a quarter to the right. */
export type Orientation = 1 | 2 | 3 | 4 | 5 | 6 | 7 | 8;

export interface PixelSize {
  readonly width: number;
  readonly height: number;
}

/** Pixels an inch the file asks for, along the upright picture. */
export type Density =
  | { readonly kind: 'unknown' }
  | {
      readonly kind: 'declared';
      readonly xPpi: number;
      readonly yPpi: number;
      readonly from: 'pHYs' | 'JFIF' | 'EXIF';
    };

/** Whether the file says what its colour numbers mean. */
export type ColourTag = 'sRGB' | 'profile' | 'untagged';

/** What the first bytes of a picture of pixels tell. */
export interface RasterHeader {
  readonly kind: 'raster';
  readonly format: Exclude<PictureFormat, 'svg'>;
  /** Size as stored. */
  readonly stored: PixelSize;
  /** Size once upright: a quarter turn swaps the sides. */
  readonly size: PixelSize;
  readonly orientation: Orientation;
  /** Where the file holds the orientation, for taking it out; null where it has none. */
  readonly orientationPlace: BytePlace | null;
  readonly density: Density;
  /** Of a PNG with a palette, the bits that choose one of its colours. */
  readonly bitsPerChannel: 1 | 2 | 4 | 8 | 16;
  /** False where no pixel can be see-through. */
  readonly mayBeClear: boolean;
  readonly colourTag: ColourTag;
  /** Several frames: the first is used. */
  readonly isAnimated: boolean;
}

/** What an SVG tells of itself. */
export interface VectorHeader {
  readonly kind: 'vector';
  readonly format: 'svg';
  /** Its own size in CSS pixels of 1/96 in, or the size of its viewBox: only the shape is to be relied on. */
  readonly size: PixelSize;
  readonly hasViewBox: boolean;
}

export type PictureHeader = RasterHeader | VectorHeader;

/** A run of bytes of a file. */
export interface BytePlace {
  readonly at: number;
  readonly length: number;
  /** `value` holds the orientation in two bytes; `chunk` is the whole PNG chunk around it. */
  readonly holds: 'valueBigEnd' | 'valueLittleEnd' | 'chunk';
}

export const unknownDensity: Density = { kind: 'unknown' };

/** @returns the size of a stored picture once upright. */
export const uprightSize = ({ width, height }: PixelSize, orientation: Orientation): PixelSize =>
  orientation >= 5 ? { width: height, height: width } : { width, height };

/** @returns a density along the stored picture, told along the upright one. */
export const uprightDensity = (density: Density, orientation: Orientation): Density =>
  density.kind === 'declared' && orientation >= 5
    ? { ...density, xPpi: density.yPpi, yPpi: density.xPpi }
    : density;
