// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { act, cleanup, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { CLUB_CUSTOMER_ID } from '@/lib/examples/clubEnquiry';
import { clearScreens, leaveScreens, screenStore } from '@/tests/app/_screens/screens';
import { TEST_DAY } from '@/tests/tools/clock/testDay';
import {
  accepted,
  approve,
  enterOrder,
  form,
  invoice,
  pay,
  payments,
  quote,
  section,
  steps,
  tell,
} from './inOrder';

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

/** The page loaded anew, with the tab's memory. */
async function reload(): Promise<void> {
  await act(() => screenStore().flush());
  cleanup();
  leaveScreens();
  await enterOrder();
}

const tabMemory = (): string => JSON.stringify({ ...sessionStorage });

describe('what is typed in a form of an order', () => {
  it('is there after a reload in the row that waits for it, and the hand is not taken there', async () => {
    await enterOrder();
    await quote();
    await userEvent.click(screen.getByRole('button', { name: 'Accepted: Yes or no to the quote' }));
    const who = form('Accepted').getByLabelText('Who said so');
    await userEvent.clear(who);
    await userEvent.type(who, 'Robin of the board');
    await userEvent.selectOptions(form('Accepted').getByLabelText('How'), 'By phone');
    await userEvent.selectOptions(
      form('Accepted').getByLabelText('What they chose'),
      'Back only, 662.33 USD',
    );
    await reload();
    const again = form('Accepted');
    expect(again.getByLabelText('Who said so')).toHaveValue('Robin of the board');
    expect(again.getByLabelText('How')).toHaveDisplayValue('By phone');
    expect(again.getByLabelText('What they chose')).toHaveDisplayValue('Back only, 662.33 USD');
    expect(document.body).toHaveFocus();
    await userEvent.click(again.getByRole('button', { name: 'Note it' }));
    expect(steps().at(-1)).toMatchObject({ what: 'accepted', by: 'Robin of the board', how: 'phone' });
    expect(tabMemory()).not.toContain('Robin');
  });

  it('is there where it happened out of turn, whose fold stands open then', async () => {
    await enterOrder();
    await userEvent.click(screen.getByText('Something else happened'));
    await userEvent.click(screen.getByRole('button', { name: 'Another proof wished' }));
    await userEvent.type(form('Another proof wished').getByLabelText('What they want otherwise'), 'bigger');
    await reload();
    expect(form('Another proof wished').getByLabelText('What they want otherwise')).toHaveValue('bigger');
    expect(form('Another proof wished').getByLabelText('What they want otherwise')).toBeVisible();
  });

  it('keeps a figure that is none, so that the one before is not noted in its place', async () => {
    await enterOrder();
    await accepted();
    await userEvent.click(section('Money').getByRole('button', { name: 'A payment' }));
    const amount = () => form('Payment').getByLabelText(/^How much/);
    await userEvent.clear(amount());
    await userEvent.type(amount(), '200,50');
    await userEvent.selectOptions(form('Payment').getByLabelText('How'), 'Cash');
    await userEvent.click(form('Payment').getByText('Fee, note'));
    await userEvent.type(form('Payment').getByLabelText(/^Fee kept back/), '3,20');
    await reload();
    expect(form('Payment').getByLabelText(/^Fee kept back/)).toHaveValue('3,20');
    await userEvent.clear(form('Payment').getByLabelText(/^Fee kept back/));
    expect(amount()).toHaveValue('200,50');
    expect(form('Payment').getByLabelText('How')).toHaveDisplayValue('Cash');
    await userEvent.click(form('Payment').getByRole('button', { name: 'Note it' }));
    expect(payments()).toEqual([]);
    await userEvent.clear(amount());
    await userEvent.type(amount(), '200.50');
    await userEvent.click(form('Payment').getByRole('button', { name: 'Note it' }));
    expect(payments()).toMatchObject([{ amountMinor: 20050, way: 'cash' }]);
    await reload();
    expect(screen.queryByRole('form', { name: 'Payment' })).toBeNull();
  });

  it('leaves what nobody typed to follow the order', async () => {
    await enterOrder();
    approve(true);
    await accepted();
    await userEvent.click(screen.getByRole('button', { name: 'It came: Deposit 380.66 USD' }));
    await userEvent.selectOptions(form('Payment').getByLabelText('How'), 'Card');
    await act(() => screenStore().flush());
    cleanup();
    leaveScreens();
    await screenStore().open();
    // 380.66 less the 80.66 that came meanwhile.
    pay(8066);
    await enterOrder();
    expect(form('Payment').getByLabelText('How')).toHaveDisplayValue('Card');
    expect(form('Payment').getByLabelText(/^How much/)).toHaveValue('300.00');
  });

  it('is given up by “Leave it”, and stays where its button is pressed again', async () => {
    await enterOrder();
    const press = () => userEvent.click(section('Money').getByRole('button', { name: 'Money spent' }));
    const which = () => form('Money spent').getByLabelText('Which');
    await press();
    await userEvent.type(which(), '45 shirts');
    await press();
    expect(screen.queryByRole('form', { name: 'Money spent' })).toBeNull();
    await press();
    expect(which()).toHaveValue('45 shirts');
    await userEvent.click(form('Money spent').getByRole('button', { name: 'Leave it' }));
    await press();
    expect(which()).toHaveValue('');
    expect(tabMemory()).not.toContain('45 shirts');
  });

  it('of a credit note is there after a reload, an amount that is none too', async () => {
    await enterOrder();
    await accepted();
    await invoice();
    const creditNote = async () => {
      await userEvent.click(screen.getByRole('button', { name: 'More papers' }));
      await userEvent.click(screen.getByRole('tab', { name: 'Credit note' }));
      return within(screen.getByRole('tabpanel'));
    };
    const typed = await creditNote();
    await userEvent.type(typed.getByLabelText('Why'), 'Two shirts came late');
    await userEvent.click(typed.getByRole('button', { name: 'Add a part' }));
    await userEvent.type(typed.getByLabelText('What'), 'Late');
    await userEvent.type(typed.getByLabelText('Amount'), '25,00');
    await reload();
    const again = await creditNote();
    expect(again.getByLabelText('Why')).toHaveValue('Two shirts came late');
    expect(again.getByLabelText('What')).toHaveValue('Late');
    expect(again.getByLabelText('Amount')).toHaveValue('25,00');
  });

  it('goes where the customer is erased meanwhile, and from before when the order is opened', async () => {
    await enterOrder();
    await userEvent.click(section('Money').getByRole('button', { name: 'A payment' }));
    await userEvent.click(form('Payment').getByText('Fee, note'));
    await userEvent.type(form('Payment').getByLabelText('Note'), 'from Kim');
    cleanup();
    // As another tab does it.
    await act(() => screenStore().actions.erase(CLUB_CUSTOMER_ID, TEST_DAY));
    expect(tabMemory()).toContain('Kim');
    await enterOrder();
    expect(tabMemory()).not.toContain('Kim');
    await userEvent.click(section('Money').getByRole('button', { name: 'A payment' }));
    await userEvent.click(form('Payment').getByText('Fee, note'));
    await userEvent.type(form('Payment').getByLabelText('Note'), 'from Kim');
    expect(tabMemory()).not.toContain('Kim');
  });

  it('goes from under the hand where the customer is erased meanwhile', async () => {
    await enterOrder();
    tell({ what: 'revised', wish: 'bigger' });
    await userEvent.click(section('Money').getByRole('button', { name: 'Money spent' }));
    await userEvent.type(form('Money spent').getByLabelText('Which'), 'for Kim');
    await act(() => screenStore().actions.erase(CLUB_CUSTOMER_ID, TEST_DAY));
    expect(form('Money spent').getByLabelText('Which')).toHaveValue('');
    expect(tabMemory()).not.toContain('Kim');
  });
});
