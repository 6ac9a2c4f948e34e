import type { NotedStep } from '@/app/_order/notes/stepNote';
import type { OrderOnScreen } from '@/app/_order/orderOnScreen';
import type { OrderPlace } from '@/app/_words/orders/orderPlaces';
import type { PaperTab } from '@/app/_words/orders/papers/paperTabWords';
import type { WaitsFor } from '@/app/_words/orders/waits/waitNames';
import { quoteLacks } from '@/lib/orders/quoteLacks';

/** What the one button of a row does. */
export type WaitAct =
  | { readonly kind: 'papers'; readonly label: string; readonly tab: PaperTab }
  /** What has to be there first is set at a place of the order. */
  | { readonly kind: 'room'; readonly label: string; readonly place: OrderPlace }
  | { readonly kind: 'step'; readonly label: string; readonly what: NotedStep }
  | { readonly kind: 'payment'; readonly label: string; readonly dueMinor: number | null }
  | { readonly kind: 'item'; readonly label: string; readonly itemId: string };

/** @returns what the button of a row does; null where there is nothing to press */
export function actOf(why: WaitsFor, on: OrderOnScreen): WaitAct | null {
  const { standing } = on;
  const step = (what: NotedStep, label: string): WaitAct => ({ kind: 'step', what, label });
  switch (why) {
    case 'answer':
    case 'newQuote':
      return quoteAct(on);
    case 'proof':
    case 'newProof':
      return { kind: 'papers', label: 'Proof', tab: 'proof' };
    case 'askBalance':
      return { kind: 'papers', label: 'Invoice', tab: 'invoice' };
    case 'decision':
      return step('accepted', 'Accepted');
    case 'approval':
      return step('approved', 'Approved');
    case 'deposit':
      return { kind: 'payment', label: 'It came', dueMinor: standing.money.depositOpenMinor };
    case 'balance':
      return { kind: 'payment', label: 'It came', dueMinor: standing.money.dueMinor };
    case 'remind':
      return step('reminded', 'Reminded');
    case 'orderBlanks':
      return step('blanksOrdered', 'Blanks ordered');
    case 'blanks':
      return step('goodsIn', 'They came in');
    case 'print':
      return step('printed', 'Printed');
    case 'press':
      return step('pressed', 'Pressed');
    case 'check':
      return step('checked', 'Checked');
    case 'pack':
      return step('packed', 'Packed');
    case 'deliver':
      return step('delivered', 'Delivered');
    case 'close':
      return step('closed', 'Closed');
    case 'held':
      return step('resumed', 'Go on with it');
    case 'over':
      return standing.side.side === 'open' && standing.state !== 'closed'
        ? null
        : step('reopened', 'Open it again');
    case 'openItem':
      return null;
    default:
      return why satisfies never;
  }
}

// Helpers

/** Where the quote lacks something, the button leads there. */
function quoteAct({ customer, order, jobs }: OrderOnScreen): WaitAct {
  switch (
    quoteLacks(
      order,
      customer,
      jobs.map(({ job }) => job),
    )
  ) {
    case 'customer':
      return { kind: 'room', label: 'Choose the customer', place: 'order-customer' };
    case 'job':
      return { kind: 'room', label: 'Add a job', place: 'order-jobs' };
    case 'pieces':
      return { kind: 'room', label: 'Go to the jobs', place: 'order-jobs' };
    default:
      return { kind: 'papers', label: 'Quote', tab: 'quote' };
  }
}
