import type { PixelGrid } from '@/lib/picture/pixelGrid';
import { INK_STRIPS } from '@/shared/schemas/picture';
import { inkMeter } from './inkMeter';

/** Where the ink of a picture lies: mean ink of equal strips, as multiples of the mean of the whole. */
export interface InkProfile {
  readonly across: readonly number[];
  readonly down: readonly number[];
}

/**
 * Strips of a picture from left to right and from top to bottom. A small copy of it does: ratios hardly move.
 */
export function inkProfile(grid: PixelGrid): InkProfile {
  const { width, height } = grid;
  return {
    across: strips(width, (from, to) => part(grid, from, 0, to - from, height)),
    down: strips(height, (from, to) => part(grid, 0, from, width, to - from)),
  };
}

/** A strip narrower than a pixel takes the pixel it lies in. */
function strips(side: number, cut: (from: number, to: number) => PixelGrid): readonly number[] {
  const totals = Array.from({ length: INK_STRIPS }, (_, strip) => {
    const from = Math.min(side - 1, Math.floor((strip * side) / INK_STRIPS));
    return totalInk(cut(from, Math.max(from + 1, Math.floor(((strip + 1) * side) / INK_STRIPS))));
  });
  const mean = totals.reduce((sum, total) => sum + total, 0) / INK_STRIPS;
  return totals.map((total) => (mean > 0 ? total / mean : 1));
}

function totalInk(grid: PixelGrid): number {
  const meter = inkMeter();
  meter.add(grid);
  const { cyan, magenta, yellow, black } = meter.read().coverage;
  return cyan + magenta + yellow + black;
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
