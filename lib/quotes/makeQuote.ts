import type { Grid } from '@/lib/grid/evaluateGrid';
import { figuresOf } from '@/lib/papers/words/figures';
import { addDays } from '@/shared/days';
import type { Finding } from '@/shared/finding';
import { toMinor } from '@/shared/money';
import type { Alternative } from '@/shared/schemas/order';
import type { Quote } from '@/shared/schemas/orderPapers';
import { alternativeOnPaper } from './alternatives/alternativeOnPaper';
import { alternativeSale } from './alternatives/alternativeSale';
import { goodsOf } from './goodsOf';
import { jobsAsBegun } from './jobsAsBegun';
import { customerless, judgeSale } from './judgeSale';
import { paperHeading } from './paperHeading';
import type { QuoteAsked } from './quoteAsked';
import { datesOfOrder } from './quoteDates';
import { quotedRates } from './quotedRates';
import { quotedWork } from './quotedWork';
import type { AlternativeProblem, QuoteObstacle } from './quoteObstacle';
import { shareOf } from './saleSums';
import { termsOfQuote, termsWith } from './termsOfQuote';
import { wantedOnOf } from './wantedOnOf';

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

/** @returns the quote of an order with its prices as they are now, or why there is none. */
export function makeQuote(asked: QuoteAsked, grid: Grid): MadeQuote {
  const { order, customer, day } = asked;
  const judged = judgeSale(asked, grid);
  const [first] = asked.jobs;
  const begun = jobsAsBegun(asked);
  if (!('sale' in judged)) return { kind: 'refused', obstacles: [...begun, ...judged] };
  if (customer === null || first === undefined) return { kind: 'refused', obstacles: customerless(asked) };
  const { workshop } = first.input;
  const { sale, jobs, terms, cost } = judged;
  const offered = order.alternatives.map((alternative) => ({
    alternative,
    other: alternativeSale(judged, alternative, grid),
  }));
  const obstacles = [
    ...begun,
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
  const figures = figuresOf(heading);
  const balance = sale.sums.total - deposit;
  const validUntil = addDays(day, order.validDays ?? workshop.quoting.validDays);
  const dates = datesOfOrder({ ...asked, validUntil }, jobs, workshop);
  const revisionsIncluded = order.revisionsIncluded ?? workshop.quoting.revisionsIncluded;
  const quoted = termsOfQuote({
    ...{ heading, workshop, order, customer, jobs, labels: terms.labels, sums: sale.sums },
    ...{ deposit, balance, dates, revisionsIncluded },
  });
  return {
    kind: 'ready',
    draft: {
      body: {
        ...heading,
        goods: jobs.flatMap(({ jobId, costed }) =>
          costed.laidOut.job.lines.flatMap((line) => {
            const sold = sale.lines.find((one) => one.jobId === jobId && one.lineId === line.line.id);
            if (sold === undefined) return [];
            const goods = goodsOf(jobId, line, { without: [], labels: terms.labels, locale: heading.locale });
            return [{ ...goods, sizes: [...sold.sizes], start: sold.start }];
          }),
        ),
        charges: sale.charges,
        discount: sale.discount,
        tax: terms.tax.paper,
        sums: sale.sums,
        validUntil,
        wantedOn: wantedOnOf(
          order,
          asked.jobs.map(({ input }) => input.job),
        ),
        depositShare,
        deposit,
        balance,
        dates,
        revisionsIncluded,
        terms: termsWith(quoted),
        alternatives: offered.flatMap(({ alternative, other }) =>
          other.ok
            ? [alternativeOnPaper({ alternative, asked: judged, other: other.value, depositShare, figures })]
            : [],
        ),
        owner: {
          fullCost: toMinor(cost.fullCost, currency),
          floor: toMinor(cost.floor, currency),
          profit: toMinor(cost.profit, currency),
          margin: cost.margin,
          payPerHour: cost.payPerHour === null ? null : toMinor(cost.payPerHour, currency),
          underCostWhy: order.underCostWhy.trim(),
          terms: quoted,
          work: quotedWork(
            jobs,
            offered.flatMap(({ alternative, other }) =>
              other.ok ? [{ alternative, sale: other.value }] : [],
            ),
            grid,
          ),
          rates: quotedRates(jobs).map(({ isTypical: _, ...rate }) => rate),
        },
      },
      risks: jobs.flatMap(({ findings }) => findings.filter(isRisk)),
    },
  };
}

// Helpers

const isRisk = ({ severity }: Finding): boolean => severity !== 'note';

const cannotOffer = ({ id }: Alternative, problem: AlternativeProblem): QuoteObstacle => ({
  kind: 'alternative',
  alternativeId: id,
  problem,
});
