import type { SaleSums } from '@/shared/schemas/paperParts';
import type { OutOf } from './orderFacts';

/** What a customer said yes to. */
export interface AgreedSale {
  readonly quote: OutOf<'quote'>;
  /** The alternative that was chosen; null for what was asked. */
  readonly alternativeId: string | null;
  readonly sums: SaleSums;
  readonly depositMinor: number;
}

/** @returns null where the quote has no such alternative */
export function agreedSale(quote: OutOf<'quote'>, alternativeId: string | null): AgreedSale | null {
  const { body } = quote;
  const chosen = alternativeId === null ? body : body.alternatives.find(({ id }) => id === alternativeId);
  if (chosen === undefined) return null;
  return { quote, alternativeId, sums: chosen.sums, depositMinor: chosen.deposit };
}
