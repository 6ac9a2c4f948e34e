import { act, screen, within } from '@testing-library/react';
import type { Lazy } from '@/app/_network/lazy';
import { laterParts } from '@/app/_order/laterParts';
import { laterRest } from '@/app/_order/laterRest';
import { OrderScreen } from '@/app/_order/OrderScreen';
import { formatterFor } from '@/app/_words/formatter';
import { shortDay } from '@/app/_words/orders/orderDayWords';
import { CLUB_ENQUIRY_ID } from '@/lib/examples/clubEnquiry';
import { exampleWorkshop } from '@/lib/examples/exampleWorkshop';
import { orderPaperSeries } from '@/lib/kinds/orderSeries';
import { addDays } from '@/shared/days';
import type { Artwork } from '@/shared/schemas/artwork';
import type { Order } from '@/shared/schemas/order';
import type { OrderEvent, OrderStep, Payment } from '@/shared/schemas/orderEvents';
import type { Invoice, Quote } from '@/shared/schemas/orderPapers';
import { bodyOf, enter, screenStore } from '@/tests/app/_screens/screens';
import { clubCredit, dates as clubDates, clubInvoice, clubQuote } from '@/tests/fixtures/orderPapers';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

export { CLUB_ENQUIRY_ID as ORDER } from '@/lib/examples/clubEnquiry';

/** The day so many days from the tests' own. */
export const dayIn = (days: number): string => addDays(TEST_DAY, days);

const workshop = exampleWorkshop(TEST_DAY);

/** A day as a screen says it today: “Wed Nov 25”. */
export const said = (day: string): string => shortDay(day, TEST_DAY, workshop.locale);

/** A day as a sentence says it in full: “Nov 25, 2026”. */
export const saidInFull = (day: string): string => formatterFor(workshop).day(day);

/** The year in which the tests count numbers of orders. */
export const TEST_YEAR = Number(TEST_DAY.slice(0, 4));

/** Enters the order of the example, with the parts that come later. */
export async function enterOrder(): Promise<void> {
  await Promise.all([laterRest, ...Object.values(laterParts)].map((part: Lazy<unknown>) => part.fetch()));
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

const quotedDates: Quote['dates'] = {
  ...clubDates,
  approveBy: dayIn(5),
  orderBlanksBy: dayIn(6),
  ready: dayIn(19),
};

/** Sends the quote of the club out: 761.31 with tax, 380.66 of it first. */
export async function quote(more: Partial<Quote> = {}): Promise<string> {
  const outcome = await act(() =>
    screenStore().actions.issue('Quote', {
      kind: 'quote',
      about: { kind: 'order', id: CLUB_ENQUIRY_ID },
      series: orderPaperSeries('quote', CLUB_ENQUIRY_ID, TEST_YEAR),
      body: (number) => ({
        ...{ ...clubQuote, alternatives, orderId: CLUB_ENQUIRY_ID, number },
        // Answered on the same day; its days lie ahead by whatever clock.
        ...{ issuedOn: TEST_DAY, validUntil: dayIn(15), dates: quotedDates, ...more },
      }),
      file: () => ({ name: 'quote.pdf', content: new TextEncoder().encode('%PDF-1.7') }),
    }),
  );
  if (outcome.state !== 'issued') throw new Error(`the quote was not issued: ${outcome.state}`);
  tell({ what: 'quoted', paperId: outcome.paper.id });
  return outcome.paper.id;
}

/** Sends an invoice of the club out, as another device wrote it that had not heard of any. */
export async function invoice(more: Partial<Invoice> = {}): Promise<void> {
  const outcome = await act(() =>
    screenStore().actions.issue('Invoice', {
      kind: 'invoice',
      about: { kind: 'order', id: CLUB_ENQUIRY_ID },
      series: orderPaperSeries('invoice', CLUB_ENQUIRY_ID, TEST_YEAR),
      body: (number) => ({
        ...{ ...clubInvoice, orderId: CLUB_ENQUIRY_ID, number, issuedOn: TEST_DAY },
        ...{ suppliedOn: null, dueOn: null, ...more },
      }),
      file: () => ({ name: 'invoice.pdf', content: new TextEncoder().encode('%PDF-1.7') }),
    }),
  );
  if (outcome.state !== 'issued') throw new Error(`the invoice was not issued: ${outcome.state}`);
}

/** Gives back the last invoice, whole. */
export async function creditWhole(): Promise<void> {
  const last = screenStore().getState().papers.invoice.at(-1);
  if (last === undefined) throw new Error('no invoice went out');
  const { number, issuedOn, sums } = last.body;
  const outcome = await act(() =>
    screenStore().actions.issue('Credit note', {
      kind: 'creditNote',
      about: { kind: 'order', id: CLUB_ENQUIRY_ID },
      series: orderPaperSeries('creditNote', CLUB_ENQUIRY_ID, TEST_YEAR),
      body: (own) => ({
        ...{ ...clubCredit, orderId: CLUB_ENQUIRY_ID, number: own, issuedOn: TEST_DAY },
        ...{ invoice: { paperId: last.id, number, issuedOn }, sums },
      }),
      file: () => ({ name: 'credit.pdf', content: new TextEncoder().encode('%PDF-1.7') }),
    }),
  );
  if (outcome.state !== 'issued') throw new Error(`the credit note was not issued: ${outcome.state}`);
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

/** Every picture becomes another, which nobody has said yes to. */
export const newPictures = (): void => {
  const { bodies } = screenStore().getState().kinds.artwork;
  act(() => {
    screenStore().actions.edit(
      'New pictures',
      Object.keys(bodies).map((id) => ({
        ...{ do: 'change', kind: 'artwork', id },
        to: (now: Artwork): Artwork => ({ ...now, version: now.version + 1 }),
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
