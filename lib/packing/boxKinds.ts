import type { BoxKind } from './box';
import type { PieceRequest } from './pieceRequest';
import { pieceTicks } from './ticks';

/**
 * Pieces as the searches see them. Those that may turn lie on their long side to begin with, so that it makes no
 * difference which way up they were asked.
 *
 * @param swapped true where width and height change places for the search
 */
export const boxKinds = ({ pieces, gutterMm, rotate }: PieceRequest, swapped = false): readonly BoxKind[] =>
  pieces.map(({ widthMm, heightMm, count }) => {
    const width = pieceTicks(widthMm, gutterMm);
    const height = pieceTicks(heightMm, gutterMm);
    const swap = rotate ? width < height : swapped;
    return { width: swap ? height : width, height: swap ? width : height, count, mayTurn: rotate };
  });
