import type { PixelGrid } from '@/lib/picture/pixelGrid';

export const PIXEL_SUM = 'a plain loop over the same pixels';

/** @returns the sum of all channels: every byte of the picture looked at once, and nothing more. */
export function pixelSum({ rgba }: PixelGrid): number {
  let sum = 0;
  for (let at = 0; at < rgba.length; at += 4) {
    sum += (rgba[at] ?? 0) + (rgba[at + 1] ?? 0) + (rgba[at + 2] ?? 0) + (rgba[at + 3] ?? 0);
  }
  return sum;
}
