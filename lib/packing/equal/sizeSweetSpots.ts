import { piecesPerSheet, type SheetQuestion } from './piecesPerSheet';

/** A size at which a sheet carries a full grid of pieces. */
interface SizeSweetSpot {
  readonly columns: number;
  readonly rows: number;
  /** True when the pieces of the grid lie turned. */
  readonly turned: boolean;
  /** Of the size asked; above 1 the piece may even grow. */
  readonly scale: number;
  /** The largest piece of the same shape, millimetres, rounded down to a hundredth. */
  readonly widthMm: number;
  readonly heightMm: number;
  /** The largest piece of any shape that the grid holds, millimetres, the way up it was asked. */
  readonly mostWidthMm: number;
  readonly mostHeightMm: number;
  /** Pieces on one sheet at that size; the asked size has fewer, or as many where the scale is 1 or more. */
  readonly count: number;
}

/** Smaller than this is another product, not a small change. */
const SMALLEST_SCALE = 0.93;

/**
 * Sizes near the one asked at which a sheet carries more pieces, and the largest at which it carries as many.
 *
 * @returns rising in count, each the largest size for its count
 * @example 3.5 × 3.5 in badges on letter paper, margin 1/8 in, gutter 1/4 in: four; at 3.41 in there are six
 */
export function sizeSweetSpots(question: SheetQuestion): readonly SizeSweetSpot[] {
  const now = piecesPerSheet(question).count;
  const ways = question.rotate === false ? [false] : [false, true];
  const spots = ways
    .flatMap((turned) => neighbours(question, turned))
    .filter(({ count, scale }) => count > now || (count === now && scale > 1))
    .toSorted((a, b) => b.scale - a.scale || b.count - a.count);
  // What is smaller has to carry more.
  return spots.filter((spot, index) => spots.slice(0, index).every(({ count }) => count < spot.count));
}

function neighbours(question: SheetQuestion, turned: boolean): readonly SizeSweetSpot[] {
  const { marginMm, gutterMm: gutter, pieceWidthMm: width, pieceHeightMm: height } = question;
  const across = question.sheetWidthMm - 2 * marginMm + gutter;
  const down = question.sheetHeightMm - 2 * marginMm + gutter;
  if (across <= gutter || down <= gutter) return [];
  const wide = turned ? height : width;
  const high = turned ? width : height;
  const columns = near(across / (wide + gutter));
  const rows = near(down / (high + gutter));
  return columns.flatMap((a) =>
    rows.flatMap((b) => {
      const mostWide = across / a - gutter;
      const mostHigh = down / b - gutter;
      const scale = Math.min(mostWide / wide, mostHigh / high);
      if (!(scale >= SMALLEST_SCALE)) return [];
      const size = { widthMm: roundedDown(width * scale), heightMm: roundedDown(height * scale) };
      if (size.widthMm <= 0 || size.heightMm <= 0) return [];
      const { count } = piecesPerSheet({
        ...question,
        pieceWidthMm: size.widthMm,
        pieceHeightMm: size.heightMm,
      });
      return {
        columns: a,
        rows: b,
        turned,
        scale,
        ...size,
        mostWidthMm: roundedDown(turned ? mostHigh : mostWide),
        mostHeightMm: roundedDown(turned ? mostWide : mostHigh),
        count,
      };
    }),
  );
}

/** As many as go now, and those that a small change can add: 7 % is one in a row of fourteen. */
function near(fit: number): readonly number[] {
  const now = Math.floor(fit);
  const next = Math.floor(fit / SMALLEST_SCALE) + 1;
  return [now, next > now + 1 ? next - 1 : now + 1, next].filter(
    (number, index, all) => number > 0 && all.indexOf(number) === index,
  );
}

const roundedDown = (lengthMm: number): number => Math.floor(lengthMm * 100 + 1e-6) / 100;
