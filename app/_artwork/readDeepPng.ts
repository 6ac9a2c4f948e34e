import { deepPng } from '@/lib/picture/deepPng';
import type { RasterHeader } from '@/lib/picture/pictureHeader';
import { pictureLimits } from '@/lib/picture/pictureLimits';
import type { PixelGrid } from '@/lib/picture/pixelGrid';
import { unpackDeepPng } from '@/lib/picture/unpackDeepPng';
import { inflate } from './inflate';

/** Four channels of two bytes. */
const MOST_PIXEL_BYTES = 8;
/** The number of a filter before each row; Adam7 has up to two rows for one. */
const ROW_BYTES = 2;

/**
 * Whether a picture is unpacked here, at 16 bits a channel. The browser's decoder does the rest in 8: pictures
 * with a colour profile, which it knows how to follow, and the few that are turned or very large.
 */
export const isReadDeep = ({ format, bitsPerChannel, colourTag, orientation, stored }: RasterHeader) =>
  format === 'png' &&
  bitsPerChannel === 16 &&
  colourTag !== 'profile' &&
  orientation === 1 &&
  stored.width * stored.height <= pictureLimits.mostDeepPixels;

/** @returns the pixels at full depth, or null where the packed data are broken. */
export async function readDeepPng(bytes: Uint8Array): Promise<PixelGrid | null> {
  const png = deepPng(bytes);
  const most = png.width * png.height * MOST_PIXEL_BYTES + png.height * ROW_BYTES + png.width;
  const data = await inflate(png.packed, most);
  return data === null ? null : unpackDeepPng(png, data);
}
