import type { PixelSize } from '@/lib/picture/pictureHeader';
import { pictureLimits } from '@/lib/picture/pictureLimits';
import { inchesFromMm } from '@/shared/units';

/** Pixels an inch a drawing of lines is turned into: what printers ask of a picture at its final size. */
const VECTOR_PPI = 300;
/** More tell nothing new of ink, and take memory: a print of 24 × 30 in at 185 ppi. */
const MOST_PIXELS = 25_000_000;

/**
 * Size in pixels at which a drawing is rasterised for its print.
 *
 * @param shape width and height in any one unit, above 0
 * @param printWidthMm width of the print, above 0
 * @returns whole pixels within the bounds of pictures
 */
export function vectorPixels(shape: PixelSize, printWidthMm: number): PixelSize {
  const width = inchesFromMm(printWidthMm) * VECTOR_PPI;
  const height = (width * shape.height) / shape.width;
  const most = Math.min(
    1,
    pictureLimits.mostSidePx / Math.max(width, height),
    Math.sqrt(MOST_PIXELS / (width * height)),
  );
  const whole = (side: number) =>
    Math.min(pictureLimits.mostSidePx, Math.max(pictureLimits.leastSidePx, Math.round(side * most)));
  return { width: whole(width), height: whole(height) };
}
