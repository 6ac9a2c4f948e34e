import type { CostedJob } from '@/lib/grid/costJob';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { present } from '@/lib/grid/present';
import type { ResolvedLine } from '@/lib/job/checkedJob';
import { caseEvaluator } from '@/lib/price/caseEvaluator';
import { judgedJob } from '@/lib/price/list/judgedJob';
import { TARIFF_UP_TO } from '@/lib/studies/curve/batchTariffs';
import { fitTariff, type Tariff } from '@/lib/studies/curve/fitTariff';
import { sizesAsSold } from './sizesAsSold';

export interface LineTariff extends Tariff {
  /** From so many pieces on the gap a piece is a tenth of the largest or less. */
  readonly smallFrom: number;
  /** The largest gap from there on, currency units a piece. */
  readonly smallError: number;
}

/**
 * “So much to start, so much a piece” for the pieces of one line in its mix of sizes, fitted to the target totals of
 * 1 to 100 pieces, of the orders that its list is judged by. Of a job of one line it is the tariff of the batch.
 *
 * @returns null where totals are too few to fit
 */
export function lineTariff(costed: CostedJob, line: ResolvedLine, grid: Grid): LineTariff | null {
  const { ownRows } = costed.laidOut.job;
  const sizes = sizesAsSold(
    line,
    line.sizes.map(({ size }) => size),
    ownRows.some(({ cost }) => cost.kind === 'formula'),
  );
  const pieces = sizes.reduce((sum, { quantity }) => sum + quantity, 0);
  const batches = Array.from({ length: TARIFF_UP_TO }, (_, index) => index + 1);
  const columns = caseEvaluator(
    judgedJob(costed, line),
    line,
    grid,
  )(batches.flatMap((batch) => sizes.map((size) => ({ size, batch, askedPrice: null }))));
  const totals = batches.map((n, index) => ({
    n,
    total: sizes.reduce(
      (sum, { quantity }, at) =>
        sum + (n * quantity * present(columns[index * sizes.length + at], 'target')) / pieces,
      0,
    ),
  }));
  const tariff = fitTariff(totals);
  if (tariff === null) return null;
  const gaps = totals.map(({ n, total }) => Math.abs(total - tariff.start - tariff.each * n) / n);
  const lastLarge = gaps.findLastIndex((gap) => gap > tariff.largestError / 10);
  const smallFrom = Math.min(TARIFF_UP_TO, lastLarge + 2);
  return { ...tariff, smallFrom, smallError: Math.max(...gaps.slice(smallFrom - 1)) };
}
