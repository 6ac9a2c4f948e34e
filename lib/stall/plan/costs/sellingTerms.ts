import type { StallPlan } from '@/shared/schemas/stallPapers';
import type { Channel } from '@/shared/schemas/workshop';
import { channelTypicals } from '@/shared/tables/typicalRates';

/** How tax and fees go at a stall; shares 0 to 1, the fixed fee in currency units. */
export type SellingTerms = Pick<
  StallPlan,
  | 'taxMode'
  | 'tax'
  | 'cardFee'
  | 'cardFixedFee'
  | 'cardShare'
  | 'commission'
  | 'commissionBase'
  | 'piecesPerTicket'
>;

/**
 * The terms of a way of selling as a stall day is reckoned with them: fees nobody told stand at what is usual, tax does
 * not.
 *
 * @returns null where nobody said how tax stands
 */
export function sellingTerms(channel: Channel): SellingTerms | null {
  const { taxMode, tax, commissionBase } = channel;
  if (taxMode === null || (taxMode !== 'none' && tax === null)) return null;
  const known = (name: 'commission' | 'cardFee' | 'cardFixedFee' | 'cardShare' | 'piecesPerTicket') =>
    channel[name]?.value ?? channelTypicals.stall[name].typical ?? 0;
  return {
    taxMode,
    tax: taxMode === 'none' ? 0 : (tax?.value ?? 0),
    cardFee: known('cardFee'),
    cardFixedFee: known('cardFixedFee'),
    cardShare: known('cardShare'),
    commission: known('commission'),
    commissionBase,
    piecesPerTicket: Math.max(1, known('piecesPerTicket')),
  };
}
