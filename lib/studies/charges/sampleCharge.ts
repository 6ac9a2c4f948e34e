import type { CostedJob } from '@/lib/grid/costJob';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { writtenPrice } from '@/lib/price/writtenPrice';
import { batchEvaluator } from '@/lib/studies/curve/batchEvaluator';
import type { MinorUnits } from '@/shared/money';

interface SampleCharge {
  /** Full cost of making one piece by itself, unrounded. */
  readonly cost: number;
  readonly written: MinorUnits;
  /** Taken off the order when it comes, and kept when it does not. */
  readonly credited: MinorUnits;
}

/** @returns what a pressed sample costs and is charged at; null where a formula of the maker gives no number for it. */
export function sampleCharge({ laidOut }: CostedJob, grid: Grid): SampleCharge | null {
  const [point] = batchEvaluator(laidOut, grid)([{ n: 1, priceEach: null }]);
  if (point == null) return null;
  const written = writtenPrice(laidOut.job, point.targetTotal);
  return { cost: point.fullCost, written, credited: written };
}
