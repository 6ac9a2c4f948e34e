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
  const light = Float64Array.from({ length: 256 }, (_, value) => decodeSrgb(value / 255));
  const encoded = Uint8Array.from({ length: STEPS + 1 }, (_, step) =>
    Math.round(255 * encodeSrgb(step / STEPS)),
  );
  const ground = cloth.map((value) => decodeSrgb(value / 255) * STEPS);
  const { rgba } = grid;
  const shown = new Uint8Array(rgba.length);
  for (let at = 0; at < rgba.length; at += 4) {
    const alpha = rgba[at + 3] ?? 0;
    for (let channel = 0; channel < 3; channel += 1) {
      const onWhite = Math.round(((rgba[at + channel] ?? 0) * alpha + 255 * (255 - alpha)) / 255);
      const seen = (light[onWhite] ?? 0) * (ground[channel] ?? 0);
      shown[at + channel] = encoded[Math.round(seen)] ?? 0;
    }
    shown[at + 3] = 255;
  }
  return { width: grid.width, height: grid.height, rgba: shown };
}
