import { type Orientation, type PixelSize, uprightSize } from './pictureHeader';

/** Numbers a to f of a drawing context's `setTransform`. */
type TurnMatrix = readonly [number, number, number, number, number, number];

/** First row and column of the stored picture in the upright one: Exif 2.32, tag 0112. */
const TURNS: Readonly<Record<Orientation, readonly [number, number, number, number]>> = {
  1: [1, 0, 0, 1],
  2: [-1, 0, 0, 1],
  3: [-1, 0, 0, -1],
  4: [1, 0, 0, -1],
  5: [0, 1, 1, 0],
  6: [0, 1, -1, 0],
  7: [0, -1, -1, 0],
  8: [0, -1, 1, 0],
};

/** @returns the matrix that draws a stored picture upright with its corner at 0, 0. */
export function turnMatrix(orientation: Orientation, stored: PixelSize): TurnMatrix {
  const [a, b, c, d] = TURNS[orientation];
  const { width, height } = uprightSize(stored, orientation);
  // Where an axis of the stored picture runs against an upright one, it begins at the far side.
  const e = a + c < 0 ? width : 0;
  const f = b + d < 0 ? height : 0;
  return [a, b, c, d, e, f];
}
