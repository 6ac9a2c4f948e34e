import { LENGTH_TOLERANCE_MM } from '@/shared/units';

export interface SheetQuestion {
  readonly sheetWidthMm: number;
  readonly sheetHeightMm: number;
  /** Border the printer cannot reach, on all four sides. */
  readonly marginMm: number;
  /** Clear paper between neighbours. */
  readonly gutterMm: number;
  readonly pieceWidthMm: number;
  readonly pieceHeightMm: number;
}

export interface PlacedPiece {
  readonly xMm: number;
  readonly yMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly turned: boolean;
}

export interface SheetAnswer {
  /** Pieces on one sheet; 0 where not even one fits. */
  readonly count: number;
  /** True when every piece lies turned by 90°. */
  readonly turned: boolean;
  /** Places from the sheet's top left corner, as the paper is seen. */
  readonly pieces: readonly PlacedPiece[];
  /** Share of the whole sheet that no piece covers, 0 to 1. */
  readonly wasteShare: number;
}

/**
 * How many equal pieces go on one cut sheet: the better of upright and turned grids, and of two bands, one
 * upright and one turned, side by side or one above the other.
 *
 * @returns places and count; ties go to the plainer layout, upright first
 */
export function piecesPerSheet(question: SheetQuestion): SheetAnswer {
  const { marginMm: margin } = question;
  const area: Area = {
    x: margin,
    y: margin,
    width: question.sheetWidthMm - 2 * margin,
    height: question.sheetHeightMm - 2 * margin,
  };
  const upright: Shape = { width: question.pieceWidthMm, height: question.pieceHeightMm, turned: false };
  const turned: Shape = { width: question.pieceHeightMm, height: question.pieceWidthMm, turned: true };
  const layouts = [
    grid(area, upright, question.gutterMm),
    grid(area, turned, question.gutterMm),
    ...bands(area, upright, turned, question.gutterMm),
    ...bands(area, turned, upright, question.gutterMm),
  ];
  const pieces = layouts.reduce((best, next) => (next.length > best.length ? next : best), []);
  const covered = pieces.length * question.pieceWidthMm * question.pieceHeightMm;
  return {
    count: pieces.length,
    turned: pieces.length > 0 && pieces.every((piece) => piece.turned),
    pieces,
    wasteShare: 1 - covered / (question.sheetWidthMm * question.sheetHeightMm),
  };
}

interface Area {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

interface Shape {
  readonly width: number;
  readonly height: number;
  readonly turned: boolean;
}

function fitCount(length: number, piece: number, gutter: number): number {
  return Math.max(0, Math.floor((length + gutter + LENGTH_TOLERANCE_MM) / (piece + gutter)));
}

function grid(area: Area, shape: Shape, gutter: number): readonly PlacedPiece[] {
  const columns = fitCount(area.width, shape.width, gutter);
  const rows = fitCount(area.height, shape.height, gutter);
  return Array.from({ length: columns * rows }, (_, index) => ({
    xMm: area.x + (index % columns) * (shape.width + gutter),
    yMm: area.y + Math.floor(index / columns) * (shape.height + gutter),
    widthMm: shape.width,
    heightMm: shape.height,
    turned: shape.turned,
  }));
}

/** A band of `first` along the top or the left, the rest of the sheet in `second`, for every band width. */
function bands(area: Area, first: Shape, second: Shape, gutter: number): readonly (readonly PlacedPiece[])[] {
  const rows = fitCount(area.height, first.height, gutter);
  const columns = fitCount(area.width, first.width, gutter);
  const stacked = Array.from({ length: rows }, (_, index) => {
    const used = (index + 1) * (first.height + gutter);
    const top = { ...area, height: used - gutter };
    const rest = { ...area, y: area.y + used, height: area.height - used };
    return [...grid(top, first, gutter), ...grid(rest, second, gutter)];
  });
  const sideBySide = Array.from({ length: columns }, (_, index) => {
    const used = (index + 1) * (first.width + gutter);
    const left = { ...area, width: used - gutter };
    const rest = { ...area, x: area.x + used, width: area.width - used };
    return [...grid(left, first, gutter), ...grid(rest, second, gutter)];
  });
  return [...stacked, ...sideBySide];
}
