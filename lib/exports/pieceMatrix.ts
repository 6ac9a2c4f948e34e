import { pdfNumber } from '@/lib/embedding/pdfFile';
import type { Matrix } from '@/lib/embedding/uprightMatrix';
import type { PlacedPiece } from '@/lib/packing/placedPiece';
import { POINTS_PER_MM } from '@/shared/units';
import type { PageBox } from './wasteStrip';

/** @returns what sets it on a page. */
export const matrixWords = (matrix: Matrix): string => `${matrix.map(pdfNumber).join(' ')} cm`;

/**
 * Maps the unit square of a picture, its first pixel at the top left, to where a piece lies on the paper. A piece
 * that is flipped is seen from behind; one that is turned lies a quarter to the right.
 *
 * @param pageHeightMm height of the paper
 */
export function pieceMatrix(piece: PlacedPiece, pageHeightMm: number, flipped: boolean): Matrix {
  const [width, , , height, left, bottom] = boxMatrix(piece, pageHeightMm);
  if (piece.turned) {
    return flipped ? [0, height, width, 0, left, bottom] : [0, -height, width, 0, left, bottom + height];
  }
  return flipped ? [-width, 0, 0, height, left + width, bottom] : [width, 0, 0, height, left, bottom];
}

/** Maps the unit square to a box on the page. */
export function boxMatrix({ xMm, yMm, widthMm, heightMm }: PageBox, pageHeightMm: number): Matrix {
  const bottom = (pageHeightMm - yMm - heightMm) * POINTS_PER_MM;
  return [widthMm * POINTS_PER_MM, 0, 0, heightMm * POINTS_PER_MM, xMm * POINTS_PER_MM, bottom];
}
