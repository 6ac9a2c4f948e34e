import type { Grid } from '@/lib/grid/evaluateGrid';
import { daysBetween } from '@/shared/days';
import type { AskedSale } from './alternatives/alternativeSale';
import { askedLines } from './askedLines';
import { costSale, type SaleCost } from './costSale';
import { orderSale } from './orderSale';
import { orderTax, untaxedJob } from './orderTax';
import { labelsOfOrder } from './paperHeading';
import type { QuoteAsked } from './quoteAsked';
import type { QuoteObstacle } from './quoteObstacle';

/** A sale that may go out, with what it leaves. */
export interface AskedJudged extends AskedSale {
  readonly cost: SaleCost;
}

/** @returns what an order is asked for now and what that leaves, or all that stands in the way. */
export function judgeSale(asked: QuoteAsked, grid: Grid): AskedJudged | readonly QuoteObstacle[] {
  const { order, day } = asked;
  const obstacles: QuoteObstacle[] = [...ordered(asked)];
  const tax = orderTax(asked);
  if (!tax.ok) return [...obstacles, ...tax.problem];
  const currency = asked.jobs[0]?.input.workshop.currency ?? '';
  const terms = {
    ...{ order, versions: asked.versions, day, currency },
    tax: tax.value,
    labels: labelsOfOrder(asked),
  };
  const { jobs, lines, inTheWay } = askedLines(asked, terms, grid);
  obstacles.push(...inTheWay);
  if (lines.length > MOST_LINES)
    obstacles.push({ kind: 'tooManyLines', lines: lines.length, most: MOST_LINES });
  if (obstacles.length > 0 || lines.length === 0) return obstacles;
  const sale = orderSale(lines, order, tax.value, currency);
  if (!sale.ok) return [sale.problem];
  const costed = tax.value.paper.exemption === null ? jobs : jobs.map(untaxedJob);
  const cost = costSale(costed, sale.value, grid);
  if (cost === null)
    return jobs.map(({ jobId, input }) => ({ kind: 'stopped', jobId, name: input.job.name, why: null }));
  if (cost.profit < -1e-9 && order.underCostWhy.trim() === '')
    return [{ kind: 'underCost', fullCost: cost.fullCost, profit: cost.profit }];
  return { jobs, sale: sale.value, terms, cost };
}

/** @returns the obstacle of an order that nobody is named for. */
export const customerless = ({ customer }: QuoteAsked): readonly QuoteObstacle[] =>
  customer === null || customer.name.trim() === '' || customer.erasedOn !== null
    ? [{ kind: 'noCustomer' }]
    : [];

// Helpers

/** What a paper holds. */
const MOST_LINES = 48;

function ordered(asked: QuoteAsked): readonly QuoteObstacle[] {
  const { order, jobs, day } = asked;
  const gone = order.jobIds.filter((id) => !jobs.some(({ jobId }) => jobId === id));
  const pieces = jobs
    .flatMap(({ input }) => input.job.lines.flatMap(({ quantities }) => quantities))
    .reduce((sum, { quantity }) => sum + quantity, 0);
  const past = [order.wantedOn, ...jobs.map(({ input }) => order.wantedOn ?? input.job.wantedOn)].find(
    (wanted) => wanted !== null && daysBetween(day, wanted) < 0,
  );
  return [
    ...customerless(asked),
    ...gone.map((jobId): QuoteObstacle => ({ kind: 'jobGone', jobId })),
    ...(pieces > 0 || gone.length > 0 ? [] : [{ kind: 'nothingOrdered' } as const]),
    ...(past == null ? [] : [{ kind: 'wantedInPast', wantedOn: past } as const]),
  ];
}
