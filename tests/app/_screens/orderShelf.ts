import { act } from '@testing-library/react';
import { orderPaperSeries } from '@/lib/kinds/orderSeries';
import { orderNumberText } from '@/shared/orderNumberText';
import { type Order, orderSchema } from '@/shared/schemas/order';
import type { OrderStep, Payment } from '@/shared/schemas/orderEvents';
import type { Quote } from '@/shared/schemas/orderPapers';
import { clubQuote } from '@/tests/fixtures/orderPapers';
import { TEST_DAY, TEST_YEAR } from '@/tests/tools/clock/testDay';
import { screenStore } from './screens';

/** The number that the write gave an order. */
export function numberOf(orderId: string): string {
  const found = screenStore()
    .getState()
    .entries.orderEvent.find(({ body }) => body.orderId === orderId && body.step.what === 'enquired');
  if (found?.body.step.what !== 'enquired') throw new Error(`no number of ${orderId}`);
  return orderNumberText(found.body.step.number);
}

/** Papers of an order go out as files; what is in them is nothing to the board. */
export const aFile = () => ({ name: 'paper.pdf', content: new TextEncoder().encode('%PDF-1.7') });

/** Orders put on the shelf of a screen, and what happened to them. */
export const shelf = {
  add: (id: string, order: Partial<Order> & Pick<Order, 'name'>) =>
    act(() =>
      screenStore().actions.edit(`Add ${order.name}`, [
        { do: 'add', kind: 'order', id, body: orderSchema.parse(order) },
      ]),
    ),
  step: (orderId: string, step: OrderStep, day = TEST_DAY) =>
    act(() => screenStore().actions.note('Step', [{ kind: 'orderEvent', body: { orderId, day, step } }])),
  enquired: (orderId: string, count = 1, day = TEST_DAY) =>
    shelf.step(orderId, { what: 'enquired', number: { year: TEST_YEAR, count, letter: 'A' } }, day),
  pay: (orderId: string, amountMinor: number, more: Partial<Payment> = {}) =>
    act(() =>
      screenStore().actions.note('Payment', [
        {
          kind: 'payment',
          body: {
            orderId,
            day: TEST_DAY,
            kind: 'payment',
            amountMinor,
            currency: 'USD',
            way: 'transfer',
            feeMinor: 0,
            note: '',
            ...more,
          },
        },
      ]),
    ),
  /** The club's quote: 761.31, half of it first (380.66). */
  async quote(orderId: string, change: Partial<Quote> = {}): Promise<string> {
    const made = await act(() =>
      screenStore().actions.issue('Quote', {
        kind: 'quote',
        about: { kind: 'order', id: orderId },
        series: orderPaperSeries('quote', orderId, 2026),
        body: (number) => ({ ...clubQuote, orderId, number, alternatives: [], ...change }),
        file: aFile,
      }),
    );
    if (made.state !== 'issued') throw new Error('the quote was not issued');
    shelf.step(orderId, { what: 'quoted', paperId: made.paper.id });
    return made.paper.id;
  },
  async accepted(orderId: string, change: Partial<Quote> = {}): Promise<void> {
    const paperId = await shelf.quote(orderId, change);
    const answer = { by: 'Alex', how: 'message', proof: null } as const;
    shelf.step(orderId, { what: 'accepted', paperId, alternativeId: null, ...answer });
  },
  /** Without a picture nothing can be approved, and without the balance nothing goes out: both are passed. */
  async delivered(orderId: string, change: Partial<Quote> = {}): Promise<void> {
    await shelf.accepted(orderId, change);
    const versions = Object.entries(screenStore().getState().kinds.artwork.bodies).map(
      ([artworkId, { version }]) => ({ artworkId, version }),
    );
    shelf.step(orderId, { what: 'override', gate: 'approval', reason: 'Shown by hand', versions });
    shelf.pay(orderId, 76131);
    for (const what of ['blanksOrdered', 'packed', 'delivered'] as const)
      shelf.step(orderId, { what, note: '' });
  },
};
