import type { TextContext } from '@/app/_words/formatter';
import { nearDayWords } from '@/app/_words/orders/nearDayWords';
import type { BoardOrder } from '@/lib/orders/board/todayList';
import { overWords } from './boardWaitWords';

type Stage = BoardOrder['standing']['track'][number]['stage'];

/** What each stretch of an order's way is called. */
export const stageWords: Readonly<Record<Stage, string>> = {
  enquiry: 'Enquiry',
  quoted: 'Quoted',
  agreed: 'Approval and deposit',
  making: 'Making',
  delivered: 'Delivered',
  paid: 'Paid',
};

/** @returns how far an order is, in a few words under its track. */
export function trackWords(
  { standing }: Pick<BoardOrder, 'standing'>,
  today: string,
  { locale }: TextContext,
): string {
  const { state, side, enquiredOn, lastQuote, gates } = standing;
  if (side.side === 'held') return `on hold since ${nearDayWords(side.since, today, locale)}`;
  if (side.side !== 'open')
    return `${overWords(standing).toLowerCase()}, ${nearDayWords(side.since, today, locale)}`;
  switch (state) {
    case 'enquiry':
      return enquiredOn === null ? 'asked' : `asked ${nearDayWords(enquiredOn, today, locale)}`;
    case 'quoted':
      return lastQuote === null ? 'quoted' : `quoted ${nearDayWords(lastQuote.body.issuedOn, today, locale)}`;
    case 'accepted': {
      const missing = [gates.approval === 'shut' && 'proof', gates.deposit === 'shut' && 'deposit'].filter(
        (one) => one !== false,
      );
      return missing.join(' and ');
    }
    case 'ready':
      return 'proof and deposit are here';
    case 'blanksOrdered':
      return 'blanks ordered';
    case 'goodsIn':
      return 'blanks are here';
    case 'scheduled':
    case 'printed':
    case 'pressed':
    case 'checked':
      return state;
    case 'packed':
      return gates.balance === 'shut' ? 'packed, balance owed' : 'packed';
    case 'delivered':
      return 'balance owed';
    case 'paid':
      return 'delivered and paid';
    case 'closed':
      return 'closed';
    default:
      return state satisfies never;
  }
}
