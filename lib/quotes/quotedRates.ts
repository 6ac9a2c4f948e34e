import { frozenRates, type StandingRate } from '@/lib/priceLists/frozenRates';
import type { QuotedJob } from './quoteAsked';

/** @returns every rate that the prices of some jobs stand on, each once; those of a job name their job. */
export function quotedRates(jobs: readonly QuotedJob[]): readonly StandingRate[] {
  const rates = jobs.flatMap(({ jobId, input }) =>
    input.job.lines.flatMap(({ blankId }) => frozenRates(input, blankId, jobId)),
  );
  return [...new Map(rates.map((rate) => [rate.place, rate])).values()];
}
