import type { PlacedPiece } from '@/lib/packing/placedPiece';
import { fitsWithin } from '@/shared/units';

export interface RollQuestion {
  readonly rollWidthMm: number;
  /** Longest print the printer makes in one go. */
  readonly longestMm: number;
  /** Border the printer cannot reach, on all four sides of a print. */
  readonly marginMm: number;
  readonly gutterMm: number;
  readonly pieceWidthMm: number;
  readonly pieceHeightMm: number;
}

/** Equal pieces on a roll: rows across it, one behind the other, cut off behind the last. */
interface RollStrips {
  readonly across: number;
  readonly turned: boolean;
  /** Length of roll that a row takes, its gutter with it, mm. */
  readonly pitchMm: number;
  /** Rows of the longest print. */
  readonly rowsPerPrint: number;
  /** Places of a longest print; x runs across the roll. */
  readonly places: readonly PlacedPiece[];
}

/** More places than anybody cuts apart. */
const MOST_PLACES = 10_000;

/**
 * Lays equal pieces in rows, the way round that takes less roll a piece; upright where both take as much.
 *
 * @returns null where not one fits
 */
export function rollStrips(question: RollQuestion): RollStrips | null {
  const { rollWidthMm, longestMm, marginMm: margin, gutterMm: gutter } = question;
  const ways = [false, true].flatMap((turned) => {
    const wide = turned ? question.pieceHeightMm : question.pieceWidthMm;
    const long = turned ? question.pieceWidthMm : question.pieceHeightMm;
    const across = fitCount(rollWidthMm - 2 * margin, wide, gutter);
    const rows = fitCount(longestMm - 2 * margin, long, gutter);
    return across > 0 && rows > 0 ? [{ turned, wide, long, across, rows, pitchMm: long + gutter }] : [];
  });
  const [first, second] = ways;
  if (first === undefined) return null;
  const isSecondShorter =
    second !== undefined && second.pitchMm / second.across < first.pitchMm / first.across - 1e-9;
  const { turned, wide, long, across, rows, pitchMm } = isSecondShorter ? second : first;
  const places = Array.from({ length: Math.min(MOST_PLACES, across * rows) }, (_, index) => ({
    xMm: margin + (index % across) * (wide + gutter),
    yMm: margin + Math.floor(index / across) * pitchMm,
    widthMm: wide,
    heightMm: long,
    turned,
  }));
  return { across, turned, pitchMm, rowsPerPrint: rows, places };
}

/**
 * @param pieces how many are printed, 1 or more
 * @returns length of roll cut off for them, mm: each print has its border at both ends
 */
export function rollLengthMm(
  { across, pitchMm, rowsPerPrint }: RollStrips,
  pieces: number,
  { marginMm, gutterMm }: Pick<RollQuestion, 'marginMm' | 'gutterMm'>,
): number {
  const rows = Math.ceil(pieces / across);
  const prints = Math.ceil(rows / rowsPerPrint);
  return rows * pitchMm + prints * (2 * marginMm - gutterMm);
}

/**
 * @returns length of roll that a strip costs, mm: its own, and its part of the borders of a longest print, whatever
 *   the length of the print it is on
 */
export const stripLengthMm = (
  { pitchMm, rowsPerPrint }: RollStrips,
  { marginMm, gutterMm }: Pick<RollQuestion, 'marginMm' | 'gutterMm'>,
): number => pitchMm + (2 * marginMm - gutterMm) / rowsPerPrint;

function fitCount(bin: number, piece: number, gutter: number): number {
  const count = Math.floor((bin + gutter) / (piece + gutter));
  // A length that is the same to the eye still fits.
  return fitsWithin((count + 1) * (piece + gutter) - gutter, bin) ? count + 1 : Math.max(0, count);
}
