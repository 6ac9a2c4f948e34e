// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import '@/tests/app/_screens/stage';
import { act, cleanup, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { StockroomScreen } from '@/app/_stockroom/StockroomScreen';
import { consumableSchema, supplierSchema } from '@/shared/schemas/making/supply';
import { enter, leaveScreens, screenStore } from '@/tests/app/_screens/screens';

const store = () => screenStore();
const entries = () => store().getState().entries;
const click = (name: string | RegExp) => userEvent.click(screen.getByRole('button', { name }));

async function open(group: string | RegExp, thing: string) {
  await click(group);
  return form(thing);
}

async function form(thing: string) {
  await click(`Count or note ${thing}`);
  return within(screen.getByRole('form', { name: `Note for ${thing}` }));
}

/** What stands in the row of a thing. */
const row = (thing: string) =>
  within(
    screen
      .getByRole('button', { name: new RegExp(`(Count or note|Close the note for) ${thing}$`) })
      .closest('li') ?? document.body,
  ).getByRole('status').textContent;

describe('the stockroom', () => {
  it('begins with nothing counted and says what a first count is', async () => {
    await enter(<StockroomScreen />);
    expect(screen.getByText(/^Nothing was counted yet\./)).toBeVisible();
    expect(screen.getByRole('button', { name: /^White shirt.* not counted$/ })).toBeVisible();
    for (const kind of ['Blanks', 'Paper', 'Ink', 'Finished pieces'])
      expect(screen.getByRole('heading', { level: 2, name: kind })).toBeVisible();
    expect(screen.getByRole('button', { name: /^Designs nobody counted/ })).toBeVisible();
  });

  it('keeps a note that is half typed through a reload, and forgets it once it is closed', async () => {
    await enter(<StockroomScreen />);
    const before = await open(/^White shirt/, 'M');
    await userEvent.selectOptions(before.getByLabelText('What happened'), 'Bought');
    await userEvent.type(before.getByLabelText('How many'), '7');
    cleanup();
    leaveScreens();
    await enter(<StockroomScreen />);
    const after = within(screen.getByRole('form', { name: 'Note for M' }));
    expect(after.getByLabelText('What happened')).toHaveDisplayValue('Bought');
    expect(after.getByLabelText('How many')).toHaveValue('7');
    await click('Close the note for M');
    expect((await form('M')).getByLabelText('How many')).toHaveValue('');
  });

  it('notes paper in sheets with what all of it cost, and tells what is left of that', async () => {
    await enter(<StockroomScreen />);
    const paper = await form('Letter sheet');
    expect(paper.queryByLabelText('Grade')).toBeNull();
    expect(paper.queryByRole('option', { name: 'Made' })).toBeNull();
    await userEvent.selectOptions(paper.getByLabelText('What happened'), 'Bought');
    await userEvent.type(paper.getByLabelText('How much'), '100');
    await userEvent.click(paper.getByText('Place'));
    await userEvent.type(paper.getByLabelText(/^All of it cost/), '13.5');
    await userEvent.click(paper.getByRole('button', { name: 'Note it' }));
    expect(entries().stockMove[0]?.body.unitCost).toEqual({ minor: 1350, currency: 'USD', per: 100 });
    expect(row('Letter sheet')).toBe('100 sheets at homePaid 13.50 USD.');
    const used = await form('Letter sheet');
    await userEvent.selectOptions(used.getByLabelText('What happened'), 'Used');
    await userEvent.type(used.getByLabelText('How much'), '58{Enter}');
    // 42 of the hundred.
    expect(row('Letter sheet')).toBe('42 sheets at homePaid 5.67 USD.');
    expect(screen.getByText('5.67 USD at what was paid', { selector: 'p' })).toBeVisible();
    expect(screen.getByText('Bought 100 sheets, 13.50 USD for 100')).toBeVisible();
  });

  it('counts ink against the bottle it is sold in', async () => {
    await enter(<StockroomScreen />);
    const item = { kind: 'ink', printerId: 'desk-printer', name: 'Yellow' } as const;
    const offer = { id: 'yellow', item, packSize: 100, tiers: [{ from: 1, each: 0.16 }] };
    act(() => {
      const body = supplierSchema.parse({ name: 'Inks by post', offers: [offer] });
      store().actions.edit('Supplier', [{ do: 'add', kind: 'supplier', id: 'inks', body }]);
    });
    const ink = await open(/^Desk printer/, 'Yellow');
    await userEvent.type(ink.getByLabelText('How much'), '62.5{Enter}');
    expect(row('Yellow')).toBe('62.5 mL at home0.6 of a bottle of 100 mL.What 62.5 mL cost was not noted.');
    expect(screen.getByText('1 thing at a cost nobody noted', { selector: 'p' })).toBeVisible();
  });

  it('takes what was paid with the first count of a blank and asks it of no later one', async () => {
    await enter(<StockroomScreen />);
    const first = await open(/^White shirt/, 'L');
    await userEvent.type(first.getByLabelText('How many'), '12');
    await userEvent.click(first.getByText('Place, grade, lot'));
    await userEvent.type(first.getByLabelText(/^One cost/), '4.8');
    await userEvent.click(first.getByRole('button', { name: 'Note it' }));
    expect(row('L')).toBe('12 at homePaid 57.60 USD.');
    const later = await form('L');
    await userEvent.type(later.getByLabelText('How many'), '14');
    await userEvent.click(later.getByText('Place, grade, lot'));
    expect(later.queryByLabelText(/^One cost/)).toBeNull();
    await userEvent.click(later.getByRole('button', { name: 'Note it' }));
    expect(row('L')).toMatch(/Paid 57\.60 USD\.What 2 cost was not noted\.$/);
  });

  it('makes seconds of firsts where they lie', async () => {
    await enter(<StockroomScreen />);
    const first = await open(/^White shirt/, 'L');
    await userEvent.type(first.getByLabelText('How many'), '12{Enter}');
    const second = await form('L');
    await userEvent.selectOptions(second.getByLabelText('What happened'), 'Became second grade');
    await userEvent.type(second.getByLabelText('How many'), '2{Enter}');
    expect(row('L')).toMatch(/^10 at home · 2 of second grade at home/);
  });

  it('refuses a count below nothing with a sentence and keeps what is typed', async () => {
    await enter(<StockroomScreen />);
    const first = await open(/^White shirt/, 'L');
    await userEvent.type(first.getByLabelText('How many'), '-3{Enter}');
    expect(entries().stockCount).toEqual([]);
    expect(first.getByLabelText('How many')).toHaveValue('-3');
    expect(first.getByLabelText('How many')).toHaveAccessibleDescription(/0/);
    expect(first.getByLabelText('How many')).toBeInvalid();
  });

  it('says when a consumable is at the level where it is bought again, and what is short', async () => {
    await enter(<StockroomScreen />);
    act(() => {
      const body = consumableSchema.parse({ name: 'Heat tape', unit: 'm', reorderAt: 20 });
      store().actions.edit('Consumable', [{ do: 'add', kind: 'consumable', id: 'tape', body }]);
    });
    const tape = await form('Heat tape');
    await userEvent.type(tape.getByLabelText('How much'), '20{Enter}');
    expect(row('Heat tape')).toMatch(/At or below 20 m: time to buy\./);
    const used = await form('Heat tape');
    await userEvent.selectOptions(used.getByLabelText('What happened'), 'Used');
    await userEvent.type(used.getByLabelText('How much'), '25{Enter}');
    expect(row('Heat tape')).toMatch(/Count it: 5 more went out at home than came in\./);
    expect(screen.getByText(/1 thing to count$/, { selector: 'p' })).toBeVisible();
  });

  it('tells finished pieces by their design once somebody counted them', async () => {
    await enter(<StockroomScreen />);
    act(() => {
      const item = { kind: 'finished', jobId: 'fair-shirts', lineId: 'fern', size: 'M' } as const;
      const count = { item, place: { kind: 'van' }, grade: 'first', quantity: 3 } as const;
      store().actions.note('Counted', [{ kind: 'stockCount', body: count }]);
    });
    await click(/^Fern shirt, Spring Fair shirts/);
    expect(row('M')).toMatch(/not counted · 3 in the van/);
  });

  it('still lists what lies there of a blank that is gone', async () => {
    await enter(<StockroomScreen />);
    act(() => {
      const item = { kind: 'blank', blankId: 'white-mug', size: '11 oz', lot: null } as const;
      const count = { item, place: { kind: 'home' }, grade: 'first', quantity: 3 } as const;
      store().actions.note('Counted', [{ kind: 'stockCount', body: count }]);
      store().actions.edit('Remove', [{ do: 'delete', kind: 'blank', id: 'white-mug' }]);
    });
    await click(/^listed nowhere any more/);
    expect(row('11 oz')).toMatch(/^3 at home/);
  });
});
