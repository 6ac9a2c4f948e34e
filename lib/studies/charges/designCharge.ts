import type { CostedJob } from '@/lib/grid/costJob';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { piecesOf } from '@/lib/grid/fillLine';
import type { ResolvedJob } from '@/lib/job/checkedJob';
import { writtenPrice } from '@/lib/price/writtenPrice';
import { batchEvaluator } from '@/lib/studies/curve/batchEvaluator';
import type { MinorUnits } from '@/shared/money';
import { failed, ok, type Result } from '@/shared/result';

interface DesignCharge {
  /** What preparing and testing the design adds to the full cost of the order, unrounded. */
  readonly cost: number;
  /** Set-up fee for the target margin, without tax, unrounded, and as written. */
  readonly exact: number;
  readonly written: MinorUnits;
}

type DesignProblem = { readonly kind: 'noSuchArtwork' } | { readonly kind: 'unknownCost' };

/**
 * The set-up fee of a design: the order costed with it as new, less the same order costed with the artwork ready and
 * its tests done. A repeat costs so much less, which is why the fee may be waived then.
 */
export function designCharge(
  { laidOut }: CostedJob,
  grid: Grid,
  artworkId: string,
): Result<DesignCharge, DesignProblem> {
  const { job, prints } = laidOut;
  const carried = job.lines.some((line) =>
    line.placements.some(({ placement }) => placement.artworkId === artworkId),
  );
  if (!carried) return failed({ kind: 'noSuchArtwork' });
  const n = job.lines.reduce((sum, line) => sum + piecesOf(line), 0);
  const wanted = [{ n, priceEach: null }];
  const [asNew] = batchEvaluator(laidOut, grid)(wanted);
  const [again] = batchEvaluator({ job: asRepeat(job, artworkId), prints }, grid)(wanted);
  if (asNew == null || again == null) return failed({ kind: 'unknownCost' });
  const exact = asNew.targetTotal - again.targetTotal;
  return ok({ cost: asNew.fullCost - again.fullCost, exact, written: writtenPrice(job, exact) });
}

/** The job as its second order: the artwork is prepared and the recipe is known. */
function asRepeat(job: ResolvedJob, artworkId: string): ResolvedJob {
  return {
    ...job,
    lines: job.lines.map((line) => ({
      ...line,
      placements: line.placements.map((placed) =>
        placed.placement.artworkId === artworkId
          ? {
              ...placed,
              placement: { ...placed.placement, testPresses: 0 },
              prepMinutes: { ...placed.prepMinutes, value: 0 },
            }
          : placed,
      ),
    })),
  };
}
