import type { PieceKind, PieceRequest } from './pieceRequest';
import { binTicks, pieceTicks } from './ticks';

/** A piece that no layout can hold. */
interface TooLargePiece {
  readonly id: string;
  readonly widthMm: number;
  readonly heightMm: number;
  /** The largest piece of the same shape that fits, the way up it was asked; millimetres. */
  readonly largestWidthMm: number;
  readonly largestHeightMm: number;
}

/** Why nothing is laid out. */
export type FitProblem =
  | { readonly kind: 'noRoom' }
  | { readonly kind: 'tooLarge'; readonly pieces: readonly TooLargePiece[] };

/** Paper between the margins; a roll has no end. */
interface Paper {
  readonly widthMm: number;
  readonly heightMm: number;
}

/**
 * Finds what cannot be laid out at all.
 *
 * @param paper sides of the sheet, millimetres; height Infinity for a roll
 * @returns null where every piece fits by itself
 */
export function fitProblem(paper: Paper, request: PieceRequest): FitProblem | null {
  const width = paper.widthMm - 2 * request.marginMm;
  const height = paper.heightMm - 2 * request.marginMm;
  if (width <= 0 || height <= 0) return { kind: 'noRoom' };
  const pieces = request.pieces.flatMap((piece) => tooLarge(piece, width, height, request.rotate));
  return pieces.length > 0 ? { kind: 'tooLarge', pieces } : null;
}

function tooLarge(
  { id, widthMm, heightMm }: PieceKind,
  width: number,
  height: number,
  rotate: boolean,
): readonly TooLargePiece[] {
  const upright = scaleToFit(widthMm, heightMm, width, height);
  const turned = rotate ? scaleToFit(heightMm, widthMm, width, height) : 0;
  const scale = Math.max(upright, turned);
  if (scale >= 1) return [];
  return [
    {
      id,
      widthMm,
      heightMm,
      largestWidthMm: roundedDown(widthMm * scale),
      largestHeightMm: roundedDown(heightMm * scale),
    },
  ];
}

/** @returns 1 or more where the piece fits, the tolerance forgiven. */
function scaleToFit(pieceWidth: number, pieceHeight: number, width: number, height: number): number {
  const fits =
    pieceTicks(pieceWidth, 0) <= binTicks(width, 0, 0) &&
    pieceTicks(pieceHeight, 0) <= binTicks(height, 0, 0);
  return fits ? 1 : Math.min(width / pieceWidth, height / pieceHeight);
}

/** To a hundredth of a millimetre, never above what fits. */
const roundedDown = (lengthMm: number): number => Math.floor(lengthMm * 100 + 1e-6) / 100;
