import type { PixelGrid } from '@/lib/picture/pixelGrid';
import { encodeSrgb } from '@/lib/picture/srgb';
import type { PngLight } from './pngLight';

/** Steps of light told apart while encoding: finer than one of 16 bits near black, where sRGB is steepest. */
const STEPS = 1 << 18;

/** @returns the same pixels in sRGB; colours outside it are clipped. */
export function inSrgb({ width, height, rgba }: PixelGrid, { gamma, toSrgb }: PngLight): PixelGrid {
  const isDeep = rgba instanceof Uint16Array;
  const most = isDeep ? 65_535 : 255;
  const light = Float64Array.from({ length: most + 1 }, (_, value) => (value / most) ** (1 / gamma));
  const encoded = Float64Array.from({ length: STEPS + 1 }, (_, step) => encodeSrgb(step / STEPS) * most);
  const write = (value: number) =>
    Math.round(encoded[Math.round(Math.min(1, Math.max(0, value)) * STEPS)] ?? 0);
  const own = isDeep ? new Uint16Array(rgba.length) : new Uint8Array(rgba.length);
  const [[a = 0, b = 0, c = 0] = [], [d = 0, e = 0, f = 0] = [], [g = 0, h = 0, i = 0] = []] = toSrgb ?? [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ];
  for (let at = 0; at < rgba.length; at += 4) {
    const red = light[rgba[at] ?? 0] ?? 0;
    const green = light[rgba[at + 1] ?? 0] ?? 0;
    const blue = light[rgba[at + 2] ?? 0] ?? 0;
    own[at] = write(a * red + b * green + c * blue);
    own[at + 1] = write(d * red + e * green + f * blue);
    own[at + 2] = write(g * red + h * green + i * blue);
    own[at + 3] = rgba[at + 3] ?? 0;
  }
  return { width, height, rgba: own };
}
