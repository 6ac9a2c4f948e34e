import type { PixelSize } from '@/lib/picture/pictureHeader';
import type { PixelBox } from '@/lib/picture/pixelGrid';
import { inchesFromMm } from '@/shared/units';

/** How a picture lies in the box of its print. */
export interface PlacedPicture {
  /** The pixels that are printed. */
  readonly crop: PixelBox;
  /** Size they are printed at. */
  readonly widthMm: number;
  readonly heightMm: number;
  /** Share of the box they cover, 0–1: the ink over the box is the picture's ink times this. */
  readonly boxShare: number;
  /** Pixels an inch: of the two ways the lesser. */
  readonly ppi: number;
}

/**
 * Puts a picture into the box of its print, in the middle: `inside` leaves bare strips, `fill` cuts the longer
 * way in whole pixels, `stretch` pulls it to the box, which the check of shapes stops.
 *
 * @param box width and height of the print, above 0
 */
export function placeInBox(
  { width, height }: PixelSize,
  box: { readonly widthMm: number; readonly heightMm: number },
  fit: 'inside' | 'fill' | 'stretch',
): PlacedPicture {
  const boxShape = box.widthMm / box.heightMm;
  const isWider = width / height > boxShape;
  const shown: PixelSize =
    fit !== 'fill'
      ? { width, height }
      : isWider
        ? { width: Math.max(1, Math.round(height * boxShape)), height }
        : { width, height: Math.max(1, Math.round(width / boxShape)) };
  const printed =
    fit !== 'inside'
      ? box
      : isWider
        ? { widthMm: box.widthMm, heightMm: (box.widthMm * height) / width }
        : { widthMm: (box.heightMm * width) / height, heightMm: box.heightMm };
  return {
    crop: {
      x: Math.floor((width - shown.width) / 2),
      y: Math.floor((height - shown.height) / 2),
      ...shown,
    },
    widthMm: printed.widthMm,
    heightMm: printed.heightMm,
    boxShare: (printed.widthMm * printed.heightMm) / (box.widthMm * box.heightMm),
    ppi: Math.min(shown.width / inchesFromMm(printed.widthMm), shown.height / inchesFromMm(printed.heightMm)),
  };
}
