import type { CostedJob } from '@/lib/grid/costJob';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { batchEvaluator } from './batchEvaluator';
import { fitTariff, type Tariff } from './fitTariff';

/** The batches a tariff is fitted over unless told: about what one workshop is asked for. */
export const TARIFF_UP_TO = 100;

interface BatchTariffs {
  /** What to ask: fitted to the target price of whole batches. */
  readonly target: Tariff;
  /** What it costs: fitted to their full cost. */
  readonly fullCost: Tariff;
}

/**
 * Fits “so much to start, so much a piece” to the totals of batches of 1 to `upTo`.
 *
 * @returns null where formulas of the maker give fewer than two totals
 */
export function batchTariffs(
  { laidOut }: CostedJob,
  grid: Grid,
  upTo: number = TARIFF_UP_TO,
): BatchTariffs | null {
  const wanted = Array.from({ length: upTo }, (_, index) => ({ n: index + 1, priceEach: null }));
  const points = batchEvaluator(laidOut, grid)(wanted).filter((point) => point !== null);
  const target = fitTariff(points.map(({ n, targetTotal }) => ({ n, total: targetTotal })));
  const fullCost = fitTariff(points.map((point) => ({ n: point.n, total: point.fullCost })));
  return target === null || fullCost === null ? null : { target, fullCost };
}
