import { costOffered } from '@/lib/costing/offeredJob';
import { priceJob } from '@/lib/costing/priceJob';
import type { CostedJob } from '@/lib/grid/costJob';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { type Finding, isStanding } from '@/shared/finding';
import { failed, ok, type Result } from '@/shared/result';
import type { JobInput } from '@/shared/schemas/request';

/** A job of an order, checked and costed at the prices it asks, or those suggested where none is decided. */
export interface PricedJob {
  readonly jobId: string;
  /** As it is sold, with the prices it goes out at. */
  readonly input: JobInput;
  readonly costed: CostedJob;
  readonly findings: readonly Finding[];
}

/** A quote may go under what a job costs where its maker says why, so that a price under the floor does not stop it. */
export const UNDER_FLOOR = 'RATE-08';

/** @returns the job, or the stop that stands in it. */
export function pricedJob(jobId: string, sold: JobInput, grid: Grid): Result<PricedJob, Finding | null> {
  const { findings, prices } = priceJob(sold, grid);
  const why = findings.find((finding) => isStanding(finding) && finding.id !== UNDER_FLOOR) ?? null;
  const offered = why === null && prices !== null ? costOffered(sold, grid) : null;
  return offered === null ? failed(why) : ok({ jobId, ...offered, findings });
}
