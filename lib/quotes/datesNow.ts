import { judgeJob } from '@/lib/costing/priceJob';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { workingDaysBetween } from '@/shared/days';
import type { Quote } from '@/shared/schemas/orderPapers';
import type { QuotedJob } from './quoteAsked';

/**
 * The days of an order as the checks of its jobs tell them: the last on which blanks can be ordered, which only happens
 * once the proof is approved, and the day it is wanted.
 *
 * @param wantedOn null where no day is agreed
 */
export function datesNow(jobs: readonly QuotedJob[], wantedOn: string | null, grid: Grid): Quote['dates'] {
  if (wantedOn === null) return { orderBlanksBy: null, approveBy: null, ready: null, leadDays: null };
  const latest = jobs.flatMap(({ input }) =>
    judgeJob({ ...input, job: { ...input.job, wantedOn } }, grid).answer.findings.flatMap((finding) =>
      finding.id === 'TIM-02' && finding.variant !== 'unknown' ? [finding.facts.latest] : [],
    ),
  );
  const [orderBlanksBy = null] = latest.toSorted();
  const leadDays = orderBlanksBy === null ? null : workingDaysBetween(orderBlanksBy, wantedOn);
  return { orderBlanksBy, approveBy: orderBlanksBy, ready: wantedOn, leadDays };
}
