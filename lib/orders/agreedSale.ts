import { taxAdded } from '@/lib/price/tax/taxOf';
import type { MinorUnits } from '@/shared/money';
import type { OutOf } from './orderFacts';

/** What a customer said yes to. */
export interface AgreedSale {
  readonly quote: OutOf<'quote'>;
  /** The alternative that was chosen; null for what was asked. */
  readonly alternativeId: string | null;
  /** Without tax, where it is added. */
  readonly subtotalMinor: number;
  readonly totalMinor: number;
  readonly depositMinor: number;
}

/** @returns null where the quote has no such alternative */
export function agreedSale(quote: OutOf<'quote'>, alternativeId: string | null): AgreedSale | null {
  const { body } = quote;
  const chosen = alternativeId === null ? body : body.alternatives.find(({ id }) => id === alternativeId);
  if (chosen === undefined) return null;
  const { subtotal, total } = chosen.sums;
  return { quote, alternativeId, subtotalMinor: subtotal, totalMinor: total, depositMinor: chosen.deposit };
}

/**
 * What changes add to a sum, written as the prices of the quote are. Where tax is rounded once for a paper, it is
 * taken of the whole paper with them, so that a cent is neither lost nor made.
 *
 * @param onto what stands on the paper before them, without tax; 0 for changes that come on a paper of their own
 */
export function changesWithTax(
  { body }: OutOf<'quote'>,
  changesMinor: readonly number[],
  onto: number,
): number {
  const { mode, share, rounding } = body.tax;
  const sum = changesMinor.reduce((total, amount) => total + amount, 0);
  if (mode !== 'added') return sum;
  const taxed = (amount: number) => taxAdded(amount as MinorUnits, share).with;
  return rounding === 'line'
    ? changesMinor.reduce((total, amount) => total + taxed(amount), 0)
    : taxed(onto + sum) - taxed(onto);
}
