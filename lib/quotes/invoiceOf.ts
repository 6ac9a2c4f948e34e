import type { Confirmation, Invoice } from '@/shared/schemas/orderPapers';
import type { SaleSums } from '@/shared/schemas/paperParts';
import type { Issued } from './followingPapers';
import { headingLike } from './paperHeading';
import { saleSums } from './saleSums';

interface Billing {
  /** What was charged for changes after the approval, whole minor units as prices are written. */
  readonly changes: readonly { readonly what: string; readonly amount: number }[];
  /** What came so far, less what went back. */
  readonly paid: number;
  readonly suppliedOn: string | null;
  readonly dueOn: string | null;
}

/**
 * What was agreed comes to with what was charged since. A discount was agreed on what there was, so that none of it is
 * taken off a change; tax that is rounded once is taken of the whole paper.
 */
export function sumsWithChanges(
  { sums, tax, currency }: Pick<Confirmation, 'sums' | 'tax' | 'currency'>,
  changes: Billing['changes'],
): SaleSums {
  if (changes.length === 0) return sums;
  const taxed = (charges: Billing['changes']) => saleSums({ lines: [], charges }, 0, tax, currency);
  if (tax.rounding === 'document') return taxed([{ what: '', amount: sums.subtotal }, ...changes]);
  const added = taxed(changes);
  return {
    subtotal: sums.subtotal + added.subtotal,
    tax: sums.tax + added.tax,
    total: sums.total + added.total,
  };
}

/** @returns the bill of what was confirmed with what was changed since; `due` is below 0 where too much came. */
export function invoiceOf(
  confirmed: Omit<Confirmation, 'accepted' | 'quote'>,
  { changes, paid, suppliedOn, dueOn }: Billing,
  issued: Issued,
): Invoice {
  const { goods, discount, tax, terms } = confirmed;
  const charges = [...confirmed.charges, ...changes.map(({ what, amount }) => ({ what, amount }))];
  const sums = sumsWithChanges(confirmed, changes);
  return {
    ...headingLike(confirmed, issued),
    ...{ goods, charges, discount, tax, sums, terms, suppliedOn, dueOn, paid },
    due: sums.total - paid,
  };
}
