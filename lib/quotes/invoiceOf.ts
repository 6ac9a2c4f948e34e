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

type Agreed = Pick<Confirmation, 'goods' | 'charges' | 'discount' | 'tax' | 'sums' | 'currency'>;

/** @returns what was agreed comes to with what was charged since, tax taken of it all by the one rule. */
export const sumsWithChanges = (
  { goods, charges, discount, tax, sums, currency }: Agreed,
  changes: Billing['changes'],
): SaleSums =>
  changes.length === 0
    ? sums
    : saleSums({ lines: goods, charges: [...charges, ...changes] }, discount?.amount ?? 0, tax, currency);

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
