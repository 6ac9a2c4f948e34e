// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import './shopStage';
import { act, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import {
  actions,
  bring,
  click,
  field,
  form,
  noted,
  shelf,
  shop,
  shopNow,
  state,
} from '@/tests/app/_shops/shopHands';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

describe('what a shop owes for goods', () => {
  it('are settled to the cent, part by part, and taken back whole', async () => {
    await shop({ statementDays: 30 });
    await bring('6', '6');
    const statement = await state('3', '1', '28');
    // The example's stall takes commission on the price without tax: 84.00 ÷ 1.07 × 40 % = 31.40.
    expect(within(statement).getByRole('status')).toHaveTextContent(
      '84.00 USD less 31.40 USD that the shop keeps, 40 % of its price without tax: 52.60 USD due.',
    );
    await click('Note the statement');
    expect(shelf().sort()).toEqual(['home 0', 'shop 2']);
    expect(noted().shopStatement.map(({ body }) => body.dueMinor)).toEqual([5260]);
    expect(screen.getByText(/56\.00 USD at its last prices/)).toBeInTheDocument();

    await click(/Note a payment/);
    const amount = field(form('Payment'), 'How much');
    expect(amount).toHaveValue('52.60');
    await userEvent.clear(amount);
    await userEvent.type(amount, '20');
    await click('Note the payment');
    expect(screen.getByText(/20\.00 USD paid, 32\.60 USD open/)).toBeInTheDocument();

    await click(/Take back the statement/);
    expect(noted().shopStatement).toEqual([]);
    expect(noted().shopPayment).toEqual([]);
    expect(shelf().sort()).toEqual(['home 0', 'shop 6']);
    // Undo counts them again.
    await act(async () => {
      await actions().undo();
    });
    expect(noted().shopStatement).toHaveLength(1);
    expect(shelf().sort()).toEqual(['home 0', 'shop 2']);
  });

  it('are settled of the price that was agreed, with or without tax, and the statement keeps which', async () => {
    await shop();
    await bring('6', '6');
    const base = screen.getByRole('combobox', { name: 'That is a share of the' });
    const keeps = screen.getByRole('textbox', { name: 'The shop keeps' });
    expect(base).toHaveDisplayValue('Price without tax, as usual');
    expect(keeps).toHaveAccessibleDescription(/Of its price without tax\./);
    await userEvent.selectOptions(base, 'Price with tax');
    expect(keeps).toHaveAccessibleDescription(/Of its price with tax\./);
    const statement = await state('2', '', '30');
    // 40 % of 60.00; without the 7 % tax that are inside it would be 22.43.
    expect(within(statement).getByRole('status')).toHaveTextContent(
      '60.00 USD less 24.00 USD that the shop keeps, 40 % of its price with tax: 36.00 USD due.',
    );
    await click('Note the statement');
    expect(noted().shopStatement.map(({ body }) => [body.commissionBase, body.dueMinor])).toEqual([
      ['withTax', 3600],
    ]);
    expect(screen.getByText(/2 pieces sold; it keeps 40.% of its price with tax/)).toBeInTheDocument();
    await userEvent.selectOptions(base, 'Price without tax, as usual');
    expect(shopNow()?.commissionBase).toBeNull();
  });

  it('want their price anew where the last was of another currency', async () => {
    await shop();
    await bring('6', '6');
    act(() => {
      actions().note('Statement', [
        {
          kind: 'shopStatement',
          body: {
            ...{ shopId: 'corner', day: TEST_DAY, currency: 'JPY', dueMinor: 2400 },
            ...{ commissionShare: 0.4, commissionBase: 'withTax' },
            rows: [
              {
                goods: { jobId: 'fair-shirts', lineId: 'fern', size: 'M' },
                ...{ grade: 'first', sold: 1, missing: 0, eachMinor: 4000 },
              },
            ],
          },
        },
      ]);
    });
    // Nothing of the stock was moved by hand here: six lie there, at 4,000 yen.
    expect(screen.getByText(/24,000 JPY at its last prices/)).toBeInTheDocument();
    expect(field(await state('1', '', null), 'Its price')).toHaveValue('');
  });

  it('are paid for part by part, and a payment is taken back by itself', async () => {
    await shop();
    await bring('6', '6');
    await state('3', '', '28');
    await click('Note the statement');
    await click(/Note a payment/);
    await click('Note the payment');
    expect(screen.getByText('Settled')).toBeInTheDocument();
    // In one row two things can be taken back, and each key says which without being spoken.
    expect(screen.getAllByText(/^Take back/).map(({ textContent }) => textContent)).toEqual([
      'Take back the statement',
      'Take back the payment',
    ]);
    await click(/Take back the payment of 52\.60 USD/);
    expect(noted().shopPayment).toEqual([]);
    expect(noted().shopStatement).toHaveLength(1);
    expect(screen.getByText(/^not paid/)).toBeInTheDocument();
    await click('Count it again');
    expect(noted().shopPayment).toHaveLength(1);
  });

  it('may be paid for by a statement that another device took back: the shop has it to its credit', async () => {
    await shop();
    act(() => {
      const body = { ...{ shopId: 'corner', statementId: 'gone' }, day: TEST_DAY, amountMinor: 1000 };
      actions().note('Payment', [{ kind: 'shopPayment', body: { ...body, currency: 'USD' } }]);
    });
    expect(
      screen.getByText(/^10\.00 USD paid for a statement that is not here any more/),
    ).toBeInTheDocument();
    expect(screen.queryByRole('button', { name: 'Remove Corner shop' })).toBeNull();
    await click(/Take back the payment of 10\.00 USD/);
    expect(noted().shopPayment).toEqual([]);
    expect(screen.getByText('No statement')).toBeInTheDocument();
  });

  it('cannot be reckoned before the terms are set, and the sentence says where', async () => {
    await shop({ channelId: null });
    await bring('6', '6');
    await state('3', '', '28');
    await click('Note the statement');
    expect(noted().shopStatement).toEqual([]);
    expect(screen.getByRole('button', { name: 'Note the statement' })).toHaveAccessibleDescription(
      /Choose the way of selling first, under Terms/,
    );
  });

  it('want a price for what is sold, for none is made up', async () => {
    await shop();
    await bring('6', '6');
    await state('3', '', null);
    await click('Note the statement');
    expect(noted().shopStatement).toEqual([]);
  });
});
