import sharp from 'sharp';
import type { RasterHeader } from '@/lib/picture/pictureHeader';
import { pictureLimits } from '@/lib/picture/pictureLimits';
import type { PictureProblem } from '@/lib/picture/pictureProblem';
import { type PictureSource, sourceOf } from '@/lib/picture/pictureSource';
import { pngFacts } from '@/lib/picture/pngSums';
import { inSrgb } from '@/lib/picture/profile/inSrgb';
import { pngLight } from '@/lib/picture/profile/pngLight';
import { failed, ok, type Result } from '@/shared/result';

/** Longer than any picture within the bounds takes. */
const MOST_SECONDS = 30;

/**
 * Unpacks a picture outside the browser, as stored: how it is turned changes none of its ink. Colour profiles
 * and the gamma of a PNG are followed into sRGB; 16 bits a channel are kept. Of several frames the first is used.
 */
export async function sharpSource(
  bytes: Uint8Array,
  {
    format,
    bitsPerChannel,
    stored,
  }: Pick<RasterHeader, 'bitsPerChannel' | 'stored'> & {
    readonly format: RasterHeader['format'] | 'svg';
  },
): Promise<Result<PictureSource, PictureProblem>> {
  const isDeep = bitsPerChannel === 16;
  try {
    const { data, info } = await sharp(bytes, {
      limitInputPixels: pictureLimits.mostPixels,
      pages: 1,
      failOn: 'truncated',
    })
      .timeout({ seconds: MOST_SECONDS })
      .toColourspace(isDeep ? 'rgb16' : 'srgb')
      .ensureAlpha()
      .raw({ depth: isDeep ? 'ushort' : 'uchar' })
      .toBuffer({ resolveWithObject: true });
    const { width, height, channels } = info;
    if (width !== stored.width || height !== stored.height) {
      return failed({ kind: 'sizeDiffers', declared: stored, decoded: { width, height } });
    }
    if (channels !== 4) throw new Error(`${channels} channels came out`);
    // A pooled buffer may begin at an odd byte, where no 16-bit number may.
    const own = new Uint8Array(data);
    const rgba = isDeep ? new Uint16Array(own.buffer) : own;
    const light = format === 'png' ? pngLight(pngFacts(bytes).data) : null;
    const grid = { width, height, rgba };
    return ok(sourceOf(light === null ? grid : inSrgb(grid, light)));
  } catch (error) {
    return failed({ kind: 'cannotDecode', format, why: error instanceof Error ? error.message : '' });
  }
}
