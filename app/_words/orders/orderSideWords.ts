import type { Formatter } from '@/app/_words/formatter';
import type { OrderStanding } from '@/lib/orders/orderStanding';
import { lossWords } from './orderStepWords';

/** @returns how an order ended. */
export function overWords(
  { side, state }: Pick<OrderStanding, 'side' | 'state'>,
  formatter: Formatter,
): string {
  switch (side.side) {
    case 'lost':
      return `Lost on ${formatter.day(side.since)}: ${lossWords[side.why].toLowerCase()}`;
    case 'cancelled':
      return `Cancelled on ${formatter.day(side.since)}`;
    case 'held':
      return `On hold since ${formatter.day(side.since)}`;
    case 'open':
      return state === 'closed' ? 'Closed' : 'Put away';
    default:
      return side satisfies never;
  }
}
