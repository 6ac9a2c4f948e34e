// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { act, cleanup, fireEvent, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { useState } from 'react';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { type ReadyWorkspace, WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { useOrderBook } from '@/app/_orderBook/useOrderBook';
import { OrderPapers } from '@/app/_orderPapers/OrderPapers';
import type { PaperQuestion, PaperReply } from '@/app/_papers/messages';
import type { PaperTab } from '@/app/_words/orders/papers/paperTabWords';
import { CLUB_ENQUIRY_ID as ORDER } from '@/lib/examples/clubEnquiry';
import { orderSchema } from '@/shared/schemas/order';
import type { OrderStep, Payment } from '@/shared/schemas/orderEvents';
import { aPicture } from '@/tests/fixtures/aPicture';
import { clubQuote } from '@/tests/fixtures/orderPapers';
import { TEST_DAY, TEST_YEAR } from '@/tests/tools/clock/testDay';
import { clearScreens, enter, screenStore } from './screens';

vi.mock('next/navigation', () => ({ useRouter: () => ({ push: () => undefined }) }));
vi.mock('@/app/_store/appDocuments', async () => {
  const { screenStore: appDocuments } = await import('./screens');
  return { appDocuments };
});
vi.mock('@/app/_papers/writePaper', () => ({
  writePaper: (question: PaperQuestion, onNews: (news: PaperReply) => void) => {
    const text = question.kind === 'paper' ? JSON.stringify(question.source) : '';
    queueMicrotask(() =>
      act(() => onNews({ kind: 'written', file: new Blob([text]), pages: 1, lost: [], missing: [] })),
    );
    return () => undefined;
  },
}));

afterEach(() => {
  cleanup();
  clearScreens();
});

/* 761.31 with tax, half of it 380.66 now and 380.65 later, by hand. */

const went = vi.fn<(place: string) => void>();
function Papers({ workspace }: { readonly workspace: ReadyWorkspace }) {
  const book = useOrderBook(workspace);
  const [tab, setTab] = useState<PaperTab | null>(null);
  return (
    <>
      <h1>Order</h1>
      <OrderPapers
        {...{ workspace, book }}
        bench={{ sure: [], leftOut: [], isWaiting: false, failure: null }}
        orderId={ORDER}
        tab={tab}
        onTab={setTab}
        onRoom={went}
      />
    </>
  );
}

const actions = () => screenStore().actions;
const noted = (step: OrderStep) =>
  actions().note('Note', [{ kind: 'orderEvent', body: { orderId: ORDER, day: TEST_DAY, step } }]);
const paid = (amountMinor: number, more: Partial<Payment> = {}) =>
  actions().note('Pay', [
    {
      kind: 'payment',
      body: {
        ...{ orderId: ORDER, day: TEST_DAY, kind: 'payment', amountMinor, currency: 'USD', way: 'transfer' },
        ...{ feeMinor: 0, note: '' },
        ...more,
      },
    },
  ]);

/** The club has said yes to the first version of its quote. */
async function accepted(alternativeId: string | null = null): Promise<void> {
  await screenStore().open();
  const outcome = await actions().issueMade('Issue', {
    kind: 'quote',
    about: { kind: 'order', id: ORDER },
    series: `quote ${ORDER}`,
    body: (number) => ({ ...clubQuote, alternatives: [], orderId: ORDER, number }),
    file: async () => ({ name: 'quote.pdf', content: new Uint8Array([1]) }),
    notes: (paperId) => [
      { kind: 'orderEvent', body: { orderId: ORDER, day: TEST_DAY, step: { what: 'quoted', paperId } } },
    ],
  });
  if (outcome.state !== 'issued') throw new Error(outcome.state);
  noted({
    ...{ what: 'accepted', paperId: outcome.paper.id, alternativeId },
    ...{ by: 'Alex Placeholder', how: 'message', proof: null },
  });
  await screenStore().flush();
}

async function open(tab: string): Promise<void> {
  await enter(<WithWorkspace>{(workspace) => <Papers workspace={workspace} />}</WithWorkspace>);
  await go(tab);
}
async function go(tab: string): Promise<void> {
  const found = screen.queryByRole('tab', { name: tab });
  if (found === null) await userEvent.click(screen.getByRole('button', { name: 'More papers' }));
  await userEvent.click(screen.getByRole('tab', { name: tab }));
}
async function issue(name: RegExp): Promise<void> {
  await userEvent.click(screen.getByRole('button', { name }));
  await screen.findByText(/It is kept with its file/);
}
const out = () => screenStore().getState().papers;

describe('the tabs of papers', () => {
  it('are one stop, arrows go through them, and what is not to be written yet is behind a button', async () => {
    await accepted();
    await open('Quote');
    const tabs = screen.getAllByRole('tab');
    expect(tabs.map(({ textContent }) => textContent)).toEqual([
      ...['Quote', 'Confirmation', 'Proof', 'Requests'],
    ]);
    expect(tabs.filter(({ tabIndex }) => tabIndex === 0)).toHaveLength(1);
    screen.getByRole('tab', { name: 'Quote' }).focus();
    await userEvent.keyboard('{ArrowRight}');
    expect(screen.getByRole('tab', { name: 'Confirmation' })).toHaveFocus();
    expect(screen.getByRole('tab', { name: 'Confirmation' })).toHaveAttribute('aria-selected', 'true');
    await userEvent.keyboard('{End}');
    expect(screen.getByRole('tab', { name: 'Requests' })).toHaveFocus();
    await userEvent.keyboard('{ArrowRight}');
    expect(screen.getByRole('tab', { name: 'Quote' })).toHaveFocus();
    expect(screen.getByRole('tabpanel')).toHaveAccessibleName('Quote');
    await userEvent.click(screen.getByRole('button', { name: 'More papers' }));
    expect(screen.getAllByRole('tab')).toHaveLength(9);
  });
});

describe('a confirmation', () => {
  it('says what was accepted, by the quote alone', async () => {
    await accepted();
    await open('Confirmation');
    expect(screen.getByText('761.31 USD')).toBeVisible();
    await issue(/^Issue confirmation, version 1/);
    expect(out().confirmation[0]?.body).toMatchObject({
      ...{ deposit: 38066, balance: 38065, accepted: { by: 'Alex Placeholder', on: TEST_DAY, choice: '' } },
      ...{ sums: { total: 76131 }, quote: { number: { count: 1 } } },
    });
  });

  it('waits for a yes', async () => {
    await screenStore().open();
    await open('Confirmation');
    expect(screen.getByText(/Nothing was accepted yet/)).toBeVisible();
    await userEvent.click(screen.getByRole('button', { name: /^Issue confirmation/ }));
    expect(out().confirmation).toEqual([]);
  });
});

describe('a request', () => {
  it('asks for what of the deposit has not come, then for the rest', async () => {
    await accepted();
    paid(10_000);
    await screenStore().flush();
    await open('Requests');
    // 380.66 less 100.00.
    expect(screen.getAllByText('280.66 USD')[0]).toBeVisible();
    await issue(/^Issue request/);
    expect(out().paymentRequest[0]?.body).toMatchObject({ what: 'deposit', amount: 28066, paid: 10_000 });
    await userEvent.selectOptions(screen.getByLabelText('Asks for'), 'balance');
    // 761.31 less 100.00.
    expect(screen.getAllByText('661.31 USD')[0]).toBeVisible();
  });

  it('is not written where all has come', async () => {
    await accepted();
    paid(76131);
    await screenStore().flush();
    await open('Requests');
    await userEvent.selectOptions(screen.getByLabelText('Asks for'), 'balance');
    expect(screen.getByText(/there is nothing to ask for/)).toBeVisible();
  });

  it('asks for no day that is past unless it is typed', async () => {
    await accepted();
    await open('Requests');
    const due = screen.getByLabelText('To be paid by');
    fireEvent.change(due, { target: { value: '2020-01-01' } });
    expect(await screen.findByText('This day is past.')).toBeVisible();
  });
});

describe('an invoice', () => {
  it('bills what was agreed and what was changed since, less what came', async () => {
    await accepted();
    paid(38066);
    noted({ what: 'change', wish: 'Another colour', amountMinor: 1000, currency: 'USD' });
    await screenStore().flush();
    await open('Invoice');
    await issue(/^Issue invoice/);
    // 711.50 and 10.00 are 721.50; 7 % of it 50.505, half a cent up: 772.01; less 380.66.
    expect(out().invoice[0]?.body).toMatchObject({
      ...{ sums: { subtotal: 72150, tax: 5051, total: 77201 }, paid: 38066, due: 39135 },
    });
    expect(await screen.findByText(/a second one would ask for the money twice/)).toBeVisible();
    await userEvent.click(screen.getByRole('button', { name: /^Issue invoice/ }));
    expect(out().invoice).toHaveLength(1);
  });

  it('of changes alone goes out beside one that is in force, and each change on one', async () => {
    await accepted();
    paid(77_000);
    await screenStore().flush();
    await open('Invoice');
    await issue(/^Issue invoice/);
    expect(out().invoice[0]?.body).toMatchObject({ sums: { total: 76131 }, changeIds: [] });
    await act(async () => {
      noted({ what: 'change', wish: 'Names on the sleeve', amountMinor: 5000, currency: 'USD' });
      await screenStore().flush();
    });
    // 50.00 and 7 %; of the 770.00 that came 8.69 are beyond the first.
    expect(screen.getByText(/for changes that no invoice asks for, 44\.81 USD still to pay/)).toBeVisible();
    const sheet = screen.getByRole('article');
    expect(within(sheet).getByText('Changes of the order')).toBeVisible();
    expect(within(sheet).queryByText('pieces')).toBeNull();
    await userEvent.click(screen.getByRole('button', { name: /^Issue invoice/ }));
    await waitFor(() => expect(out().invoice).toHaveLength(2));
    const [, own] = out().invoice;
    const [change] = screenStore()
      .getState()
      .entries.orderEvent.filter(({ body }) => body.step.what === 'change');
    expect(own?.body).toMatchObject({
      ...{ goods: [], charges: [{ what: 'Names on the sleeve', amount: 5000 }] },
      ...{ sums: { subtotal: 5000, tax: 350, total: 5350 }, paid: 869, due: 4481 },
      changeIds: [change?.id],
    });
    const [one, two] = ['001', '002'].map((count) => `${TEST_YEAR % 100}-${count}.`);
    expect(
      await screen.findByText(
        new RegExp(`Invoices ${one}, ${two} are in force.* go on an invoice of their own`),
      ),
    ).toBeVisible();
  });

  it('of changes says which of them were given back before', async () => {
    await accepted();
    await open('Invoice');
    await issue(/^Issue invoice/);
    await act(async () => {
      noted({ what: 'change', wish: 'Names on the sleeve', amountMinor: 5000, currency: 'USD' });
      await screenStore().flush();
    });
    expect(screen.queryByText(/given back with an earlier invoice/)).toBeNull();
    await userEvent.click(screen.getByRole('button', { name: /^Issue invoice/ }));
    await waitFor(() => expect(out().invoice).toHaveLength(2));
    await go('Credit note');
    await userEvent.click(screen.getByRole('button', { name: 'All that is left of it' }));
    await userEvent.type(screen.getByLabelText('Why'), 'Not made');
    await issue(/^Issue credit note/);
    expect(out().creditNote[0]?.body.sums).toEqual({ subtotal: 5000, tax: 350, total: 5350 });
    await userEvent.click(screen.getByRole('tab', { name: 'Invoice' }));
    expect(
      screen.getByText(/^A change on it was given back with an earlier invoice: “Names on the sleeve”\./),
    ).toBeVisible();
  });
});

describe('a receipt', () => {
  it('tells all that came up to its payment, and what is left', async () => {
    await accepted();
    paid(38066);
    paid(10_000);
    await screenStore().flush();
    await open('Receipt');
    await userEvent.selectOptions(
      screen.getByLabelText('Which payment'),
      screen.getByRole('option', { name: /380\.66/ }),
    );
    await issue(/^Issue receipt/);
    expect(out().receipt[0]?.body).toMatchObject({ paid: 38066, total: 76131, left: 38065 });
  });
});

describe('a receipt of money that is at the bank', () => {
  it('stays that of its payment once this is noted at the bank', async () => {
    await accepted();
    paid(38066);
    await screenStore().flush();
    await open('Receipt');
    await issue(/^Issue receipt/);
    const paymentId = screenStore().getState().entries.payment[0]?.id ?? '';
    await act(async () => {
      const payout = { orderId: ORDER, paymentId, day: TEST_DAY, reference: '', feeMinor: 0 };
      actions().note('At the bank', [{ kind: 'payout', body: payout }]);
      paid(100);
      await screenStore().flush();
    });
    expect(screen.getByRole('option', { name: /380\.66 USD · has a receipt/ })).toBeInTheDocument();
    expect(out().receipt[0]?.body.payment.entryId).toBe(paymentId);
  });
});

describe('a credit note', () => {
  it('gives back an invoice whole, with just the tax that was taken, and then a new one may go out', async () => {
    await accepted();
    await open('Invoice');
    await issue(/^Issue invoice/);
    await go('Credit note');
    await userEvent.click(screen.getByRole('button', { name: 'All that is left of it' }));
    expect(screen.getByText('Write down why it is given back.')).toBeVisible();
    await userEvent.type(screen.getByLabelText('Why'), 'Sent by mistake');
    await issue(/^Issue credit note/);
    expect(out().creditNote[0]?.body).toMatchObject({
      ...{ why: 'Sent by mistake', sums: { subtotal: 71150, tax: 4981, total: 76131 } },
    });
    await userEvent.click(screen.getByRole('tab', { name: 'Invoice' }));
    expect(screen.queryByText(/a second one would ask/)).toBeNull();
  });

  it('gives back no more than is left', async () => {
    await accepted();
    await open('Invoice');
    await issue(/^Issue invoice/);
    await go('Credit note');
    expect(screen.getByText('761.31 USD')).toBeVisible();
    expect(
      screen.getByText(/can be given back of invoice .*: 711\.50 USD and 49\.81 USD of tax$/),
    ).toBeVisible();
    await userEvent.click(screen.getByRole('button', { name: 'Add a part' }));
    await userEvent.type(screen.getByLabelText('What'), 'Too much');
    await userEvent.type(screen.getByLabelText('Amount'), '800');
    expect(
      screen.getByText(/800\.00 USD is more than the 711\.50 USD without tax that is left/),
    ).toBeVisible();
  });
});

describe('withdrawing', () => {
  it('an invoice says first which credit note and what money goes with it', async () => {
    await accepted();
    paid(38066);
    await open('Invoice');
    await issue(/^Issue invoice/);
    await go('Credit note');
    await userEvent.click(screen.getByRole('button', { name: 'Add a part' }));
    await userEvent.type(screen.getByLabelText('Why'), 'One came back');
    await userEvent.type(screen.getByLabelText('What'), 'Shirt');
    await userEvent.type(screen.getByLabelText('Amount'), '10');
    await issue(/^Issue credit note/);
    await go('Invoice');
    await userEvent.click(screen.getByRole('button', { name: /^Withdraw Invoice/ }));
    const number = `${TEST_YEAR % 100}-001.`;
    const told = `^What credit note ${number} gave back of it counts no more either\\. 380\\.66 USD`;
    expect(screen.getByText(new RegExp(told))).toBeVisible();
  });

  it('an invoice of changes says first that they are owed all the same', async () => {
    await accepted();
    paid(38066);
    await open('Invoice');
    await issue(/^Issue invoice/);
    await act(async () => {
      noted({ what: 'change', wish: 'Names on the sleeve', amountMinor: 5000, currency: 'USD' });
      await screenStore().flush();
    });
    await userEvent.click(screen.getByRole('button', { name: /^Issue invoice/ }));
    await waitFor(() => expect(out().invoice).toHaveLength(2));
    await userEvent.click(
      screen.getByRole('button', { name: new RegExp(`^Withdraw Invoice ${TEST_YEAR % 100}-002`) }),
    );
    expect(
      screen.getByText(/Its changes are owed all the same, until another invoice asks for them\./),
    ).toBeVisible();
  });

  it('a quote says first that the yes to it goes with it', async () => {
    await accepted();
    await open('Quote');
    await userEvent.click(screen.getByRole('button', { name: /^Withdraw Quote, version 1/ }));
    expect(screen.getByText(/^The customer said yes to this quote\./)).toBeVisible();
  });
});

describe('papers about the goods', () => {
  it('show a proof of the pictures as they are, with an approval line', async () => {
    await accepted();
    await open('Proof');
    expect(screen.getByText('2 prints to approve')).toBeVisible();
    const sheet = screen.getByRole('article');
    expect(within(sheet).getByText('approved, name')).toBeVisible();
    expect(within(sheet).getAllByText(/3\.5 in below the collar/).length).toBeGreaterThan(0);
    await issue(/^Issue proof/);
    expect(out().proof[0]?.body.goods[0]?.prints).toHaveLength(2);
  });

  it('caution that a proof lacks pictures, with the way to the job, until they are there', async () => {
    await accepted();
    await open('Proof');
    const caution = screen.getByText(
      'No picture of “Hill path picture” and “Club crest” is here: their places stay empty, so the customer says yes to a print that the proof does not show.',
    );
    const row = within(caution.closest('li') ?? document.body);
    expect(row.getByText(/Add the pictures in the job before the proof goes out\./)).toBeVisible();
    expect(row.getByRole('link', { name: 'Go to the job' })).toHaveAttribute('href', '/jobs/club-order');
    const give = (id: string, letter: string) =>
      act(async () => {
        actions().edit('Picture', [
          {
            do: 'change',
            kind: 'artwork',
            id,
            to: (body) => ({ ...body, picture: aPicture({ fileId: letter.repeat(64) }) }),
          },
        ]);
        await screenStore().flush();
      });
    await give('hill-path', 'a');
    expect(screen.getByText(/^No picture of “Club crest” is here: its place stays empty/)).toBeVisible();
    await give('club-crest', 'b');
    expect(screen.queryByText(/^No picture of/)).toBeNull();
  });

  it('count the pieces of a delivery note', async () => {
    await accepted();
    await open('Delivery note');
    expect(screen.getByText('37 pieces')).toBeVisible();
    expect(screen.queryByRole('link', { name: 'Go to the names' })).toBeNull();
    await issue(/^Issue delivery note/);
    expect(out().deliveryNote).toHaveLength(1);
  });

  it('caution that names and sizes of a delivery note do not agree, with the way to the names', async () => {
    await accepted();
    const sizes = ['S', 'M'];
    actions().edit('Names', [
      {
        do: 'change',
        kind: 'order',
        id: ORDER,
        to: (order) =>
          orderSchema.parse({
            ...order,
            lines: [
              {
                ...{ jobId: 'club-order', lineId: 'shirts' },
                names: sizes.map((size, at) => ({ id: `n${at}`, name: `Member ${at}`, number: '', size })),
              },
            ],
          }),
      },
    ]);
    await open('Delivery note');
    // 4 S and 9 M among the 37; one name of each.
    expect(
      screen.getByText(/37 pieces ordered, 2 names: 4 S ordered, 1 named; 9 M ordered, 1 named;/),
    ).toBeVisible();
    expect(screen.getByRole('link', { name: 'Go to the names' })).toHaveAttribute('href', '#order-names');
    await issue(/^Issue delivery note/);
    expect(out().deliveryNote).toHaveLength(1);
  });

  it('give a care card to each piece, without a number', async () => {
    await accepted();
    await open('Care card');
    expect(screen.getByText('37 cards')).toBeVisible();
    expect(screen.queryByRole('button', { name: /^Issue/ })).toBeNull();
    await waitFor(() => expect(screen.getByText(/Wash inside out/)).toBeVisible());
  });
});
