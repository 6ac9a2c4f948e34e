import type { PlacedPiece } from '@/lib/packing/placedPiece';
import { LENGTH_TOLERANCE_MM } from '@/shared/units';

/** A free rectangle of the paper, millimetres. */
interface Area {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** A piece one way up, millimetres. */
export interface Shape {
  readonly width: number;
  readonly height: number;
  readonly turned: boolean;
}

/** Rows and columns of one shape from a corner. */
interface Block {
  readonly x: number;
  readonly y: number;
  readonly columns: number;
  readonly rows: number;
  readonly shape: Shape;
}

/**
 * The layouts a person would try: plain grids, and a band of one way beside or above a band of the other.
 *
 * @param shapes ways the piece may lie, the plainer first
 * @returns each layout as its blocks, plainest layouts first
 */
export function bandLayouts(
  area: Area,
  shapes: readonly Shape[],
  gutter: number,
): readonly (readonly Block[])[] {
  const pairs = shapes.flatMap((first) =>
    shapes.filter((second) => second !== first).map((second) => [first, second] as const),
  );
  return [
    ...shapes.map((shape) => [grid(area, shape, gutter)]),
    ...pairs.flatMap(([first, second]) => bands(area, first, second, gutter)),
  ];
}

/** @returns pieces of a layout made of blocks. */
export const countOf = (blocks: readonly Block[]): number =>
  blocks.reduce((sum, { columns, rows }) => sum + columns * rows, 0);

/** @returns the first `most` places of a layout made of blocks, row by row. */
export const placesOf = (blocks: readonly Block[], gutter: number, most: number): readonly PlacedPiece[] =>
  blocks
    .flatMap(({ x, y, columns, rows, shape }) =>
      Array.from({ length: Math.min(columns * rows, most) }, (_, index) => ({
        xMm: x + (index % columns) * (shape.width + gutter),
        yMm: y + Math.floor(index / columns) * (shape.height + gutter),
        widthMm: shape.width,
        heightMm: shape.height,
        turned: shape.turned,
      })),
    )
    .slice(0, most);

function fitCount(length: number, piece: number, gutter: number): number {
  return Math.max(0, Math.floor((length + gutter + LENGTH_TOLERANCE_MM) / (piece + gutter)));
}

const grid = (area: Area, shape: Shape, gutter: number): Block => ({
  x: area.x,
  y: area.y,
  columns: fitCount(area.width, shape.width, gutter),
  rows: fitCount(area.height, shape.height, gutter),
  shape,
});

/** With more rows or columns than this the last of them is all that two bands could gain. */
const MOST_BANDS = 1_000;

/** A band of `first` along the top or the left, the rest of the sheet in `second`, for every band width. */
function bands(area: Area, first: Shape, second: Shape, gutter: number): readonly (readonly Block[])[] {
  const whole = grid(area, first, gutter);
  const stacked = Array.from({ length: Math.min(whole.rows, MOST_BANDS) }, (_, index) => {
    const used = (index + 1) * (first.height + gutter);
    const rest = { ...area, y: area.y + used, height: area.height - used };
    return [{ ...whole, rows: index + 1 }, grid(rest, second, gutter)];
  });
  const sideBySide = Array.from({ length: Math.min(whole.columns, MOST_BANDS) }, (_, index) => {
    const used = (index + 1) * (first.width + gutter);
    const rest = { ...area, x: area.x + used, width: area.width - used };
    return [{ ...whole, columns: index + 1 }, grid(rest, second, gutter)];
  });
  return [...stacked, ...sideBySide];
}
