import type { Channel } from '@/shared/schemas/workshop';

/** One way of selling the same pieces, in plain figures. */
export interface ChannelOffer {
  readonly kind: Channel['kind'];
  readonly name: string;
  /** What the last buyer pays for a piece, tax inside where `taxMode` says so. */
  readonly retail: number;
  /** What part of the retail price the channel is invoiced: 1 when sold to the last buyer, 0.5 in wholesale. */
  readonly shareOfRetail: number;
  readonly taxMode: 'added' | 'inside' | 'none';
  readonly tax: number;
  /** Share of the invoiced price that the channel keeps: 0.4 where consignment leaves the maker 60 %. */
  readonly commission: number;
  readonly commissionBase: Channel['commissionBase'];
  readonly cardFee: number;
  readonly cardFixedFee: number;
  readonly cardShare: number;
  /** Card payments for the whole order; a stall counts tickets. */
  readonly cardPayments: number;
  readonly piecesPerTicket: number;
  /** Paid minutes of selling and serving the whole batch, on top of what making it takes. */
  readonly sellingMinutes: number;
  /** What of selling days the whole batch bears in money: stall, drive, parking. */
  readonly sellingCost: number;
  /** Days until the money is there: 0 at a stall, the terms in wholesale, until it is sold in consignment. */
  readonly cashInDays: number;
}

interface SellingTerms {
  readonly shareOfRetail: number;
  readonly sellingMinutesPerPiece: number;
  readonly cashInDays: number;
}

/**
 * Customary terms: half of retail in thirty days, paid after sale in consignment (from the trade). Minutes of selling
 * are from memory: a stall day of seven hours for sixty pieces, a visit to a shop for two dozen.
 */
export const customaryTerms: Readonly<Record<Channel['kind'], SellingTerms>> = {
  order: { shareOfRetail: 1, sellingMinutesPerPiece: 0, cashInDays: 0 },
  stall: { shareOfRetail: 1, sellingMinutesPerPiece: 7, cashInDays: 0 },
  wholesale: { shareOfRetail: 0.5, sellingMinutesPerPiece: 2, cashInDays: 30 },
  consignment: { shareOfRetail: 1, sellingMinutesPerPiece: 2, cashInDays: 60 },
};

export interface OfferProblem {
  readonly kind: 'notAShare' | 'notAnAmount';
  readonly field: keyof ChannelOffer;
  readonly value: number;
}

/** @returns the first figure of an offer that cannot be meant, or null. */
export function checkOffer(offer: ChannelOffer): OfferProblem | null {
  for (const field of ['shareOfRetail', 'tax', 'cardShare'] as const) {
    if (!(offer[field] >= 0 && offer[field] <= 1)) return { kind: 'notAShare', field, value: offer[field] };
  }
  for (const field of ['commission', 'cardFee'] as const) {
    if (!(offer[field] >= 0 && offer[field] < 1)) return { kind: 'notAShare', field, value: offer[field] };
  }
  for (const field of [
    'cardFixedFee',
    'cardPayments',
    'sellingMinutes',
    'sellingCost',
    'cashInDays',
  ] as const) {
    if (!(offer[field] >= 0 && offer[field] <= 1e6))
      return { kind: 'notAnAmount', field, value: offer[field] };
  }
  for (const field of ['retail', 'piecesPerTicket'] as const) {
    if (!(offer[field] > 0 && offer[field] <= 1e6))
      return { kind: 'notAnAmount', field, value: offer[field] };
  }
  return offer.shareOfRetail > 0 ? null : { kind: 'notAShare', field: 'shareOfRetail', value: 0 };
}
