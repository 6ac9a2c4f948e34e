import type { PixelGrid } from './pixelGrid';

/** The same pixels with eight bits a channel, rounded, for judgements that need no more. */
export function inEightBits({ width, height, rgba }: PixelGrid): PixelGrid {
  if (!(rgba instanceof Uint16Array)) return { width, height, rgba };
  const small = new Uint8Array(rgba.length);
  // 65,535 is 257 × 255.
  for (let at = 0; at < rgba.length; at += 1) small[at] = ((rgba[at] ?? 0) + 128) / 257;
  return { width, height, rgba: small };
}
