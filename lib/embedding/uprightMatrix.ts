import type { Orientation } from '@/lib/picture/pictureHeader';
import { turnMatrix } from '@/lib/picture/turnMatrix';

/** `[a b c d e f]` of a page, as the format writes it: x to the right, y up. */
export type Matrix = readonly [number, number, number, number, number, number];

/** Turns a stored picture upright within the unit square; a page counts from below, a picture from above. */
export function uprightMatrix(orientation: Orientation): Matrix {
  const [a, b, c, d, e, f] = turnMatrix(orientation, { width: 1, height: 1 });
  return [a, -b, -c, d, c + e, 1 - d - f];
}
