import type { SellingTerms } from '@/lib/stall/plan/costs/sellingTerms';
import type { GoodsPlanned } from '@/lib/stall/plan/stallPlanned';

/** What some price leaves of a piece. Currency units, unrounded. */
export interface PieceMoney {
  /** Without tax and fees. */
  readonly keptOf: (price: number) => number;
  /** The written price at which so much is kept; null where fees and tax take all of it. */
  readonly priceFor: (kept: number) => number | null;
}

type Fees = Pick<SellingTerms, 'cardFixedFee' | 'cardShare' | 'piecesPerTicket'>;

/**
 * How price, tax and fees of some goods go together: tax is in proportion to the price, and so are the fees but for what
 * is paid on each ticket.
 *
 * @param goods as planned at their own price, which is more than 0
 */
export function pieceMoney(
  { price, netPrice, fees }: Pick<GoodsPlanned, 'price' | 'netPrice' | 'fees'>,
  { cardFixedFee, cardShare, piecesPerTicket }: Fees,
): PieceMoney {
  const onTicket = (cardShare * cardFixedFee) / piecesPerTicket;
  const keptShare = (netPrice - (fees - onTicket)) / price;
  return {
    keptOf: (other) => keptShare * other - onTicket,
    priceFor: (kept) => (keptShare > 0 ? (kept + onTicket) / keptShare : null),
  };
}
