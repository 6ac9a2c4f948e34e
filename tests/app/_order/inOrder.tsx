import { act, screen, within } from '@testing-library/react';
import type { Lazy } from '@/app/_network/lazy';
import { laterParts } from '@/app/_order/laterParts';
import { OrderScreen } from '@/app/_order/OrderScreen';
import { CLUB_ENQUIRY_ID } from '@/lib/examples/clubEnquiry';
import { orderPaperSeries } from '@/lib/kinds/orderSeries';
import type { Order } from '@/shared/schemas/order';
import type { OrderEvent, OrderStep, Payment } from '@/shared/schemas/orderEvents';
import type { Quote } from '@/shared/schemas/orderPapers';
import { bodyOf, enter, screenStore } from '@/tests/app/_screens/screens';
import { clubQuote } from '@/tests/fixtures/orderPapers';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

export { CLUB_ENQUIRY_ID as ORDER } from '@/lib/examples/clubEnquiry';

/** Enters the order of the example, with the parts that come later. */
export async function enterOrder(): Promise<void> {
  await Promise.all(Object.values(laterParts).map((part: Lazy<unknown>) => part.fetch()));
  await enter(<OrderScreen orderId={CLUB_ENQUIRY_ID} />);
}

export const order = (): Order => bodyOf('order', CLUB_ENQUIRY_ID);

/** What was noted of the order and counts. */
export const events = (): readonly OrderEvent[] =>
  screenStore()
    .getState()
    .entries.orderEvent.map(({ body }) => body);
export const steps = (): readonly OrderStep[] => events().map(({ step }) => step);
export const payments = (): readonly Payment[] =>
  screenStore()
    .getState()
    .entries.payment.map(({ body }) => body);

/** Notes a step past the screen. */
export const tell = (step: OrderStep, day = TEST_DAY): void => {
  act(() => {
    screenStore().actions.note('Told', [
      { kind: 'orderEvent', body: { orderId: CLUB_ENQUIRY_ID, day, step } },
    ]);
  });
};

export const change = (to: Partial<Order>): void => {
  act(() => {
    screenStore().actions.edit('Change', [
      { do: 'change', kind: 'order', id: CLUB_ENQUIRY_ID, to: (now: Order): Order => ({ ...now, ...to }) },
    ]);
  });
};

const alternatives: Quote['alternatives'] = clubQuote.alternatives.map((one) => ({
  ...one,
  priced: {
    ...one.priced,
    lines: clubQuote.goods.map(({ jobId, lineId, sizes, start }) => ({
      ...{ jobId, lineId, sizes, start },
      without: [],
    })),
  },
}));

/** Sends the quote of the club out: 761.31 with tax, 380.66 of it first. */
export async function quote(more: Partial<Quote> = {}): Promise<string> {
  const outcome = await act(() =>
    screenStore().actions.issue('Quote', {
      kind: 'quote',
      about: { kind: 'order', id: CLUB_ENQUIRY_ID },
      series: orderPaperSeries('quote', CLUB_ENQUIRY_ID, 2026),
      body: (number) => ({
        ...{ ...clubQuote, alternatives, orderId: CLUB_ENQUIRY_ID, number },
        // Answered on the same day.
        ...{ issuedOn: TEST_DAY, ...more },
      }),
      file: () => ({ name: 'quote.pdf', content: new TextEncoder().encode('%PDF-1.7') }),
    }),
  );
  if (outcome.state !== 'issued') throw new Error(`the quote was not issued: ${outcome.state}`);
  tell({ what: 'quoted', paperId: outcome.paper.id });
  return outcome.paper.id;
}

/** The quote is out and accepted as asked. */
export async function accepted(): Promise<void> {
  const paperId = await quote();
  tell({ what: 'accepted', paperId, alternativeId: null, by: 'Alex', how: 'message', proof: null });
}

/** The customer says yes to every picture as it is, or to none. */
export const approve = (isApproved: boolean): void => {
  const { bodies } = screenStore().getState().kinds.artwork;
  act(() => {
    screenStore().actions.note(
      'Pictures',
      Object.entries(bodies).map(([artworkId, { version }]) => ({
        kind: 'approval',
        body: { artworkId, version: isApproved ? version : null },
      })),
    );
  });
};

export const pay = (amountMinor: number): void => {
  act(() => {
    screenStore().actions.note('Paid', [
      {
        kind: 'payment',
        body: {
          ...{ orderId: CLUB_ENQUIRY_ID, day: TEST_DAY, kind: 'payment', amountMinor, currency: 'USD' },
          ...{ way: 'transfer', feeMinor: 0, note: '' },
        },
      },
    ]);
  });
};

export const section = (name: string) => within(screen.getByRole('region', { name }));
export const form = (name: string) => within(screen.getByRole('form', { name }));

/** The waiting rows as they read. */
export const rows = (): readonly string[] =>
  section('What it waits for')
    .getAllByRole('listitem')
    .map(({ textContent }) => textContent ?? '');
