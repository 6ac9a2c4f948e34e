import { drawSvg } from '@/app/_artwork/drawSvg';
import type { PixelSize } from '@/lib/picture/pictureHeader';
import { readHeader } from '@/lib/picture/readHeader';
import { svgAtSize } from '@/lib/picture/svg/svgAtSize';
import { svgText } from '@/lib/picture/svg/svgText';

/** Longest side of a drawing on paper: 300 pixels an inch over the width of a page’s column. */
const MOST_PX = 1600;
/** Before its first sign a drawing has at most a mark of its encoding, spaces and comments. */
const BEGINS = /^\uFEFF?\s*</;

/**
 * A drawing as a PNG, which a page alone can make of it; every other picture as it is kept.
 *
 * @returns a drawing that cannot be read as it is: the paper leaves its place then, and says so
 */
export async function pictureForPaper(file: Blob): Promise<Blob> {
  const start = await file.slice(0, 200).text();
  if (!BEGINS.test(start)) return file;
  const bytes = new Uint8Array(await file.arrayBuffer());
  const header = readHeader(bytes);
  if (!header.ok || header.value.kind !== 'vector') return file;
  const size = fitted(header.value.size);
  try {
    const bitmap = await drawSvg(svgAtSize(svgText(bytes), header.value, size), size);
    const canvas = new OffscreenCanvas(size.width, size.height);
    canvas.getContext('2d')?.drawImage(bitmap, 0, 0);
    bitmap.close();
    return await canvas.convertToBlob({ type: 'image/png' });
  } catch {
    return file;
  }
}

function fitted({ width, height }: PixelSize): PixelSize {
  const scale = MOST_PX / Math.max(width, height);
  return { width: Math.max(1, Math.round(width * scale)), height: Math.max(1, Math.round(height * scale)) };
}
