import type { Orientation } from '@/lib/picture/pictureHeader';
import { uprightSize } from '@/lib/picture/pictureHeader';
import type { PictureSource } from '@/lib/picture/pictureSource';
import { turnMatrix } from '@/lib/picture/turnMatrix';
import type { DecodedPicture, Thumbnail } from './decodedPicture';

/** Longest side of a preview: as wide as the widest column that shows one, on a dense screen. */
const THUMBNAIL_PX = 1_000;

/**
 * A bitmap read through a small drawing surface, a strip at a time, and turned upright on the way.
 *
 * @param source where the pixels are measured, if not in the bitmap
 */
export function bitmapPicture(
  bitmap: ImageBitmap,
  orientation: Orientation,
  source: PictureSource = bitmapSource(bitmap, orientation),
): DecodedPicture {
  return {
    source,
    thumbnail: () => thumbnailOf(bitmap, orientation),
    close: () => bitmap.close(),
  };
}

function bitmapSource(bitmap: ImageBitmap, orientation: Orientation): PictureSource {
  const size = uprightSize(bitmap, orientation);
  const matrix = turnMatrix(orientation, bitmap);
  let surface = new OffscreenCanvas(1, 1);
  return {
    ...size,
    read({ x, y, width, height }) {
      if (surface.width !== width || surface.height !== height) surface = new OffscreenCanvas(width, height);
      const context = contextOf(surface);
      context.setTransform(1, 0, 0, 1, 0, 0);
      context.clearRect(0, 0, width, height);
      context.imageSmoothingEnabled = false;
      const [a, b, c, d, e, f] = matrix;
      context.setTransform(a, b, c, d, e - x, f - y);
      context.drawImage(bitmap, 0, 0);
      return { width, height, rgba: context.getImageData(0, 0, width, height).data };
    },
  };
}

function thumbnailOf(bitmap: ImageBitmap, orientation: Orientation): Thumbnail {
  const size = uprightSize(bitmap, orientation);
  const scale = Math.min(1, THUMBNAIL_PX / Math.max(size.width, size.height));
  const width = Math.max(1, Math.round(size.width * scale));
  const height = Math.max(1, Math.round(size.height * scale));
  const surface = new OffscreenCanvas(width, height);
  const context = contextOf(surface);
  const [a, b, c, d, e, f] = turnMatrix(orientation, bitmap);
  context.imageSmoothingQuality = 'high';
  context.setTransform(width / size.width, 0, 0, height / size.height, 0, 0);
  context.transform(a, b, c, d, e, f);
  context.drawImage(bitmap, 0, 0);
  const { data } = context.getImageData(0, 0, width, height);
  return { pixels: { width, height, rgba: data }, bitmap: surface.transferToImageBitmap() };
}

function contextOf(surface: OffscreenCanvas): OffscreenCanvasRenderingContext2D {
  const context = surface.getContext('2d', { willReadFrequently: true, colorSpace: 'srgb' });
  if (context === null) throw new Error('this browser gives a worker no drawing surface');
  return context;
}
