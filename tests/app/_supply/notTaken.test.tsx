// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import './supplyStage';
import { cleanup, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it, vi } from 'vitest';
import { StockroomScreen } from '@/app/_stockroom/StockroomScreen';
import { BuyingListScreen } from '@/app/_supply/buying/BuyingListScreen';
import { BuyingListsScreen } from '@/app/_supply/buying/BuyingListsScreen';
import { SuppliersScreen } from '@/app/_supply/SuppliersScreen';
import { buyingListSchema } from '@/shared/schemas/making/supply';
import { damage, enter, idsOf, leaveScreens, screenStore } from '@/tests/app/_screens/screens';

const click = (name: string | RegExp) => userEvent.click(screen.getByRole('button', { name }));
const refusing = (what: 'edit' | 'note') =>
  vi.spyOn(screenStore().actions, what).mockReturnValue({ state: 'notOpen' });
const said = () => screen.getByRole('alert').textContent;

describe('what is not taken is said, and what was typed stays', () => {
  it('of goods that came', async () => {
    const note = refusing('note');
    await enter(<SuppliersScreen />);
    await click('Goods in');
    const form = within(screen.getByRole('form', { name: 'Goods in' }));
    await userEvent.selectOptions(
      form.getByRole('combobox', { name: 'What came' }),
      'White shirt, 100 % polyester, M',
    );
    await userEvent.click(form.getByRole('button', { name: 'Add a row' }));
    await userEvent.type(form.getByRole('textbox', { name: 'Counted' }), '12');
    await userEvent.click(form.getByRole('button', { name: 'Note the goods in' }));
    expect(said()).toMatch(/not noted. What you typed stays: try again/);
    expect(form.getByRole('textbox', { name: 'Counted' })).toHaveValue('12');
    note.mockRestore();
    await userEvent.click(form.getByRole('button', { name: 'Note the goods in' }));
    expect(screenStore().getState().entries.goodsIn[0]?.body.rows).toMatchObject([{ counted: 12 }]);
    expect(screen.queryByRole('form', { name: 'Goods in' })).toBeNull();
  });

  it.each([
    ['New supplier', 'supplier'],
    ['New consumable', 'consumable'],
  ] as const)('of a %s', async (label, kind) => {
    const edit = refusing('edit');
    await enter(<SuppliersScreen />);
    const before = idsOf(kind).length;
    await userEvent.type(screen.getByRole('textbox', { name: label }), 'Cards and tape{Enter}');
    expect(said()).toMatch(/What you typed stays/);
    expect(screen.getByRole('textbox', { name: label })).toHaveValue('Cards and tape');
    edit.mockRestore();
    await userEvent.type(screen.getByRole('textbox', { name: label }), '{Enter}');
    expect(idsOf(kind)).toHaveLength(before + 1);
    expect(screen.queryByRole('alert')).toBeNull();
  });

  it('of a buying list', async () => {
    refusing('edit');
    await enter(<BuyingListsScreen />);
    await click('New list');
    await userEvent.click(screen.getByRole('checkbox', { name: /not accepted yet/ }));
    await click('Make the list');
    expect(said()).toMatch(/What you typed stays/);
    expect(screen.getByRole('checkbox', { name: /not accepted yet/ })).toBeChecked();
    expect(idsOf('buyingList')).toEqual([]);
  });

  it('of a count in the stockroom', async () => {
    refusing('note');
    await enter(<StockroomScreen />);
    await click('Count or note Letter sheet');
    const form = within(screen.getByRole('form', { name: 'Note for Letter sheet' }));
    await userEvent.type(form.getByLabelText('How much'), '100');
    await userEvent.click(form.getByRole('button', { name: 'Note it' }));
    expect(said()).toMatch(/What you typed stays/);
    expect(form.getByLabelText('How much')).toHaveValue('100');
  });
});

describe('a count of fewer than none', () => {
  it('is refused, said, and stays to be mended', async () => {
    await enter(<StockroomScreen />);
    await click('Count or note Letter sheet');
    const form = within(screen.getByRole('form', { name: 'Note for Letter sheet' }));
    const many = form.getByLabelText('How much');
    await userEvent.type(many, '-3{Enter}');
    expect(many).toHaveValue('-3');
    expect(form.getByText(/-3 is too small: the least here is 0/)).toBeVisible();
    expect(screenStore().getState().entries.stockCount).toEqual([]);
  });
});

describe('a record that cannot be read is told', () => {
  const entry = (kind: string, count: number) => ({
    ...{
      id: `phone000-${count}`,
      kind,
      version: 1,
      device: 'phone000',
      count,
      at: 1_000,
      body: { wrong: 1 },
    },
  });

  it('on every screen whose figures lack it', async () => {
    // The store is on the shelf before anything is damaged.
    await enter(<SuppliersScreen />);
    screenStore().actions.edit('List', [
      { do: 'add', kind: 'buyingList', id: 'list', body: buyingListSchema.parse({ name: 'For the club' }) },
    ]);
    await screenStore().flush();
    cleanup();
    leaveScreens();
    await damage(entry('goodsIn', 1), 'entries');
    await damage(entry('stockMove', 2), 'entries');
    await damage({ ...{ id: 'torn', kind: 'buyingList', version: 1, revision: 1 }, body: { wrong: 1 } });
    const screens = [
      [<SuppliersScreen key="1" />, ['goodsIn', 'stockMove']],
      [<BuyingListsScreen key="2" />, ['buyingList']],
      [<BuyingListScreen key="3" listId="list" />, ['buyingList', 'goodsIn', 'stockMove']],
      [<StockroomScreen key="4" />, ['stockMove']],
    ] as const;
    for (const [room, told] of screens) {
      cleanup();
      await enter(room);
      for (const kind of told) await screen.findByText(words[kind]);
      const all = Object.values(words).filter((one) => screen.queryByText(one) !== null);
      expect(all).toHaveLength(told.length);
    }
  });
});

const words = {
  goodsIn: /^A delivery of goods cannot be read\./,
  buyingList: /^A buying list cannot be read\./,
  stockMove: /^A stock move cannot be read\./,
};
