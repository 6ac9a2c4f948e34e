import { inspectPicture } from '@/lib/picture/inspectPicture';
import { svgAtSize } from '@/lib/picture/svg/svgAtSize';
import { svgText } from '@/lib/picture/svg/svgText';
import type { StoredFile } from '@/lib/stored/storedFile';
import type { Picture } from '@/shared/schemas/picture';
import { drawSvg } from './drawSvg';

/** Longest side of a preview, on a dense screen. */
const MOST_PX = 800;

/**
 * A kept picture, small, for a preview. The file was read and found harmless when it was taken in; it is looked
 * at again all the same, since a copy brought back may hold another.
 *
 * @returns null where it can no longer be drawn
 */
export async function loadBitmap(file: StoredFile, picture: Picture): Promise<ImageBitmap | null> {
  const bytes = new Uint8Array(file.content);
  const header = inspectPicture(bytes);
  if (!header.ok) return null;
  const scale = Math.min(1, MOST_PX / Math.max(picture.width, picture.height));
  const size = {
    width: Math.max(1, Math.round(picture.width * scale)),
    height: Math.max(1, Math.round(picture.height * scale)),
  };
  try {
    if (header.value.kind === 'vector') {
      return await drawSvg(svgAtSize(svgText(bytes), header.value, size), size);
    }
    const blob = new Blob([bytes], { type: `image/${header.value.format}` });
    return await createImageBitmap(blob, {
      imageOrientation: 'from-image',
      resizeWidth: size.width,
      resizeHeight: size.height,
      resizeQuality: 'high',
    });
  } catch {
    return null;
  }
}
