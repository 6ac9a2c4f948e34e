import type { PlacedPiece } from '@/lib/packing/placedPiece';

/** The middle of some paper; a null way is left as it is, as along a roll. */
interface Middle {
  readonly xMm: number;
  readonly yMm: number | null;
}

/** Pieces this near to the middle lie in it: what is left is the dust of binary fractions. */
const DUST_MM = 1e-8;

/**
 * Lays pieces in the middle of their paper, as they lie to each other: what the printer does not reach is as wide on
 * both sides, so they stay within its reach, and all the clear paper there is lies around them.
 */
export function centred<Piece extends PlacedPiece>(
  pieces: readonly Piece[],
  { xMm, yMm }: Middle,
): readonly Piece[] {
  if (pieces.length === 0) return pieces;
  const now = middleOf(pieces);
  const [right, down] = [xMm - now.xMm, yMm === null ? 0 : yMm - now.yMm];
  if (Math.abs(right) < DUST_MM && Math.abs(down) < DUST_MM) return pieces;
  return pieces.map((piece) => ({ ...piece, xMm: tidy(piece.xMm + right), yMm: tidy(piece.yMm + down) }));
}

/** @returns the middle of the box around one piece or more. */
export function middleOf(pieces: readonly PlacedPiece[]): { readonly xMm: number; readonly yMm: number } {
  let [left, top, right, bottom] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, 0, 0];
  for (const { xMm, yMm, widthMm, heightMm } of pieces) {
    left = Math.min(left, xMm);
    top = Math.min(top, yMm);
    right = Math.max(right, xMm + widthMm);
    bottom = Math.max(bottom, yMm + heightMm);
  }
  return { xMm: (left + right) / 2, yMm: (top + bottom) / 2 };
}

/** Equal places stay equal to the last digit: a stack of sheets is cut at one line. */
const tidy = (lengthMm: number): number => Number(lengthMm.toFixed(9));
