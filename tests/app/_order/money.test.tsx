// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { act, cleanup, fireEvent, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { CLUB_ENQUIRY_ID } from '@/lib/examples/clubEnquiry';
import { clearScreens, disk, screenStore, undo } from '@/tests/app/_screens/screens';
import { TEST_DAY } from '@/tests/tools/clock/testDay';
import { eventually } from '@/tests/tools/eventually';
import { accepted, approve, dayIn, enterOrder, form, pay, payments, said, section, tell } from './inOrder';

vi.mock('next/navigation', () => ({
  usePathname: () => '/orders/club-enquiry',
  useRouter: () => ({ push: () => undefined }),
}));
vi.mock('@/app/_store/appDocuments', async () => {
  const { screenStore: appDocuments } = await import('@/tests/app/_screens/screens');
  return { appDocuments };
});
vi.mock('@/app/_studies/useStudies', () => ({ useStudies: () => new Map() }));

afterEach(() => {
  cleanup();
  clearScreens();
});

const expenses = () =>
  screenStore()
    .getState()
    .entries.expense.map(({ body }) => body);

const payouts = () =>
  screenStore()
    .getState()
    .entries.payout.map(({ body }) => body);

/** A figure of the section by what stands under it. */
const figure = (label: RegExp) =>
  section('Money').getByText(label).closest('div')?.querySelector('dd')?.textContent;

async function openPayment(amount?: string) {
  await userEvent.click(section('Money').getByRole('button', { name: 'A payment' }));
  const payment = form('Payment');
  if (amount !== undefined) {
    await userEvent.clear(payment.getByLabelText(/^How much/));
    await userEvent.type(payment.getByLabelText(/^How much/), amount);
  }
  return payment;
}

describe('money of an order', () => {
  it('says that nothing is agreed before anything is, and never 0', async () => {
    await enterOrder();
    expect(figure(/^total with tax/)).toBe('–not agreed yet');
    expect(section('Money').getByText('Nothing spent,')).toBeVisible();
  });

  it('takes the deposit with the amount that is due, from the row that waits for it', async () => {
    await enterOrder();
    approve(true);
    await accepted();
    await userEvent.click(screen.getByRole('button', { name: 'It came: Deposit 380.66 USD' }));
    const payment = form('Payment');
    expect(payment.getByLabelText(/^How much/)).toHaveValue('380.66');
    expect(payment.getByText('380.65 USD stays open.')).toBeVisible();
    await userEvent.click(payment.getByRole('button', { name: 'Note it' }));
    expect(payments()).toMatchObject([
      { kind: 'payment', amountMinor: 38066, currency: 'USD', way: 'transfer' },
    ]);
    expect(figure(/^came in/)).toBe('380.66');
    expect(figure(/^owed/)).toBe('380.65');
    expect(screen.getByText(/^You order the blanks/)).toBeVisible();
    await undo();
    expect(figure(/^came in/)).toBe('0.00');
  });

  it('tells a payment that is more than is owed, and keeps it as it is said', async () => {
    await enterOrder();
    await accepted();
    const payment = await openPayment('800');
    expect(payment.getByText(/^38\.69 USD more than is owed\./)).toBeVisible();
    await userEvent.click(payment.getByRole('button', { name: 'Note it' }));
    expect(payments()[0]?.amountMinor).toBe(80000);
    expect(section('Money').getByText('38.69 USD too much came,')).toBeVisible();
  });

  it('tells what stays open of a part', async () => {
    await enterOrder();
    await accepted();
    const payment = await openPayment('100');
    expect(payment.getByText('661.31 USD stays open.')).toBeVisible();
  });

  it.each(['0', '-5', '12.345', 'abc'])('does not take %s as an amount', async (typed) => {
    await enterOrder();
    await accepted();
    const payment = await openPayment(typed);
    await userEvent.click(payment.getByRole('button', { name: 'Note it' }));
    expect(payments()).toEqual([]);
    expect(payment.getByLabelText(/^How much/)).toHaveValue(typed);
  });

  it('says of a figure that could be misread nothing of one in force, for no payment is noted yet', async () => {
    await enterOrder();
    await accepted();
    const amount = (await openPayment('200,50')).getByLabelText(/^How much/);
    expect(amount).toHaveAccessibleDescription(/Type 200\.50\.$/);
  });

  it('keeps a fee and cash apart, and a fee larger than what came is told', async () => {
    await enterOrder();
    await accepted();
    const payment = await openPayment('100');
    await userEvent.selectOptions(payment.getByLabelText('How'), 'Card');
    await userEvent.click(payment.getByText('Fee, note'));
    await userEvent.type(payment.getByLabelText(/^Fee kept back/), '120');
    expect(payment.getByText(/^The fee is 20\.00 USD more than what came\./)).toBeVisible();
    await userEvent.clear(payment.getByLabelText(/^Fee kept back/));
    await userEvent.type(payment.getByLabelText(/^Fee kept back/), '3.20');
    await userEvent.click(payment.getByRole('button', { name: 'Note it' }));
    expect(payments()).toMatchObject([{ way: 'card', feeMinor: 320 }]);
    expect(section('Money').getByText('Fees kept back of what came: 3.20 USD.')).toBeVisible();
    expect(section('Money').getByText('Not noted at the bank yet: 96.80 USD.')).toBeVisible();
  });

  it('adds the day at the bank later by an entry of its own, and the payment stays', async () => {
    await enterOrder();
    await accepted();
    pay(38066);
    await userEvent.click(section('Money').getByText('Payments'));
    await userEvent.click(section('Money').getByRole('button', { name: /^At the bank: 380\.66 USD/ }));
    const bank = form('At the bank');
    fireEvent.change(bank.getByLabelText('Day'), { target: { value: dayIn(-1) } });
    await userEvent.type(bank.getByLabelText(/^Fee kept back/), '3.20');
    await userEvent.type(bank.getByLabelText('Reference there'), 'R-77');
    await userEvent.click(bank.getByRole('button', { name: 'Note it' }));
    const [kept] = screenStore().getState().entries.payment;
    expect(kept?.body).toMatchObject({ amountMinor: 38066, day: TEST_DAY, feeMinor: 0 });
    expect(payouts()).toEqual([
      {
        ...{ orderId: kept?.body.orderId, paymentId: kept?.id, day: dayIn(-1) },
        reference: 'R-77',
        feeMinor: 320,
      },
    ]);
    expect(
      section('Money').getByText(new RegExp(`at the bank since ${said(dayIn(-1))}, reference R-77`)),
    ).toBeVisible();
    await undo();
    expect(payouts()).toEqual([]);
    expect(payments()).toHaveLength(1);
  });

  it('names a payment by the id it is kept under, though it was noted at the bank while it waited to be written', async () => {
    await enterOrder();
    await accepted();
    act(() => {
      const { actions } = screenStore();
      const orderId = CLUB_ENQUIRY_ID;
      const money = { amountMinor: 100, currency: 'USD', way: 'card', feeMinor: 0, note: '' } as const;
      const body = { ...money, orderId, day: TEST_DAY, kind: 'payment' } as const;
      actions.note('Paid', [{ kind: 'payment', body }]);
      const paymentId = screenStore().getState().entries.payment[0]?.id ?? '';
      actions.note('At the bank', [
        { kind: 'payout', body: { orderId, paymentId, day: TEST_DAY, reference: '', feeMinor: 0 } },
      ]);
    });
    await act(() => screenStore().flush());
    const { payment } = screenStore().getState().entries;
    expect(payment[0]?.id).not.toMatch(/^waiting/);
    expect(payouts()).toMatchObject([{ paymentId: payment[0]?.id }]);
  });

  it('goes back with what was noted of it at the bank', async () => {
    await enterOrder();
    await accepted();
    pay(38066);
    await userEvent.click(section('Money').getByText('Payments'));
    await userEvent.click(section('Money').getByRole('button', { name: /^At the bank: 380\.66 USD/ }));
    await userEvent.click(form('At the bank').getByRole('button', { name: 'Note it' }));
    expect(payouts()).toHaveLength(1);
    await userEvent.click(section('Money').getByRole('button', { name: /^Take back 380\.66 USD/ }));
    expect(payouts()).toEqual([]);
    expect(payments()).toEqual([]);
  });

  it('gives money back, and tells where more would go back than came', async () => {
    await enterOrder();
    await accepted();
    pay(38066);
    const back = await openPayment('400');
    await userEvent.selectOptions(back.getByLabelText('What happened'), 'Given back');
    expect(back.getByText(/^Only 380\.66 USD came, and 400\.00 USD would go back\./)).toBeVisible();
    await userEvent.clear(back.getByLabelText(/^How much/));
    await userEvent.type(back.getByLabelText(/^How much/), '80.66');
    await userEvent.click(back.getByRole('button', { name: 'Note it' }));
    expect(figure(/^came in/)).toBe('300.00');
  });

  it('says when the deposit does not cover the blanks, and how far own money was in it', async () => {
    await enterOrder();
    await accepted();
    await userEvent.click(section('Money').getByRole('button', { name: 'Money spent' }));
    const spent = form('Money spent');
    await userEvent.type(spent.getByLabelText(/^How much/), '400');
    await userEvent.type(spent.getByLabelText('Which'), '45 white shirts');
    await userEvent.click(spent.getByRole('button', { name: 'Note it' }));
    expect(expenses()).toMatchObject([
      { kind: 'blanks', what: '45 white shirts', amountMinor: 40000, receipt: null },
    ]);
    expect(
      section('Money').getByText('Blanks and freight cost 19.34 USD more than the deposit.'),
    ).toBeVisible();
    expect(
      section('Money').getByText(`At most 400.00 USD of your own money was in it, on ${said(TEST_DAY)}.`),
    ).toBeVisible();
  });

  it('keeps a receipt with what was spent', async () => {
    await enterOrder();
    await userEvent.click(section('Money').getByRole('button', { name: 'Money spent' }));
    const spent = form('Money spent');
    await userEvent.type(spent.getByLabelText(/^How much/), '9.50');
    await userEvent.selectOptions(spent.getByLabelText('On what'), 'Freight');
    await userEvent.upload(spent.getByLabelText('File to keep'), new File(['paid'], 'freight.pdf'));
    expect(await spent.findByText('freight.pdf')).toBeVisible();
    await userEvent.click(spent.getByRole('button', { name: 'Note it' }));
    const receipt = expenses()[0]?.receipt;
    expect(receipt).toMatchObject({ fileName: 'freight.pdf', purpose: 'receipt' });
    const kept = await screenStore().actions.readFile(receipt?.fileId ?? '');
    expect(kept?.name).toBe('freight.pdf');
  });

  it('keeps what was typed while nothing can be written, and says so', async () => {
    await enterOrder();
    await accepted();
    disk.isFull = true;
    await userEvent.click((await openPayment('100')).getByRole('button', { name: 'Note it' }));
    await eventually(() => expect(screenStore().getState().kept.state).toBe('notKept'));
    expect(figure(/^came in/)).toBe('100.00');
  });

  it('is held where the order is cancelled, and goes back from there', async () => {
    await enterOrder();
    await accepted();
    pay(38066);
    tell({ what: 'cancelled', note: '' });
    expect(section('Money').getByText('380.66 USD came and is held:')).toBeVisible();
    expect(figure(/^held/)).toBe('380.66');
    expect(section('Money').queryByText('owed')).toBeNull();
    const back = await openPayment();
    expect(back.getByLabelText('What happened')).toHaveDisplayValue('Given back');
    expect(back.getByLabelText(/^How much/)).toHaveValue('380.66');
    expect(back.getByText('0.00 USD stays received.')).toBeVisible();
    await userEvent.click(back.getByRole('button', { name: 'Note it' }));
    expect(payments().at(-1)).toMatchObject({ kind: 'refund', amountMinor: 38066 });
    expect(section('Money').getByText('Nothing spent,')).toBeVisible();
    expect(figure(/^owed/)).toBe('0.00');
  });

  it('draws how far own money was in it once that is opened', async () => {
    await enterOrder();
    await accepted();
    pay(38066);
    await userEvent.click(section('Money').getByText('Your own money in it'));
    expect(
      await section('Money').findByRole('table', { name: 'What came less what was spent' }),
    ).toBeVisible();
  });

  it('takes a payment back, and it does not count any more', async () => {
    await enterOrder();
    await accepted();
    pay(38066);
    await userEvent.click(section('Money').getByText('Payments'));
    const list = within(section('Money').getByRole('list', { name: 'Payments' }));
    await userEvent.click(list.getByRole('button', { name: /^Take back 380\.66 USD/ }));
    expect(payments()).toEqual([]);
    expect(figure(/^owed/)).toBe('761.31');
  });
});
