import type { Orientation, RasterHeader } from '@/lib/picture/pictureHeader';
import type { PictureProblem } from '@/lib/picture/pictureProblem';
import { sourceOf } from '@/lib/picture/pictureSource';
import { withoutOrientation } from '@/lib/picture/withoutOrientation';
import { failed, ok, type Result } from '@/shared/result';
import { bitmapPicture } from './bitmapPicture';
import type { DecodedPicture, PictureDecoder } from './decodedPicture';
import { isReadDeep, readDeepPng } from './readDeepPng';

/** Unpacks by the browser's own decoders, which follow colour profiles into sRGB. */
export const browserDecoder: PictureDecoder = {
  decode,
  hold: (bitmap) => bitmapPicture(bitmap, 1),
};

async function decode(
  bytes: Uint8Array<ArrayBuffer>,
  header: RasterHeader,
): Promise<Result<DecodedPicture, PictureProblem>> {
  const { format, orientationPlace, orientation, stored } = header;
  const asStored = orientationPlace === null ? bytes : withoutOrientation(bytes, orientationPlace);
  let bitmap: ImageBitmap;
  try {
    bitmap = await createImageBitmap(new Blob([asStored], { type: `image/${format}` }));
  } catch (error) {
    return failed({ kind: 'cannotDecode', format, why: error instanceof Error ? error.message : '' });
  }
  if (bitmap.width !== stored.width || bitmap.height !== stored.height) {
    const decoded = { width: bitmap.width, height: bitmap.height };
    bitmap.close();
    return failed({ kind: 'sizeDiffers', declared: stored, decoded });
  }
  return heldAtDepth(bytes, header, bitmap, orientation);
}

async function heldAtDepth(
  bytes: Uint8Array,
  header: RasterHeader,
  bitmap: ImageBitmap,
  orientation: Orientation,
): Promise<Result<DecodedPicture, PictureProblem>> {
  if (!isReadDeep(header)) return ok(bitmapPicture(bitmap, orientation));
  const grid = await readDeepPng(bytes);
  if (grid !== null) return ok(bitmapPicture(bitmap, orientation, sourceOf(grid)));
  bitmap.close();
  return failed({ kind: 'damaged', format: header.format, part: 'IDAT' });
}
