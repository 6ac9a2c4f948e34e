import type { CostedJob } from '@/lib/grid/costJob';
import type { Grid } from '@/lib/grid/evaluateGrid';
import type { LaidOutJob } from '@/lib/layout/layOutJob';
import { type BatchEvaluator, type BatchJob, batchEvaluator, type WantedBatch } from './batchEvaluator';
import type { BatchPoint } from './batchPoint';

/** Scrap shares of each placement, by its id, between which the truth is thought to lie. */
export interface ScrapRange {
  readonly low: number;
  readonly high: number;
}

export interface SpreadPoint {
  readonly n: number;
  /** The batch if little is spoiled, and if much is; null where a formula of the maker gives no number. */
  readonly best: BatchPoint | null;
  readonly worst: BatchPoint | null;
}

/**
 * The same batches with little and with much spoiled: how far the curve may lie off for want of knowing the scrap.
 *
 * @param ranges by placement id, shares 0 to 0.9; a placement without one keeps its share
 */
export function spoilageSpread(
  { laidOut }: CostedJob,
  grid: Grid,
  wanted: readonly WantedBatch[],
  ranges: Readonly<Record<string, ScrapRange>>,
): readonly SpreadPoint[] {
  const curve = (end: keyof ScrapRange): BatchEvaluator =>
    batchEvaluator(
      withScrap(laidOut, (id) => ranges[id]?.[end]),
      grid,
    );
  const best = curve('low')(wanted);
  const worst = curve('high')(wanted);
  return wanted.map(({ n }, index) => ({ n, best: best[index] ?? null, worst: worst[index] ?? null }));
}

function withScrap(
  { job, prints }: LaidOutJob,
  shareOf: (placementId: string) => number | undefined,
): BatchJob {
  const lines = job.lines.map((line) => ({
    ...line,
    placements: line.placements.map((placed) => ({
      ...placed,
      scrap: { ...placed.scrap, value: shareOf(placed.placement.id) ?? placed.scrap.value },
    })),
  }));
  return { job: { ...job, lines }, prints };
}
