import type { PixelSize } from '@/lib/picture/pictureHeader';
import { readHeader } from '@/lib/picture/readHeader';
import { svgAtSize } from '@/lib/picture/svg/svgAtSize';
import { svgText } from '@/lib/picture/svg/svgText';
import { bytesOfFile } from '@/lib/stored/storedFile';

/** A kept picture that is to be shown small. */
export interface PreviewQuestion {
  readonly file: Blob;
  /** Its size as it was read. */
  readonly size: PixelSize;
}

export type PreviewAnswer =
  | { readonly kind: 'shown'; readonly bitmap: ImageBitmap }
  /** A drawing, found harmless, with the size to draw it at: only a page can. */
  | { readonly kind: 'draw'; readonly svg: string; readonly size: PixelSize }
  /** It can no longer be drawn. */
  | { readonly kind: 'none' };

/** Longest side of a preview, on a dense screen. */
const MOST_PX = 800;

/**
 * The file was read and found harmless when it was taken in; it is looked at again all the same, since a copy brought
 * back may hold another.
 */
export async function previewOf({ file, size }: PreviewQuestion): Promise<PreviewAnswer> {
  const bytes = await bytesOfFile({ content: file });
  if (bytes === null) return { kind: 'none' };
  const header = readHeader(bytes);
  if (!header.ok) return { kind: 'none' };
  const scale = Math.min(1, MOST_PX / Math.max(size.width, size.height));
  const width = Math.max(1, Math.round(size.width * scale));
  const height = Math.max(1, Math.round(size.height * scale));
  if (header.value.kind === 'vector') {
    return {
      kind: 'draw',
      svg: svgAtSize(svgText(bytes), header.value, { width, height }),
      size: { width, height },
    };
  }
  try {
    const blob = file.slice(0, file.size, `image/${header.value.format}`);
    const bitmap = await createImageBitmap(blob, {
      imageOrientation: 'from-image',
      resizeWidth: width,
      resizeHeight: height,
      resizeQuality: 'high',
    });
    return { kind: 'shown', bitmap };
  } catch {
    return { kind: 'none' };
  }
}
