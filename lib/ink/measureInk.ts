import type { PixelGrid } from '@/lib/picture/pixelGrid';
import type { Halftone } from './dotArea';
import { type InkReading, inkMeter } from './inkMeter';

/**
 * Ink of a picture that is in memory, in one go.
 *
 * @example measureInk({ width: 2, height: 1, rgba: new Uint8Array([0, 255, 255, 255, 0, 0, 0, 0]) })
 *   // half cyan, half see-through: coverage.cyan 0.5
 */
export function measureInk(grid: PixelGrid, model?: Halftone): InkReading {
  const meter = inkMeter(model);
  meter.add(grid);
  return meter.read();
}
