import type { BoxKind, LaidBox } from '@/lib/packing/box';
import { commonMeasure } from '@/lib/packing/commonMeasure';
import { cutPoints } from './cutPoints';
import { CutTable } from './cutTable';

/** A longer row of units is slower to set up than it is to search. */
const MOST_UNITS = 30_000;

/** Places for cuts in each direction, at most: a table of all pairs still takes some 30 ms. */
export const MOST_POINTS = 400;

/** A sheet that cuts from edge to edge take apart. */
export interface CutRoom {
  readonly table: CutTable;
  /** Ticks. */
  readonly unit: number;
  /** No way to cut is left out: what the table says is best bounds all guillotine layouts. */
  readonly exact: boolean;
}

/**
 * Sides are counted in their common measure; where that is too fine, in a coarser one, rounded up, and where there
 * are too many places for cuts, rows of few sides serve: either way layouts hold, and no bound is drawn from them.
 *
 * @param mostPoints places for cuts in each direction
 */
export function cutRoom(
  bin: { readonly width: number; readonly height: number },
  sizes: readonly BoxKind[],
  mostPoints: number,
): CutRoom {
  const measure = commonMeasure(sizes);
  const unit = Math.max(measure, Math.ceil(Math.max(bin.width, bin.height) / MOST_UNITS));
  const width = Math.floor(bin.width / unit);
  const height = Math.floor(bin.height / unit);
  const ways = sizes
    .flatMap((size, kind) => waysOf(size, kind))
    .map(({ kind, width: wide, height: high }) => ({
      kind,
      width: Math.ceil(wide / unit),
      height: Math.ceil(high / unit),
    }))
    .filter((way) => way.width <= width && way.height <= height);
  const across = cutPoints(width, unique(ways.map((way) => way.width)), mostPoints);
  const down = cutPoints(height, unique(ways.map((way) => way.height)), mostPoints);
  return {
    table: new CutTable(across, down, ways),
    unit,
    exact: unit === measure && across.complete && down.complete,
  };
}

/** @returns boxes as the table laid them, in ticks, with their own sides */
export const inTicks = (
  boxes: readonly LaidBox[],
  unit: number,
  sizes: readonly BoxKind[],
): readonly LaidBox[] =>
  boxes.map((box) => {
    const size = sizes[box.kind];
    if (size === undefined) throw new RangeError(`size ${box.kind} was not asked`);
    const isUpright =
      Math.ceil(size.width / unit) === box.width && Math.ceil(size.height / unit) === box.height;
    return {
      kind: box.kind,
      x: box.x * unit,
      y: box.y * unit,
      width: isUpright ? size.width : size.height,
      height: isUpright ? size.height : size.width,
    };
  });

const waysOf = ({ width, height, mayTurn }: BoxKind, kind: number) =>
  mayTurn && width !== height
    ? [
        { kind, width, height },
        { kind, width: height, height: width },
      ]
    : [{ kind, width, height }];

const unique = (values: readonly number[]): readonly number[] => [...new Set(values)];
