import type { Box, BoxKind, LaidBox } from '@/lib/packing/box';
import { boxKinds } from '@/lib/packing/boxKinds';
import { commonMeasure } from '@/lib/packing/commonMeasure';
import { fillBin } from '@/lib/packing/fillBin';
import { type FitProblem, fitProblem } from '@/lib/packing/fitProblem';
import { nameBoxes } from '@/lib/packing/nameBoxes';
import type { Effort, NamedPiece, PieceRequest } from '@/lib/packing/pieceRequest';
import { seededRandom } from '@/lib/packing/seededRandom';
import { binTicks, lengthMmOf } from '@/lib/packing/ticks';
import { failed, ok, type Result } from '@/shared/result';
import { columnLayout } from './columnLayout';
import { improveRoll } from './improveRoll';
import { rollBound } from './rollBound';

export interface RollRequest extends PieceRequest {
  readonly rollWidthMm: number;
}

interface PackedRoll {
  /** Length to cut off, millimetres, margins at both ends included. */
  readonly rollLengthMm: number;
  readonly pieces: readonly NamedPiece[];
  /** No layout needs less, millimetres, margins included. */
  readonly lowerBoundMm: number;
}

/** A hundred different pieces take some 60 ms. */
const USUAL_EFFORT: Effort = { steps: 3_000_000, seed: 1 };

/** More boxes are hardly ever laid without any gap before the steps run out. */
const MOST_TO_FILL = 20;

/** Skylines looked at, at most, for a layout without a gap; some 50 ms. */
const FILL_STEPS = 40_000;

/**
 * Lays pieces on as short a piece of roll as it finds; x runs across the roll. The same request gives the same
 * layout.
 *
 * @param effort a larger number of steps looks longer for a shorter roll
 * @example
 * packRoll({ rollWidthMm: 100, marginMm: 0, gutterMm: 0, rotate: true,
 *   pieces: [{ id: 'a', widthMm: 50, heightMm: 20, count: 4 }] }) // 40 mm, and no layout needs less
 */
export function packRoll(
  request: RollRequest,
  effort: Effort = USUAL_EFFORT,
): Result<PackedRoll, FitProblem> {
  const { rollWidthMm, marginMm, gutterMm } = request;
  const problem = fitProblem({ widthMm: rollWidthMm, heightMm: Number.POSITIVE_INFINITY }, request);
  if (problem !== null) return failed(problem);
  const kinds = boxKinds(request);
  const unit = commonMeasure(kinds);
  const width = Math.floor(binTicks(rollWidthMm, marginMm, gutterMm) / unit) * unit;
  const least = rollBound(width, kinds);
  const laid = shortest(width, least, kinds, effort);
  const length = lengthOf(laid);
  return ok({
    rollLengthMm: lengthMmOf(length, gutterMm) + 2 * marginMm,
    pieces: nameBoxes(laid, request),
    lowerBoundMm: lengthMmOf(least, gutterMm) + 2 * marginMm,
  });
}

/** Plain columns where all pieces are equal and nothing is shorter; else what the searches find. */
function shortest(
  width: number,
  least: number,
  kinds: readonly BoxKind[],
  effort: Effort,
): readonly LaidBox[] {
  const only = kinds.length === 1 ? kinds[0] : undefined;
  const columns = only === undefined ? null : columnLayout(width, only);
  if (columns !== null && lengthOf(columns) <= least) return columns;
  const searched = withoutGap(width, least, kinds) ?? search(width, least, kinds, effort);
  return columns !== null && lengthOf(columns) <= lengthOf(searched) ? columns : searched;
}

const lengthOf = (boxes: readonly LaidBox[]): number =>
  boxes.reduce((longest, { y, height }) => Math.max(longest, y + height), 0);

function withoutGap(width: number, least: number, kinds: readonly BoxKind[]): readonly LaidBox[] | null {
  const boxes = kinds.reduce((sum, { count }) => sum + count, 0);
  return boxes <= MOST_TO_FILL ? fillBin({ width, height: least }, kinds, FILL_STEPS) : null;
}

function search(
  width: number,
  least: number,
  kinds: readonly BoxKind[],
  { steps, seed }: Effort,
): readonly LaidBox[] {
  const boxes = kinds.flatMap(({ count, ...sides }, kind) =>
    Array.from({ length: count }, (): Box => ({ kind, width: sides.width, height: sides.height })),
  );
  const mayTurn = kinds.some((kind) => kind.mayTurn);
  return improveRoll(boxes, { width, mayTurn }, least, { steps }, seededRandom(seed)).laid;
}
