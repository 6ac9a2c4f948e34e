import { at } from './at';
import type { LaidBox } from './box';
import type { NamedPiece, PieceRequest } from './pieceRequest';
import { pieceTicks, placeMm, placeTicks } from './ticks';

/**
 * @param swapped true where x and y, width and height changed places for the search
 * @returns boxes as pieces on the paper, from the top down and from left to right
 */
export function nameBoxes(
  boxes: readonly LaidBox[],
  { pieces, gutterMm, marginMm }: PieceRequest,
  swapped = false,
): readonly NamedPiece[] {
  return boxes
    .map((box) => (swapped ? { ...box, x: box.y, y: box.x, width: box.height, height: box.width } : box))
    .sort((a, b) => a.y - b.y || a.x - b.x)
    .map(({ kind, x, y, width }) => {
      const piece = at(pieces, kind);
      const turned = width !== pieceTicks(piece.widthMm, gutterMm);
      return {
        id: piece.id,
        xMm: placeMm(x, marginMm),
        yMm: placeMm(y, marginMm),
        widthMm: turned ? piece.heightMm : piece.widthMm,
        heightMm: turned ? piece.widthMm : piece.heightMm,
        turned,
      };
    });
}

/** @returns pieces as the searches see them: what `nameBoxes` made pieces of. */
export function unnamedBoxes(
  placed: readonly NamedPiece[],
  { pieces, gutterMm, marginMm }: PieceRequest,
  swapped = false,
): readonly LaidBox[] {
  const kinds = new Map(pieces.map(({ id }, kind) => [id, kind]));
  return placed.flatMap(({ id, xMm, yMm, widthMm, heightMm }) => {
    const kind = kinds.get(id);
    if (kind === undefined) return [];
    const x = placeTicks(xMm, marginMm);
    const y = placeTicks(yMm, marginMm);
    const width = pieceTicks(widthMm, gutterMm);
    const height = pieceTicks(heightMm, gutterMm);
    return [swapped ? { kind, x: y, y: x, width: height, height: width } : { kind, x, y, width, height }];
  });
}
