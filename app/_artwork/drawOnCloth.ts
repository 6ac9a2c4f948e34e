import type { Rgb } from '@/lib/artwork/clothRgb';
import type { PictureInPrint } from '@/lib/artwork/placementOfPicture';
import { previewOnCloth } from '@/lib/artwork/previewOnCloth';
import { shownPart } from '@/lib/artwork/shownPicture';
import type { Picture } from '@/shared/schemas/picture';

/**
 * Draws a picture on the cloth as its print shows it: cropped, or with bare cloth beside it.
 *
 * @param canvas of the shape of the print's box
 */
export function drawOnCloth(
  canvas: HTMLCanvasElement,
  bitmap: ImageBitmap,
  picture: Picture,
  placed: PictureInPrint,
  cloth: Rgb,
): void {
  const context = canvas.getContext('2d', { willReadFrequently: true });
  if (context === null) return;
  const { width, height } = canvas;
  const perMm = width / (placed.widthMm + placed.bareMm.across);
  const [drawnWidth, drawnHeight] = [placed.widthMm * perMm, placed.heightMm * perMm];
  const [scaleX, scaleY] = [bitmap.width / picture.width, bitmap.height / picture.height];
  // What is placed is the part that prints, which may begin inside the file.
  const first = shownPart(picture) === null || picture.content === null ? { x: 0, y: 0 } : picture.content;
  context.clearRect(0, 0, width, height);
  context.imageSmoothingQuality = 'high';
  context.drawImage(
    bitmap,
    (first.x + placed.crop.x) * scaleX,
    (first.y + placed.crop.y) * scaleY,
    placed.crop.width * scaleX,
    placed.crop.height * scaleY,
    (width - drawnWidth) / 2,
    (height - drawnHeight) / 2,
    drawnWidth,
    drawnHeight,
  );
  const { rgba } = previewOnCloth(
    { width, height, rgba: context.getImageData(0, 0, width, height).data },
    cloth,
  );
  context.putImageData(new ImageData(new Uint8ClampedArray(rgba), width, height), 0, 0);
}
