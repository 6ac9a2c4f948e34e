import type { ReactNode } from 'react';
import { JobProvider } from '@/app/_docket/screen/JobProvider';
import { useWorkspace } from '@/app/_documents/useWorkspace';
import type { PricedJobState } from '@/app/_pricing/usePricedJob';
import { priceJob } from '@/lib/costing/priceJob';
import type { JobInput } from '@/shared/schemas/request';
import { grid } from '@/tests/fixtures/costed';

type InJobProps = Readonly<{ input: JobInput; priced?: PricedJobState; children: ReactNode }>;

/** The job around a part of its screen that is shown alone. */
export function InJob({ input, priced = notYetPriced, children }: InJobProps) {
  const workspace = useWorkspace();
  return (
    <JobProvider jobId="club-order" {...{ workspace, input, priced }}>
      {children}
    </JobProvider>
  );
}

export const notYetPriced: PricedJobState = {
  answer: null,
  lastCosted: null,
  lastPriced: null,
  failure: null,
};

/** The sums of a job, as the worker would have answered. */
export function pricedNow(input: JobInput): PricedJobState {
  const answer = priceJob(input, grid);
  const priced = { input, answer, shared: null };
  return { answer, lastCosted: priced, lastPriced: priced, failure: null };
}

/** The same after a change that a stop keeps from being costed. */
export const stoppedSince = (before: PricedJobState): PricedJobState => ({
  ...before,
  answer: { findings: before.answer?.findings ?? [], layout: null, costSheet: null, prices: null },
});
