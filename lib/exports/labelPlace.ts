import type { PlacedPiece } from '@/lib/packing/placedPiece';

/** Where a label stands: its lower left corner, millimetres from the paper's top left. */
interface LabelPlace {
  readonly xMm: number;
  readonly yMm: number;
}

/** Clear paper between a picture and its label. */
const CLEAR_MM = 0.8;

interface Paper {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly marginMm: number;
}

/**
 * Finds clear paper for a label under or over its piece.
 *
 * @param size of the label, millimetres
 * @returns null where it would touch a picture or the border the printer cannot reach
 */
export function labelPlace(
  piece: PlacedPiece,
  pieces: readonly PlacedPiece[],
  paper: Paper,
  size: { readonly widthMm: number; readonly heightMm: number },
): LabelPlace | null {
  const tops = [piece.yMm + piece.heightMm + CLEAR_MM, piece.yMm - CLEAR_MM - size.heightMm];
  for (const top of tops) {
    const box = { xMm: piece.xMm, yMm: top, ...size };
    if (isInside(box, paper) && !pieces.some((other) => touch(box, other))) {
      return { xMm: box.xMm, yMm: top + size.heightMm };
    }
  }
  return null;
}

type Box = Pick<PlacedPiece, 'xMm' | 'yMm' | 'widthMm' | 'heightMm'>;

const isInside = (box: Box, { widthMm, heightMm, marginMm }: Paper): boolean =>
  box.xMm >= marginMm - 0.01 &&
  box.yMm >= marginMm &&
  box.xMm + box.widthMm <= widthMm - marginMm &&
  box.yMm + box.heightMm <= heightMm - marginMm;

/** Pictures stay clear by half of what a label keeps from its own. */
const touch = (box: Box, other: Box): boolean =>
  box.xMm < other.xMm + other.widthMm + CLEAR_MM / 2 &&
  other.xMm < box.xMm + box.widthMm + CLEAR_MM / 2 &&
  box.yMm < other.yMm + other.heightMm + CLEAR_MM / 2 &&
  other.yMm < box.yMm + box.heightMm + CLEAR_MM / 2;
