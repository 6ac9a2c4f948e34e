import { placeInBox } from '@/lib/artwork/placeInBox';
import type { Matrix } from '@/lib/embedding/uprightMatrix';
import type { PixelSize } from '@/lib/picture/pictureHeader';
import type { PieceToPrint } from './sheetsToPrint';

/**
 * How a picture lies in the unit square of its piece, before that is turned or flipped.
 *
 * @param image its pixels once upright
 */
export function pieceInBox(image: PixelSize, piece: PieceToPrint): Matrix {
  const box = piece.turned
    ? { widthMm: piece.heightMm, heightMm: piece.widthMm }
    : { widthMm: piece.widthMm, heightMm: piece.heightMm };
  const part = piece.shown ?? { x: 0, y: 0, width: 1, height: 1 };
  const shown = { width: image.width * part.width, height: image.height * part.height };
  const { crop, widthMm, heightMm } = placeInBox(shown, box, piece.fit);
  // A whole picture takes the box; a cropped one sticks out of it on both sides and is clipped.
  const shownAcross = ((widthMm / box.widthMm) * shown.width) / crop.width;
  const shownUp = ((heightMm / box.heightMm) * shown.height) / crop.height;
  // Around the part that is shown the file goes on: clear edges, which print nothing.
  const across = shownAcross / part.width;
  const up = shownUp / part.height;
  const left = (1 - shownAcross) / 2 - part.x * across;
  const bottom = (1 - shownUp) / 2 - (1 - part.y - part.height) * up;
  return [across, 0, 0, up, left, bottom];
}
