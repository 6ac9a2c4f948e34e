import type { Grid } from '@/lib/grid/evaluateGrid';
import { askedLine, type LineTerms } from './askedLine';
import { soldInput } from './orderTax';
import { type PricedJob, pricedJob } from './pricedJob';
import type { QuoteAsked } from './quoteAsked';
import type { QuoteObstacle } from './quoteObstacle';
import type { SoldLine } from './soldLine';

interface AskedLines {
  readonly jobs: readonly PricedJob[];
  readonly lines: readonly SoldLine[];
  /** Jobs that stop and lines that nobody can be asked for. */
  readonly inTheWay: readonly QuoteObstacle[];
}

/** @returns the jobs of an order priced, and their lines as it asks for them; in whole minor units. */
export function askedLines(asked: QuoteAsked, terms: Omit<LineTerms, 'jobId'>, grid: Grid): AskedLines {
  const inTheWay: QuoteObstacle[] = [];
  const jobs: PricedJob[] = [];
  for (const quoted of asked.jobs) {
    const { jobId, input } = quoted;
    const priced = pricedJob(jobId, soldInput(quoted, asked, terms.tax.channelId), grid);
    if (priced.ok) jobs.push(priced.value);
    else inTheWay.push({ kind: 'stopped', jobId, name: input.job.name, why: priced.problem });
  }
  const lines: SoldLine[] = [];
  for (const { jobId, costed } of jobs) {
    for (const line of costed.laidOut.job.lines) {
      const sold = askedLine(line, { ...terms, jobId });
      if (sold.ok) lines.push(sold.value);
      else inTheWay.push(sold.problem);
    }
  }
  return { jobs, lines, inTheWay };
}
