import { headingLike, type PaperHeading } from '@/lib/quotes/paperHeading';
import { moneyOfTerms, termsWith } from '@/lib/quotes/termsOfQuote';
import { failed, ok, type Result } from '@/shared/result';
import type { PaperNumber } from '@/shared/schemas/happened';
import type { Payment } from '@/shared/schemas/orderEvents';
import type { Confirmation, PaymentRequest, Quote, Receipt } from '@/shared/schemas/orderPapers';

/** What a paper is given when it goes out. */
export interface Issued {
  readonly number: PaperNumber;
  readonly day: string;
}

/** A quote that went out. */
interface IssuedQuote {
  readonly paperId: string;
  readonly quote: Quote;
}

interface Acceptance {
  /** Null for what was asked. */
  readonly alternativeId: string | null;
  readonly by: string;
  readonly on: string;
}

/** @returns the confirmation of what was accepted, by the quote alone: nothing is priced again. */
export function confirmationOf(
  { paperId, quote }: IssuedQuote,
  { alternativeId, by, on }: Acceptance,
  issued: Issued,
): Result<Confirmation, { readonly kind: 'noSuchAlternative' }> {
  const chosen = quote.alternatives.find(({ id }) => id === alternativeId);
  if (alternativeId !== null && chosen === undefined) return failed({ kind: 'noSuchAlternative' });
  const { tax, dates } = quote;
  const { terms } = quote.owner;
  const total = chosen?.sums.total ?? quote.sums.total;
  const deposit = chosen?.deposit ?? quote.deposit;
  return ok({
    ...headingLike(quote, issued),
    ...{ tax, dates },
    terms: termsWith(terms, moneyOfTerms(quote, terms, { total, deposit })),
    goods: chosen === undefined ? quote.goods : goodsOfChoice(quote, chosen.priced.lines),
    charges: chosen?.priced.charges ?? quote.charges,
    discount: chosen === undefined ? quote.discount : chosen.priced.discount,
    sums: chosen?.sums ?? quote.sums,
    deposit,
    balance: total - deposit,
    accepted: { by, on, choice: chosen?.label ?? '' },
    quote: { paperId, number: quote.number },
  });
}

/** @returns a quote as if what was chosen of it had been asked: to be held against the job that became that. */
export function quoteAsChosen(quote: Quote, alternativeId: string | null): Quote {
  const chosen = quote.alternatives.find(({ id }) => id === alternativeId);
  if (chosen === undefined) return quote;
  const { priced, sums, deposit } = chosen;
  const { charges, discount } = priced;
  return {
    ...quote,
    ...{ goods: goodsOfChoice(quote, priced.lines), charges, discount, sums, deposit },
    ...{ balance: sums.total - deposit, alternatives: [] },
  };
}

/** What was agreed and what of it is paid, whole minor units. */
interface Agreed extends PaperHeading {
  readonly sums: Quote['sums'];
  readonly deposit: number;
}

/** All that is asked for has come already. */
interface NothingDue {
  readonly kind: 'nothingDue';
}

/**
 * Asks for the rest of the deposit, or for the rest of all.
 *
 * @param paid what came so far, less what went back
 */
export function paymentRequestOf(
  agreed: Agreed,
  {
    what,
    paid,
    dueOn,
  }: { readonly what: 'deposit' | 'balance'; readonly paid: number; readonly dueOn: string | null },
  issued: Issued,
): Result<PaymentRequest, NothingDue> {
  const { total } = agreed.sums;
  const amount = (what === 'deposit' ? agreed.deposit : total) - paid;
  return amount <= 0
    ? failed({ kind: 'nothingDue' })
    : ok({ ...headingLike(agreed, issued), what, amount, total, paid, dueOn });
}

/**
 * @param paid what came in all, this payment with it
 * @returns what says that money came; `left` is below 0 where more came than was asked
 */
export const receiptOf = (
  agreed: Agreed,
  { entryId, payment, paid }: { readonly entryId: string; readonly payment: Payment; readonly paid: number },
  issued: Issued,
): Receipt => ({
  ...headingLike(agreed, issued),
  payment: { entryId, day: payment.day, amount: payment.amountMinor, way: payment.way },
  total: agreed.sums.total,
  paid,
  left: agreed.sums.total - paid,
});

// Helpers

function goodsOfChoice(
  { goods }: Quote,
  lines: Quote['alternatives'][number]['priced']['lines'],
): Confirmation['goods'] {
  return lines.flatMap(({ jobId, lineId, sizes, start, without }) =>
    goods
      .filter((one) => one.jobId === jobId && one.lineId === lineId)
      .map((one) => ({
        ...one,
        prints: one.prints.filter(({ placementId }) => !without.includes(placementId)),
        sizes,
        start,
      })),
  );
}
