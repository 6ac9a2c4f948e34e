import { headingLike } from '@/lib/quotes/paperHeading';
import { type Changes, noSums, sumsWithChanges } from '@/lib/quotes/saleSums';
import { duesOfTerms, termsOfBill } from '@/lib/quotes/termsOfQuote';
import type { Confirmation, Invoice, Quote } from '@/shared/schemas/orderPapers';
import type { Issued } from './followingPapers';

type Confirmed = Omit<Confirmation, 'accepted' | 'quote' | 'terms'>;

interface Billing {
  /** What was charged for changes after the approval, whole minor units as prices are written. */
  readonly changes: readonly (Changes[number] & { readonly entryId: string })[];
  /** What came so far, less what went back. */
  readonly paid: number;
  /** What is left of the invoices in force beside it, with tax: what came pays them first. 0 where there are none. */
  readonly earlier: number;
  readonly suppliedOn: string | null;
  readonly dueOn: string | null;
  /** Of the quote that was accepted. */
  readonly terms: Quote['owner']['terms'];
}

/**
 * @returns the bill of what was confirmed with what was changed since; `due` is below 0 where too much came and no
 * other invoice is in force
 */
export function invoiceOf(
  confirmed: Confirmed,
  { changes, paid: came, earlier, suppliedOn, dueOn, terms }: Billing,
  issued: Issued,
): Invoice {
  const { goods, discount, tax } = confirmed;
  const charges = [...confirmed.charges, ...changes.map(({ what, amount }) => ({ what, amount }))];
  const sums = sumsWithChanges(confirmed, changes);
  const paid = earlier === 0 ? came : Math.max(0, Math.min(came - earlier, sums.total));
  const due = sums.total - paid;
  const dues = { total: sums.total, depositLeft: confirmed.deposit - paid, due, dueOn, suppliedOn };
  return {
    ...headingLike(confirmed, issued),
    ...{ goods, charges, discount, tax, sums, suppliedOn, dueOn, paid, due },
    changeIds: changes.map(({ entryId }) => entryId),
    terms: termsOfBill(terms, duesOfTerms(confirmed, { ...dues, issuedOn: issued.day })),
  };
}

/** @returns the bill of what was changed alone, taxed as what was confirmed, where an invoice of that is in force. */
export const changesInvoiceOf = (confirmed: Confirmed, billing: Billing, issued: Issued): Invoice =>
  invoiceOf(
    { ...confirmed, goods: [], charges: [], discount: null, sums: noSums, deposit: 0 },
    billing,
    issued,
  );
