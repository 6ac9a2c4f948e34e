import type { Confirmation, Invoice, Quote } from '@/shared/schemas/orderPapers';
import type { Issued } from './followingPapers';
import { headingLike } from './paperHeading';
import { type Changes, sumsWithChanges } from './saleSums';
import { duesOfTerms, termsWith } from './termsOfQuote';

interface Billing {
  /** What was charged for changes after the approval, whole minor units as prices are written. */
  readonly changes: Changes;
  /** What came so far, less what went back. */
  readonly paid: number;
  readonly suppliedOn: string | null;
  readonly dueOn: string | null;
  /** Of the quote that was accepted. */
  readonly terms: Quote['owner']['terms'];
}

/** @returns the bill of what was confirmed with what was changed since; `due` is below 0 where too much came. */
export function invoiceOf(
  confirmed: Omit<Confirmation, 'accepted' | 'quote' | 'terms'>,
  { changes, paid, suppliedOn, dueOn, terms }: Billing,
  issued: Issued,
): Invoice {
  const { goods, discount, tax } = confirmed;
  const charges = [...confirmed.charges, ...changes.map(({ what, amount }) => ({ what, amount }))];
  const sums = sumsWithChanges(confirmed, changes);
  const due = sums.total - paid;
  const dues = { total: sums.total, depositLeft: confirmed.deposit - paid, due, dueOn, suppliedOn };
  return {
    ...headingLike(confirmed, issued),
    ...{ goods, charges, discount, tax, sums, suppliedOn, dueOn, paid, due },
    terms: termsWith(terms, duesOfTerms(confirmed, { ...dues, issuedOn: issued.day })),
  };
}
