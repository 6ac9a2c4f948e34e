import type { PixelGrid } from '@/lib/picture/pixelGrid';
import { decodeSrgb, encodeSrgb } from '@/lib/picture/srgb';
import type { Rgb } from './clothRgb';

/** Steps of the way back from light to numbers: fine enough that no dark tone shifts. */
const STEPS = 16_384;

/**
 * The picture as it looks on a coloured cloth: ink is see-through, so the light of print and cloth multiply.
 * White and clear parts show the cloth; nothing comes out lighter than it.
 *
 * @param grid 8 bits a channel
 * @param cloth encoded sRGB, 0–255
 * @returns solid pixels of the same size
 */
export function previewOnCloth(grid: PixelGrid, cloth: Rgb): PixelGrid {
  // By channel, and by what it is on white: three times 256 values instead of a power for each step of the way back.
  const seenOf = cloth.map((value) => seenOnGround(decodeSrgb(value / 255)));
  const { rgba } = grid;
  const shown = new Uint8Array(rgba.length);
  for (let channel = 0; channel < 3; channel += 1) {
    const seen = seenOf[channel] ?? nothing;
    for (let at = 0; at < rgba.length; at += 4) {
      const value = rgba[at + channel] ?? 0;
      const alpha = rgba[at + 3] ?? 0;
      const onWhite = alpha === 255 ? value : Math.round((value * alpha + 255 * (255 - alpha)) / 255);
      shown[at + channel] = seen[onWhite] ?? 0;
    }
  }
  for (let at = 3; at < shown.length; at += 4) shown[at] = 255;
  return { width: grid.width, height: grid.height, rgba: shown };
}

// Helpers

const nothing = new Uint8Array(256);

/** What each value on white is seen as on a ground of so much light. */
const seenOnGround = (ground: number): Uint8Array =>
  Uint8Array.from({ length: 256 }, (_, onWhite) => {
    const step = Math.round(decodeSrgb(onWhite / 255) * ground * STEPS);
    return Math.round(255 * encodeSrgb(step / STEPS));
  });
