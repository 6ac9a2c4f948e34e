import type { Grid } from '@/lib/grid/evaluateGrid';
import { leavesEnough, type MovedRate, movedRates } from '@/lib/priceLists/movedRates';
import { daysBetween } from '@/shared/days';
import { type MinorUnits, toMinor } from '@/shared/money';
import type { Quote } from '@/shared/schemas/orderPapers';
import type { SaleSums } from '@/shared/schemas/paperParts';
import { costSale } from './costSale';
import { type AskedJudged, judgeSale } from './judgeSale';
import { untaxedJob } from './orderTax';
import type { QuoteAsked } from './quoteAsked';
import { quotedRates } from './quotedRates';
import type { QuoteObstacle } from './quoteObstacle';
import { type SoldLine, soldPieces } from './soldLine';

export type QuoteStanding =
  | {
      readonly kind: 'compared';
      /** What was quoted leaves what it was made for, or what it left then, whichever is less. */
      readonly holds: boolean;
      readonly isExpired: boolean;
      readonly moved: readonly MovedRate[];
      readonly marginThen: number;
      readonly marginNow: number;
      /** Whole minor units. */
      readonly profitNow: MinorUnits;
      readonly quoted: SaleSums;
      /** What the same order comes to now. */
      readonly now: SaleSums;
    }
  /** The order has other goods, sizes or quantities by now. */
  | { readonly kind: 'otherGoods' }
  /** Prices stand otherwise to tax by now, or are in another money. */
  | { readonly kind: 'otherTerms' }
  /** It could not be quoted today. */
  | { readonly kind: 'refused'; readonly obstacles: readonly QuoteObstacle[] };

/** Holds a quote that went out against the same one made today: what it says goes through today's sums. */
export function stillHolds(quote: Quote, today: QuoteAsked, grid: Grid): QuoteStanding {
  const now = judgeSale(withReason(today), grid);
  if (!('sale' in now)) return { kind: 'refused', obstacles: now };
  const { paper } = now.terms.tax;
  if (paper.mode !== quote.tax.mode || now.terms.currency !== quote.currency) return { kind: 'otherTerms' };
  const lines = quote.goods.map((goods) => quotedLine(goods));
  if (!isSameGoods(lines, now)) return { kind: 'otherGoods' };
  const jobs = quote.tax.exemption === null ? now.jobs : now.jobs.map(untaxedJob);
  const { charges, discount, sums } = quote;
  const cost = costSale(jobs, { lines, charges, discount, sums }, grid);
  if (cost === null) return { kind: 'refused', obstacles: [] };
  return {
    kind: 'compared',
    holds: leavesEnough(cost.margin, quote.owner.margin, targetOf(now)),
    isExpired: daysBetween(today.day, quote.validUntil) < 0,
    moved: movedRates(quote.owner.rates, quotedRates(now.jobs)),
    marginThen: quote.owner.margin,
    marginNow: cost.margin,
    profitNow: toMinor(cost.profit, quote.currency),
    quoted: sums,
    now: now.sale.sums,
  };
}

// Helpers

/** A comparison is to show a loss, not to stop at it. */
const withReason = (asked: QuoteAsked): QuoteAsked => ({
  ...asked,
  order: { ...asked.order, underCostWhy: asked.order.underCostWhy.trim() || 'compared' },
});

const quotedLine = ({ jobId, lineId, name, sizes, start }: Quote['goods'][number]): SoldLine => ({
  ...{ jobId, lineId, name, charges: [], without: [] },
  sizes: sizes.map(({ size, quantity, each, total }) => ({
    ...{ size, quantity },
    each: each as MinorUnits,
    total: total as MinorUnits,
  })),
  start: start as MinorUnits,
});

/** Charges of a line stand among those of the order on paper: its pieces alone tell whether it is the same. */
const isSameGoods = (quoted: readonly SoldLine[], { sale }: AskedJudged): boolean =>
  quantitiesOf(quoted) === quantitiesOf(sale.lines);

/** A size may stand twice on a paper, at two prices. */
const quantitiesOf = (lines: readonly SoldLine[]): string =>
  lines
    .flatMap(({ jobId, lineId, sizes }) =>
      [...new Set(sizes.map(({ size }) => size))].map((size) => {
        const rows = sizes.filter((one) => one.size === size);
        return JSON.stringify([jobId, lineId, size, soldPieces({ sizes: rows })]);
      }),
    )
    .toSorted()
    .join();

/** The least margin that one of the jobs is made for. */
const targetOf = ({ jobs }: AskedJudged): number =>
  Math.min(...jobs.map(({ costed }) => costed.laidOut.job.rates.targetMargin.value));
