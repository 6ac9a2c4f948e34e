import { taxAdded } from '@/lib/price/tax/taxOf';
import type { MinorUnits } from '@/shared/money';
import type { OutOf } from './orderFacts';

/** What a customer said yes to. */
export interface AgreedSale {
  readonly quote: OutOf<'quote'>;
  /** The alternative that was chosen; null for what was asked. */
  readonly alternativeId: string | null;
  readonly totalMinor: number;
  readonly depositMinor: number;
}

/** @returns null where the quote has no such alternative */
export function agreedSale(quote: OutOf<'quote'>, alternativeId: string | null): AgreedSale | null {
  const { body } = quote;
  const chosen = alternativeId === null ? body : body.alternatives.find(({ id }) => id === alternativeId);
  if (chosen === undefined) return null;
  return { quote, alternativeId, totalMinor: chosen.sums.total, depositMinor: chosen.deposit };
}

/** @returns what a change adds to the total: its amount is written as the prices of the quote are. */
export function changeWithTax({ body }: OutOf<'quote'>, amountMinor: number): number {
  const { mode, share, exemption } = body.tax;
  return mode === 'added' && exemption === null
    ? taxAdded(amountMinor as MinorUnits, share).with
    : amountMinor;
}
