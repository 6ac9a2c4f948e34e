import type { Confirmation, Invoice } from '@/shared/schemas/orderPapers';
import type { Issued } from './followingPapers';
import { headingLike } from './paperHeading';
import { type Changes, sumsWithChanges } from './saleSums';

interface Billing {
  /** What was charged for changes after the approval, whole minor units as prices are written. */
  readonly changes: Changes;
  /** What came so far, less what went back. */
  readonly paid: number;
  readonly suppliedOn: string | null;
  readonly dueOn: string | null;
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
