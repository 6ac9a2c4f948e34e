import type { Grid } from '@/lib/grid/evaluateGrid';
import { fromMinor } from '@/shared/money';
import { askedLines } from './askedLines';
import { orderTax } from './orderTax';
import { labelsOfOrder } from './paperHeading';
import type { QuoteAsked } from './quoteAsked';
import { shareOf } from './saleSums';
import { lineTotal } from './soldLine';

interface RushCharge {
  /** Currency units, as the way of selling writes prices; null where the price of some piece is not known. */
  readonly amount: number | null;
  readonly currency: string;
}

/**
 * What an order is charged for haste.
 *
 * @param share of what all its pieces come to, 0 or more
 */
export function rushCharge(forDay: QuoteAsked, grid: Grid, share: number): RushCharge {
  const asked = forAnyDay(forDay);
  const { order, versions, day } = asked;
  const currency = asked.jobs[0]?.input.workshop.currency ?? '';
  const unknown = { amount: null, currency };
  // A charge is typed as prices are written, also to whoever pays no tax.
  const tax = orderTax({ ...asked, order: { ...order, exempt: false } });
  if (!tax.ok || asked.jobs.length < order.jobIds.length) return unknown;
  const terms = { order, versions, day, currency, tax: tax.value, labels: labelsOfOrder(asked) };
  const { lines, inTheWay } = askedLines(asked, terms, grid);
  if (inTheWay.length > 0 || lines.length === 0) return unknown;
  const pieces = lines.reduce((sum, line) => sum + lineTotal(line), 0);
  return { amount: fromMinor(shareOf(pieces, share), currency), currency };
}

// Helpers

/** A day that is hard to keep stops a price, but its pieces cost the same: it is for such days that haste is charged. */
const forAnyDay = (asked: QuoteAsked): QuoteAsked => ({
  ...asked,
  order: { ...asked.order, wantedOn: null },
  jobs: asked.jobs.map(({ jobId, input }) => ({
    jobId,
    input: { ...input, job: { ...input.job, wantedOn: null } },
  })),
});
