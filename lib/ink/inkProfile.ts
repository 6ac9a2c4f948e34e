import type { PixelGrid } from '@/lib/picture/pixelGrid';
import { INK_STRIPS } from '@/shared/schemas/picture';
import { type ChannelShares, totalShare } from './generateBlack';
import { measureInk } from './measureInk';

/** Where ink lies: mean of equal strips, as multiples of the mean of the whole. */
interface InkStrips {
  readonly across: readonly number[];
  readonly down: readonly number[];
}

/** Where the ink of a picture lies, all grey with black, and its grey alone. */
export interface InkProfile extends InkStrips {
  readonly grey: InkStrips;
}

/**
 * Strips of a picture from left to right and from top to bottom. A small copy of it does: ratios hardly move.
 */
export function inkProfile(grid: PixelGrid): InkProfile {
  const { width, height } = grid;
  const across = strips(width, (from, to) => part(grid, from, 0, to - from, height));
  const down = strips(height, (from, to) => part(grid, 0, from, width, to - from));
  return {
    across: multiples(across.map(totalShare)),
    down: multiples(down.map(totalShare)),
    grey: { across: multiples(across.map(greyOf)), down: multiples(down.map(greyOf)) },
  };
}

const greyOf = ({ black }: ChannelShares): number => black;

/** A strip narrower than a pixel takes the pixel it lies in. */
const strips = (side: number, cut: (from: number, to: number) => PixelGrid): readonly ChannelShares[] =>
  Array.from({ length: INK_STRIPS }, (_, strip) => {
    const from = Math.min(side - 1, Math.floor((strip * side) / INK_STRIPS));
    const to = Math.max(from + 1, Math.floor(((strip + 1) * side) / INK_STRIPS));
    return measureInk(cut(from, to)).coverage;
  });

function multiples(amounts: readonly number[]): readonly number[] {
  const mean = amounts.reduce((sum, amount) => sum + amount, 0) / INK_STRIPS;
  return amounts.map((amount) => (mean > 0 ? amount / mean : 1));
}

function part(
  { rgba, width: whole }: PixelGrid,
  x: number,
  y: number,
  width: number,
  height: number,
): PixelGrid {
  const cut = new Uint8Array(width * height * 4);
  for (let row = 0; row < height; row += 1) {
    const from = ((y + row) * whole + x) * 4;
    cut.set(rgba.subarray(from, from + width * 4), row * width * 4);
  }
  return { width, height, rgba: cut };
}
