import type { BenchWork } from '@/lib/calendar/benchWork';
import { leadOf } from '@/lib/check/time/blanksToOrder';
import { benchWorkOf } from '@/lib/costing/benchWorkOf';
import { judgeJob } from '@/lib/costing/priceJob';
import type { CostedJob } from '@/lib/grid/costJob';
import type { Grid } from '@/lib/grid/evaluateGrid';
import type { Alternative } from '@/shared/schemas/order';
import type { Quote } from '@/shared/schemas/orderPapers';
import { jobAsSold } from './agreed/jobAsSold';
import type { Sale } from './orderSale';
import type { PricedJob } from './pricedJob';

interface Offered {
  readonly alternative: Alternative;
  readonly sale: Sale;
}

type QuotedWork = Quote['owner']['work'];

/** @returns what the jobs of a quote take at the bench, as asked and as each alternative changes one of them. */
export function quotedWork(jobs: readonly PricedJob[], offered: readonly Offered[], grid: Grid): QuotedWork {
  return [
    ...jobs.map(({ jobId, costed }) => workOf(jobId, null, costed)),
    ...offered.flatMap(({ alternative: { id, jobId }, sale }) => {
      const input = jobs.find((job) => job.jobId === jobId)?.input;
      if (input === undefined) return [];
      const job = jobAsSold(jobId, input.job, sale.lines);
      // A day that cannot be kept stops a price, but no work.
      const { priced } = judgeJob({ ...input, job: { ...job, wantedOn: null } }, grid);
      return priced === null ? [] : [workOf(jobId, id, priced.costed)];
    }),
  ];
}

// Helpers

const workOf = (jobId: string, alternativeId: string | null, costed: CostedJob): QuotedWork[number] => ({
  ...{ jobId, alternativeId, work: kept(benchWorkOf(costed)) },
  lead: leadOf(costed.laidOut.job),
});

const kept = ({ before, press, after }: BenchWork): QuotedWork[number]['work'] => ({
  before: [...before],
  press: press === null ? null : { ...press, runs: [...press.runs] },
  after: [...after],
});
