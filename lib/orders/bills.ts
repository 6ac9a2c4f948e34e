import type { SaleSums } from '@/shared/schemas/paperParts';
import type { Happening, OutOf } from './orderFacts';

/** An invoice in force, and what of it was given back. */
export interface Bill {
  readonly paper: OutOf<'invoice'>;
  /** Credit notes in force that correct it: one whose invoice does not count takes from nothing. */
  readonly credits: readonly OutOf<'creditNote'>[];
}

/** @returns the invoices in force, in the order they went out in. */
export function billsOf(happened: readonly Happening[]): readonly Bill[] {
  const credits = happened.flatMap((one) => (one.kind === 'creditNote' && !one.withdrawn ? [one] : []));
  return happened
    .flatMap((one) => (one.kind === 'invoice' && !one.withdrawn ? [one] : []))
    .map((paper) => ({ paper, credits: credits.filter(({ body }) => body.invoice.paperId === paper.id) }));
}

/** @returns what was given back. Written with a minus or without, a credit note takes from what is owed. */
export function creditedOf({ credits }: Bill): SaleSums {
  const sum = (of: keyof SaleSums) => credits.reduce((all, { body }) => all + Math.abs(body.sums[of]), 0);
  return { subtotal: sum('subtotal'), tax: sum('tax'), total: sum('total') };
}

/** @returns what of it was not given back. */
export function leftOf(bill: Bill): SaleSums {
  const [{ sums }, credited] = [bill.paper.body, creditedOf(bill)];
  const less = (of: keyof SaleSums) => sums[of] - credited[of];
  return { subtotal: less('subtotal'), tax: less('tax'), total: less('total') };
}

/** Whether something of it was not given back, so that it asks for money still. */
export const isAsking = (bill: Bill): boolean => leftOf(bill).subtotal > 0;

/** Whether it bills goods, and not changes of them alone. */
export const isOfGoods = ({ paper }: Bill): boolean => paper.body.goods.length > 0;

/** @returns the bills that ask for what another one asks for as well: devices wrote them that had not heard of each other. */
export function doubledBills(bills: readonly Bill[]): readonly Bill[] {
  const asking = bills.filter(isAsking);
  return asking.filter((bill) => asking.some((other) => other !== bill && isSharing(bill, other)));
}

/**
 * Whether the goods may go out before the rest is paid: they are billed, of an invoice that is due later than it was
 * written something is left, and what is left of all others has come.
 */
export function isOnCredit(happened: readonly Happening[], receivedMinor: number): boolean {
  const bills = billsOf(happened);
  const dueLater = bills.filter(({ paper: { body } }) => body.dueOn !== null && body.dueOn > body.issuedOn);
  const left = (some: readonly Bill[]) => some.reduce((sum, bill) => sum + leftOf(bill).total, 0);
  if (!bills.some((bill) => isOfGoods(bill) && isAsking(bill))) return false;
  return left(dueLater) > 0 && receivedMinor >= left(bills.filter((bill) => !dueLater.includes(bill)));
}

/**
 * A bill that was given back whole while another one asks for a part of the same was one too many: what it alone named
 * is billed nowhere. Any other that was given back stays the bill of what it named, which nobody owes any more.
 *
 * @returns the entries of the changes that bills in force stand for
 */
export function billedChanges(bills: readonly Bill[]): ReadonlySet<string> {
  const sharing = withSharing(bills.filter(isAsking), bills);
  const standing = bills.filter((bill) => isAsking(bill) || !sharing.includes(bill));
  return new Set(standing.flatMap(({ paper }) => paper.body.changeIds));
}

// Helpers

/** @returns some bills, those that bill a part of the same, those that bill a part of what these do, and so on. */
function withSharing(some: readonly Bill[], bills: readonly Bill[]): readonly Bill[] {
  const more = bills.filter((bill) => !some.includes(bill) && some.some((one) => isSharing(bill, one)));
  return more.length === 0 ? some : withSharing([...some, ...more], bills);
}

function isSharing({ paper: one }: Bill, { paper: other }: Bill): boolean {
  return (
    one.body.changeIds.some((id) => other.body.changeIds.includes(id)) ||
    one.body.goods.some(({ jobId, lineId }) =>
      other.body.goods.some((goods) => goods.jobId === jobId && goods.lineId === lineId),
    )
  );
}
