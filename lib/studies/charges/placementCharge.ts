import type { CostedJob } from '@/lib/grid/costJob';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { piecesOf } from '@/lib/grid/fillLine';
import type { CheckedJob } from '@/lib/job/checkedJob';
import { layOutJob } from '@/lib/layout/layOutJob';
import { writtenPrice } from '@/lib/price/writtenPrice';
import { batchEvaluator } from '@/lib/studies/curve/batchEvaluator';
import type { MinorUnits } from '@/shared/money';
import { failed, ok, type Result } from '@/shared/result';

interface PlacementCharge {
  /** What the placement adds to the full cost of the order, unrounded: its press and all that it spoils. */
  readonly cost: number;
  readonly costEach: number;
  /** Price a piece of its line for the target margin, without tax, unrounded, and as written. */
  readonly targetEach: number;
  readonly written: MinorUnits;
}

type PlacementProblem =
  | { readonly kind: 'noSuchPlacement' }
  /** Without it nothing is printed on the piece. */
  | { readonly kind: 'onlyPlacement' }
  | { readonly kind: 'unknownCost' };

/** The true cost of a placement: the order costed with it, less the order costed without it. */
export function placementCharge(
  { laidOut }: CostedJob,
  grid: Grid,
  lineId: string,
  placementId: string,
): Result<PlacementCharge, PlacementProblem> {
  const { job } = laidOut;
  const line = job.lines.find((one) => one.line.id === lineId);
  const isIt = ({ placement }: { readonly placement: { readonly id: string } }) =>
    placement.id === placementId;
  if (line === undefined || !line.placements.some(isIt)) return failed({ kind: 'noSuchPlacement' });
  if (line.placements.length < 2) return failed({ kind: 'onlyPlacement' });
  const without = { ...line, placements: line.placements.filter((placed) => !isIt(placed)) };
  const lines = job.lines.map((one) => (one === line ? without : one));
  const wanted = [{ n: lines.reduce((sum, one) => sum + piecesOf(one), 0), priceEach: null }];
  const [whole] = batchEvaluator(laidOut, grid)(wanted);
  const [rest] = batchEvaluator(layOutJob({ ...job, lines } as CheckedJob), grid)(wanted);
  if (whole == null || rest == null) return failed({ kind: 'unknownCost' });
  const cost = whole.fullCost - rest.fullCost;
  const pieces = piecesOf(line);
  const targetEach = (whole.targetTotal - rest.targetTotal) / pieces;
  return ok({ cost, costEach: cost / pieces, targetEach, written: writtenPrice(job, targetEach) });
}
