import type { OrderOnScreen } from '@/app/_order/orderOnScreen';
import type { WentOut } from '@/app/_words/orders/orderDayWords';

/** @returns the quote that what the customer does now answers: the accepted one, else the last; null before any. */
export function quoteOut({
  standing: { agreed, lastQuote },
}: Pick<OrderOnScreen, 'standing'>): WentOut | null {
  const body = agreed?.quote.body ?? lastQuote?.body;
  return body === undefined ? null : { what: 'quote', on: body.issuedOn };
}
