import type { Order } from '@/shared/schemas/order';
import type { AgreedSale } from './agreedSale';

/**
 * The day on which an order is to be there. What was accepted keeps the day its quote promised, whatever was wanted, until
 * another day is wanted than the quote was made for: then that is what was agreed since.
 *
 * @param order its wanted day its own, else that of its jobs, YYYY-MM-DD
 * @returns null where no day is wanted and none was promised
 */
export function dayToKeep({ wantedOn }: Pick<Order, 'wantedOn'>, agreed: AgreedSale | null): string | null {
  const quote = agreed?.quote.body;
  if (quote == null || quote.dates.ready === null) return wantedOn;
  return wantedOn === null || wantedOn === quote.wantedOn ? quote.dates.ready : wantedOn;
}
