import type { SaleSums } from '@/shared/schemas/paperParts';
import type { Happening, OutOf } from './orderFacts';

/** An invoice in force, and what of it was given back. */
interface Bill {
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
