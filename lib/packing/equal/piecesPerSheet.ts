import type { PlacedPiece } from '@/lib/packing/placedPiece';
import { binTicks, pieceTicks, placeMm } from '@/lib/packing/ticks';
import { bandLayouts, countOf, placesOf, type Shape } from './bandLayouts';
import { cleverLayout } from './cleverLayout';

export type { PlacedPiece } from '@/lib/packing/placedPiece';

export interface SheetQuestion {
  readonly sheetWidthMm: number;
  readonly sheetHeightMm: number;
  /** Border the printer cannot reach, on all four sides. */
  readonly marginMm: number;
  /** Clear paper between neighbours. */
  readonly gutterMm: number;
  readonly pieceWidthMm: number;
  readonly pieceHeightMm: number;
  /** False where pieces must lie the way they were asked; they may turn unless told. */
  readonly rotate?: boolean;
}

interface SheetAnswer {
  /** Pieces on one sheet; 0 where not even one fits. */
  readonly count: number;
  /** True when every piece lies turned by 90°. */
  readonly turned: boolean;
  /** Places from the sheet's top left corner, as the paper is seen; of very many pieces the first 10,000. */
  readonly pieces: readonly PlacedPiece[];
  /** Share of the whole sheet that no piece covers, 0 to 1. */
  readonly wasteShare: number;
}

/** More places than anybody cuts from one sheet; the count stays exact. */
const MOST_PLACES = 10_000;

/**
 * How many equal pieces go on one cut sheet: the best of upright and turned grids, of two bands, of blocks within
 * blocks and, where the paper could just hold one more, of layouts without any blocks.
 *
 * @returns places and count; ties go to the plainer layout, upright first
 */
export function piecesPerSheet(question: SheetQuestion): SheetAnswer {
  const { marginMm: margin, gutterMm: gutter, rotate = true } = question;
  const area = {
    x: margin,
    y: margin,
    width: question.sheetWidthMm - 2 * margin,
    height: question.sheetHeightMm - 2 * margin,
  };
  const layouts = bandLayouts(area, shapesOf(question), gutter);
  const plain = layouts.reduce((best, next) => (countOf(next) > countOf(best) ? next : best));
  const clever = rotate ? beyondBands(question, countOf(plain)) : null;
  const count = clever?.length ?? countOf(plain);
  const pieces = clever ?? placesOf(plain, gutter, MOST_PLACES);
  const covered = count * question.pieceWidthMm * question.pieceHeightMm;
  return {
    count,
    turned: count > 0 && pieces.every((piece) => piece.turned),
    pieces,
    wasteShare: 1 - covered / (question.sheetWidthMm * question.sheetHeightMm),
  };
}

function shapesOf({ pieceWidthMm: width, pieceHeightMm: height, rotate = true }: SheetQuestion) {
  const upright: Shape = { width, height, turned: false };
  const turned: Shape = { width: height, height: width, turned: true };
  return rotate && width !== height ? [upright, turned] : [upright];
}

/** @returns a layout of more than `known` pieces, or null. How the sheet is held makes no difference. */
function beyondBands(question: SheetQuestion, known: number): readonly PlacedPiece[] | null {
  const { marginMm, gutterMm, pieceWidthMm: width, pieceHeightMm: height } = question;
  const across = binTicks(question.sheetWidthMm, marginMm, gutterMm);
  const down = binTicks(question.sheetHeightMm, marginMm, gutterMm);
  const places = cleverLayout(
    { long: Math.max(across, down), short: Math.min(across, down) },
    {
      long: pieceTicks(Math.max(width, height), gutterMm),
      short: pieceTicks(Math.min(width, height), gutterMm),
    },
    known,
  );
  if (places === null) return null;
  const wide = across >= down;
  return places.map(({ x, y, lying }) => {
    // A piece lies along the sheet's width when both its long side and the sheet's do, or neither.
    const turned = (lying === wide) !== width >= height;
    return {
      xMm: placeMm(wide ? x : y, marginMm),
      yMm: placeMm(wide ? y : x, marginMm),
      widthMm: turned ? height : width,
      heightMm: turned ? width : height,
      turned,
    };
  });
}
