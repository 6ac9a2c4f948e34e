import type { BenchWork } from '@/lib/calendar/benchWork';
import type { StageMinutes } from '@/lib/calendar/pace';
import { leadOf } from '@/lib/check/time/blanksToOrder';
import { benchWorkOf, stagesOf } from '@/lib/costing/benchWorkOf';
import { judgeJob } from '@/lib/costing/priceJob';
import type { Grid } from '@/lib/grid/evaluateGrid';
import type { JobBlanks } from '@/shared/jobBlanks';
import type { JobInput } from '@/shared/schemas/request';
import { blanksOfJob } from './blanksOfJob';

/** What a job asks of the bench and of the supplier. */
export interface BenchAnswer {
  readonly work: BenchWork;
  readonly stages: StageMinutes;
  /** Working days until the slowest of its blanks arrives; null where none is to be ordered, or none is known. */
  readonly lead: number | null;
  readonly blanks: JobBlanks;
}

/** @returns null where a stop stands. */
export function benchAnswer(input: JobInput, grid: Grid): BenchAnswer | null {
  // A day that cannot be kept stops a price, but the work is still to be done.
  const { priced } = judgeJob({ ...input, job: { ...input.job, wantedOn: null } }, grid);
  if (priced === null) return null;
  const { costed } = priced;
  return {
    ...{ work: benchWorkOf(costed), stages: stagesOf(costed), lead: leadOf(costed.laidOut.job) },
    blanks: blanksOfJob(costed),
  };
}
