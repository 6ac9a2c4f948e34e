import { judgeJob } from '@/lib/costing/priceJob';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { jobAsSold } from '@/lib/quotes/agreed/jobAsSold';
import { type LineTerms, listItem, onPaper } from '@/lib/quotes/askedLine';
import { costSale } from '@/lib/quotes/costSale';
import { listedLine } from '@/lib/quotes/listedLine';
import { orderSale, type Sale } from '@/lib/quotes/orderSale';
import { untaxedJob } from '@/lib/quotes/orderTax';
import { type PricedJob, UNDER_FLOOR } from '@/lib/quotes/pricedJob';
import type { QuotedJob } from '@/lib/quotes/quoteAsked';
import type { AlternativeProblem } from '@/lib/quotes/quoteObstacle';
import { lineTotal, type SoldLine, soldPieces } from '@/lib/quotes/soldLine';
import { type Finding, isStanding } from '@/shared/finding';
import { failed, ok, type Result } from '@/shared/result';
import type { Alternative } from '@/shared/schemas/order';
import { fewerOf, heldTo, withFewerPieces } from './fewerPieces';
import { withMorePieces } from './morePieces';
import { withOnePrintLess } from './onePrintLess';

/** What an order is offered beside. */
export interface AskedSale {
  readonly jobs: readonly PricedJob[];
  readonly sale: Sale;
  readonly terms: Omit<LineTerms, 'jobId'>;
}

/** @returns what an order comes to by one of its alternatives; the other lines stay as they are asked. */
export function alternativeSale(
  asked: AskedSale,
  alternative: Alternative,
  grid: Grid,
): Result<Sale, AlternativeProblem> {
  const { jobs, sale, terms } = asked;
  const { order, tax, currency } = terms;
  const job = jobs.find(({ jobId }) => jobId === alternative.jobId);
  const line = sale.lines.find(
    ({ jobId, lineId }) => jobId === alternative.jobId && lineId === alternative.lineId,
  );
  if (job === undefined || line === undefined) return failed({ kind: 'gone' });
  const changed = changedLine(asked, { alternative, job, line }, grid);
  if (!changed.ok) return changed;
  const withLine = (one: SoldLine) =>
    orderSale(
      sale.lines.map((before) => (before === line ? one : before)),
      order,
      tax,
      currency,
    );
  const isFewer = soldPieces(changed.value) < soldPieces(line);
  let above = isFewer ? Math.max(0, lineTotal(changed.value) - lineTotal(line)) : 0;
  let other = withLine(heldTo(changed.value, above, terms.labels));
  // Tax that is rounded on each line may come to a coin more for fewer pieces of the same sum.
  for (; isFewer && other.ok && other.value.sums.total > sale.sums.total; above += 1)
    other = withLine(heldTo(changed.value, above + 1, terms.labels));
  if (!other.ok)
    return failed({ kind: other.problem.kind === 'asksNothing' ? 'noPrice' : other.problem.kind });
  const sold = jobs.map(({ jobId, input }) => ({
    jobId,
    input: { ...input, job: jobAsSold(jobId, input.job, other.value.lines) },
  }));
  const why = stopIn(sold, grid);
  const cost =
    why === null
      ? costSale(tax.paper.exemption === null ? sold : sold.map(untaxedJob), other.value, grid)
      : null;
  if (cost === null) return failed({ kind: 'stopped', why });
  const loss = -cost.profit;
  return loss > 1e-9 && order.underCostWhy.trim() === '' ? failed({ kind: 'underCost', loss }) : other;
}

// Helpers

interface Changing {
  readonly alternative: Alternative;
  readonly job: PricedJob;
  readonly line: SoldLine;
}

function changedLine(
  { terms }: AskedSale,
  { alternative, job, line }: Changing,
  grid: Grid,
): Result<SoldLine, AlternativeProblem> {
  const written = terms.tax.onPaper;
  if (alternative.kind === 'without') return withOnePrintLess(line, alternative, job, grid, written);
  const pieces = soldPieces(line);
  const { quantity, size } = alternative;
  if (quantity === pieces) return failed({ kind: 'same' });
  const listed = byList(terms, { alternative, job, line });
  if (listed !== null && !listed.ok) return listed;
  if (quantity > pieces) {
    const more = listed?.value ?? withMorePieces(line, { quantity, size }, job.input, grid, written);
    return more === null ? failed({ kind: 'gone' }) : ok(more);
  }
  return ok(listed?.value ?? withFewerPieces(line, quantity, job, grid, written));
}

/** A list that was issued promises its prices to every order: more and fewer pieces pay what it says. */
function byList(
  terms: AskedSale['terms'],
  { alternative, job, line }: Changing,
): Result<SoldLine, AlternativeProblem> | null {
  const resolved = job.costed.laidOut.job.lines.find((one) => one.line.id === line.lineId);
  if (resolved === undefined || alternative.kind !== 'pieces') return null;
  const item = listItem(resolved, { ...terms, jobId: line.jobId });
  if (!item.ok || item.value === null) return null;
  const { quantity, size } = alternative;
  const pieces = soldPieces(line);
  const wanted =
    size !== null && quantity > pieces ? withFurther(line, size, quantity - pieces) : fewerOf(line, quantity);
  const sold = listedLine(item.value, wanted, terms.labels, terms.currency);
  return sold.ok ? ok(onPaper({ ...line, ...sold.value }, terms.tax)) : failed({ kind: 'notListed' });
}

function withFurther({ sizes }: SoldLine, size: string, count: number) {
  const known = sizes.some((one) => one.size === size);
  const more = sizes.map((one) => ({
    size: one.size,
    quantity: one.quantity + (one.size === size ? count : 0),
  }));
  return known ? more : [...more, { size, quantity: count }];
}

/** @returns the first stop that other quantities or prints bring up. */
const stopIn = (jobs: readonly QuotedJob[], grid: Grid): Finding | null =>
  jobs
    .flatMap(({ input }) => judgeJob(input, grid).answer.findings)
    .find((finding) => isStanding(finding) && finding.id !== UNDER_FLOOR) ?? null;
