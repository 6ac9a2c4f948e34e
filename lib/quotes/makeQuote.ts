import type { Grid } from '@/lib/grid/evaluateGrid';
import { addDays, daysBetween } from '@/shared/days';
import type { Finding } from '@/shared/finding';
import { toMinor } from '@/shared/money';
import type { Alternative } from '@/shared/schemas/order';
import type { Quote } from '@/shared/schemas/orderPapers';
import { alternativeOnPaper } from './alternativeOnPaper';
import { type AskedSale, alternativeSale } from './alternativeSale';
import { askedLine } from './askedLine';
import { costSale, type SaleCost } from './costSale';
import { goodsOf } from './goodsOf';
import { orderSale } from './orderSale';
import { orderTax, soldInput, untaxedJob } from './orderTax';
import { paperHeading } from './paperHeading';
import { type PricedJob, pricedJob } from './pricedJob';
import type { QuoteAsked } from './quoteAsked';
import { quotedRates } from './quotedRates';
import type { AlternativeProblem, QuoteObstacle } from './quoteObstacle';
import { shareOf } from './saleSums';
import type { SoldLine } from './soldLine';

/** All of a quote but what it is given when it goes out: its number, and its maker's risks in words. */
export interface QuoteDraft {
  readonly body: Omit<Quote, 'number' | 'owner'> & { readonly owner: Omit<Quote['owner'], 'risks'> };
  /** Cautions that stand and stops that were passed with a reason. */
  readonly risks: readonly Finding[];
}

export type MadeQuote =
  | { readonly kind: 'ready'; readonly draft: QuoteDraft }
  /** All that stands in the way, at once. */
  | { readonly kind: 'refused'; readonly obstacles: readonly QuoteObstacle[] };

/** A sale that may go out, with what it leaves. */
interface JudgedSale extends AskedSale {
  readonly cost: SaleCost;
}

/** @returns the quote of an order with its prices as they are now, or why there is none. */
export function makeQuote(asked: QuoteAsked, grid: Grid): MadeQuote {
  const { order, customer, day, words } = asked;
  const judged = judgeSale(asked, grid);
  const [first] = asked.jobs;
  if (!('sale' in judged)) return { kind: 'refused', obstacles: judged };
  if (customer === null || first === undefined) return { kind: 'refused', obstacles: customerless(asked) };
  const { workshop } = first.input;
  const { sale, jobs, terms, cost } = judged;
  const offered = order.alternatives.map((alternative) => ({
    alternative,
    other: alternativeSale(judged, alternative, grid),
  }));
  const obstacles = [
    ...customerless(asked),
    ...offered.flatMap(({ alternative, other }) =>
      other.ok ? [] : [cannotOffer(alternative, other.problem)],
    ),
  ];
  if (obstacles.length > 0) return { kind: 'refused', obstacles };
  const heading = paperHeading({ ...asked, customer, workshop });
  const depositShare = order.depositShare ?? workshop.quoting.depositShare;
  const deposit = shareOf(sale.sums.total, depositShare);
  const { currency } = heading;
  return {
    kind: 'ready',
    draft: {
      body: {
        ...heading,
        goods: jobs.flatMap(({ jobId, costed }) =>
          costed.laidOut.job.lines.flatMap((line) => {
            const sold = sale.lines.find((one) => one.jobId === jobId && one.lineId === line.line.id);
            if (sold === undefined) return [];
            const goods = goodsOf(jobId, line, { without: [], words, locale: heading.locale });
            return [{ ...goods, sizes: [...sold.sizes], start: sold.start }];
          }),
        ),
        charges: sale.charges,
        discount: sale.discount,
        tax: terms.tax.paper,
        sums: sale.sums,
        validUntil: addDays(day, order.validDays ?? workshop.quoting.validDays),
        wantedOn: order.wantedOn,
        depositShare,
        deposit,
        balance: sale.sums.total - deposit,
        dates: { ...asked.dates, leadDays: order.leadDays ?? asked.dates.leadDays },
        revisionsIncluded: order.revisionsIncluded ?? workshop.quoting.revisionsIncluded,
        terms: [...asked.terms],
        alternatives: offered.flatMap(({ alternative, other }) =>
          other.ok
            ? [alternativeOnPaper({ alternative, asked: judged, other: other.value, depositShare })]
            : [],
        ),
        owner: {
          fullCost: toMinor(cost.fullCost, currency),
          floor: toMinor(cost.floor, currency),
          profit: toMinor(cost.profit, currency),
          margin: cost.margin,
          payPerHour: cost.payPerHour === null ? null : toMinor(cost.payPerHour, currency),
          underCostWhy: order.underCostWhy,
          rates: quotedRates(jobs).map(({ isTypical: _, ...rate }) => rate),
        },
      },
      risks: jobs.flatMap(({ findings }) => findings.filter(isRisk)),
    },
  };
}

/** @returns what an order is asked for now and what that leaves, or all that stands in the way. */
export function judgeSale(asked: QuoteAsked, grid: Grid): JudgedSale | readonly QuoteObstacle[] {
  const { order, day } = asked;
  const obstacles: QuoteObstacle[] = [...ordered(asked)];
  const tax = orderTax(asked);
  if (!tax.ok) return [...obstacles, ...tax.problem];
  const currency = asked.jobs[0]?.input.workshop.currency ?? '';
  const terms = { order, versions: asked.versions, day, words: asked.words, currency, tax: tax.value };
  const jobs: PricedJob[] = [];
  for (const quoted of asked.jobs) {
    const { jobId, input } = quoted;
    const priced = pricedJob(jobId, soldInput(quoted, asked, tax.value.channelId), grid);
    if (priced.ok) jobs.push(priced.value);
    else obstacles.push({ kind: 'stopped', jobId, name: input.job.name, why: priced.problem });
  }
  const lines: SoldLine[] = [];
  for (const { jobId, costed } of jobs) {
    for (const line of costed.laidOut.job.lines) {
      const sold = askedLine(line, { ...terms, jobId });
      if (sold.ok) lines.push(sold.value);
      else obstacles.push(sold.problem);
    }
  }
  if (obstacles.length > 0 || lines.length === 0) return obstacles;
  const sale = orderSale(lines, order, tax.value, currency);
  if (!sale.ok) return [sale.problem];
  const costed = tax.value.paper.exemption === null ? jobs : jobs.map(untaxedJob);
  const cost = costSale(costed, sale.value, grid);
  if (cost === null) return [{ kind: 'asksNothing' }];
  if (cost.profit < -1e-9 && order.underCostWhy.trim() === '')
    return [{ kind: 'underCost', fullCost: cost.fullCost, profit: cost.profit }];
  return { jobs, sale: sale.value, terms, cost };
}

// Helpers

const isRisk = ({ severity }: Finding): boolean => severity !== 'note';

const customerless = ({ customer }: QuoteAsked): readonly QuoteObstacle[] =>
  customer === null || customer.name.trim() === '' || customer.erasedOn !== null
    ? [{ kind: 'noCustomer' }]
    : [];

const cannotOffer = ({ id }: Alternative, problem: AlternativeProblem): QuoteObstacle => ({
  kind: 'alternative',
  alternativeId: id,
  problem,
});

function ordered(asked: QuoteAsked): readonly QuoteObstacle[] {
  const { order, jobs, day } = asked;
  const gone = order.jobIds.filter((id) => !jobs.some(({ jobId }) => jobId === id));
  const pieces = jobs
    .flatMap(({ input }) => input.job.lines.flatMap(({ quantities }) => quantities))
    .reduce((sum, { quantity }) => sum + quantity, 0);
  const isPast = order.wantedOn !== null && daysBetween(day, order.wantedOn) < 0;
  return [
    ...customerless(asked),
    ...gone.map((jobId): QuoteObstacle => ({ kind: 'jobGone', jobId })),
    ...(pieces > 0 || gone.length > 0 ? [] : [{ kind: 'nothingOrdered' } as const]),
    ...(isPast ? [{ kind: 'wantedInPast', wantedOn: order.wantedOn ?? '' } as const] : []),
  ];
}
