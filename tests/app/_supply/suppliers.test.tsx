// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import './supplyStage';
import { act, cleanup, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { SuppliersScreen } from '@/app/_supply/SuppliersScreen';
import { supplyOrderBody, supplyOrderSeries } from '@/lib/buying/ordering/supplyOrderBody';
import { goodsInEntries } from '@/lib/buying/received/goodsInEntries';
import { foldStock } from '@/lib/stock/foldStock';
import { supplierSchema } from '@/shared/schemas/making/supply';
import { goodsInSchema } from '@/shared/schemas/making/supplyEvents';
import { enter, leaveScreens, screenStore, undo } from '@/tests/app/_screens/screens';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

const state = () => screenStore().getState();
const click = (name: string | RegExp) => userEvent.click(screen.getByRole('button', { name }));
const shirt = (size: string) => ({ kind: 'blank', blankId: 'white-shirt', size }) as const;
const supplierNow = () => Object.values(state().kinds.supplier.bodies)[0];
const priceNow = () =>
  state().kinds.blank.bodies['white-shirt']?.sizes.find(({ name }) => name === 'M')?.price;
const atHome = () =>
  foldStock([...state().entries.stockMove, ...state().entries.stockCount]).map(
    ({ item, quantity }) => `${item.kind === 'blank' ? item.size : item.kind} ${quantity}`,
  );

/** A mill that offers M at 4.83 and says nothing of L. */
async function mill() {
  await enter(<SuppliersScreen />);
  act(() => {
    const offers = [{ id: 'm', item: shirt('M'), articleNumber: 'WS-M', tiers: [{ from: 1, each: 4.83 }] }];
    const body = supplierSchema.parse({ name: 'Sample Mill', customerNumber: 'K 4711', offers });
    screenStore().actions.edit('Mill', [{ do: 'add', kind: 'supplier', id: 'mill', body }]);
  });
}

/** An order of M to the mill that went out. */
async function order(quantity: number): Promise<string> {
  const { workshop } = state().kinds;
  const [body] = Object.values(workshop.bodies);
  const supplier = state().kinds.supplier.bodies.mill;
  if (body === undefined || supplier === undefined) throw new Error('no workshop or no mill');
  const line = { name: 'White shirt, 100 % polyester', size: 'M', unit: 'pieces', articleNumber: 'WS-M' };
  const asked = {
    ...{ supplierId: 'mill', supplier, workshop: body, wantedBy: null, note: '', buyingListId: null },
    lines: [{ ...line, item: shirt('M'), quantity, packSize: 1, each: 4.83 }],
  };
  const outcome = await act(() =>
    screenStore().actions.issueMade('Order', {
      ...{
        kind: 'supplyOrder',
        about: { kind: 'supplier', id: 'mill' },
        series: supplyOrderSeries(TEST_DAY),
      },
      body: (number) => supplyOrderBody(asked, { number, day: TEST_DAY }),
      file: async () => ({ name: 'order.pdf', content: new Uint8Array([1]) }),
    }),
  );
  if (outcome.state !== 'issued') throw new Error(outcome.state);
  return outcome.paper.id;
}

/** Opens the form, names the mill, adds a row. */
async function goodsIn(size: string) {
  await click('Goods in');
  const form = screen.getByRole('form', { name: 'Goods in' });
  await userEvent.selectOptions(within(form).getByRole('combobox', { name: 'From' }), 'Sample Mill');
  await addRow(form, size);
  return form;
}
async function addRow(form: HTMLElement, size: string) {
  const names = { name: /^(What came|Something else that came)$/ };
  await userEvent.selectOptions(
    within(form).getByRole('combobox', names),
    `White shirt, 100 % polyester, ${size}`,
  );
  await userEvent.click(within(form).getByRole('button', { name: 'Add a row' }));
}
/** Unfolds what most rows leave as it is. */
const unfold = (form: HTMLElement, size: string) =>
  userEvent.click(
    within(form).getByRole('button', { name: `Lot, faults of White shirt, 100 % polyester, ${size}` }),
  );
const type = async (form: HTMLElement, name: string, text: string, at = 0) => {
  const field = within(form).getAllByRole('textbox', { name })[at];
  if (field === undefined) throw new Error(`no field ${name}`);
  await userEvent.clear(field);
  await userEvent.type(field, text);
};

describe('the suppliers', () => {
  it('offer every size of a blank in one step, at what the maker reckons with', async () => {
    await enter(<SuppliersScreen />);
    await userEvent.type(screen.getByRole('textbox', { name: 'New supplier' }), 'Sample Mill{Enter}');
    await userEvent.selectOptions(
      screen.getByRole('combobox', { name: 'A further offer of' }),
      'White shirt, 100 % polyester, all sizes',
    );
    await userEvent.click(screen.getAllByRole('button', { name: 'Add it' })[0] as HTMLElement);
    expect(supplierNow()?.offers.map(({ item }) => item.kind === 'blank' && item.size)).toEqual([
      ...['S', 'M', 'L', 'XL', '2XL', '3XL'],
    ]);
    expect(supplierNow()?.offers[1]?.tiers).toEqual([{ from: 1, each: priceNow()?.value }]);
  });

  it('are not added under a name that is here', async () => {
    await mill();
    await userEvent.type(screen.getByRole('textbox', { name: 'New supplier' }), 'sample mill{Enter}');
    expect(Object.keys(state().kinds.supplier.bodies)).toEqual(['mill']);
    expect(screen.getByText(/nobody could tell whose goods came/)).toBeInTheDocument();
  });
});

describe('goods in', () => {
  it('are noted with what they lay into stock as one step, faulty ones apart', async () => {
    await mill();
    const form = await goodsIn('M');
    await type(form, 'Counted', '12');
    await unfold(form, 'M');
    await type(form, 'Faulty of them', '2');
    await click('Note the goods in');
    // What is wrong with them is asked first.
    expect(within(form).getByRole('button', { name: 'Note the goods in' })).toHaveAccessibleDescription(
      /^First say what is wrong with .*M\.$/,
    );
    expect(state().entries.goodsIn).toEqual([]);
    await userEvent.selectOptions(within(form).getByRole('combobox', { name: 'What is wrong' }), 'a hole');
    await type(form, 'All counted cost', '59.40');
    expect(within(form).getByText('That is 4.95 USD each.')).toBeInTheDocument();
    await click('Note the goods in');
    expect(state().entries.goodsIn[0]?.body.rows).toMatchObject([
      { item: shirt('M'), counted: 12, faulty: 2, fault: 'hole', amountMinor: 5940 },
    ]);
    expect(atHome()).toEqual(['M 10']);
    expect(state().entries.stockMove[0]?.body.unitCost).toEqual({ minor: 5940, currency: 'USD', per: 12 });
    await undo();
    expect([...state().entries.goodsIn, ...state().entries.stockMove]).toEqual([]);
  });

  it('refuse less than none, and more faulty than came', async () => {
    await mill();
    const form = await goodsIn('M');
    await type(form, 'Counted', '-3');
    await click('Note the goods in');
    expect(state().entries.goodsIn).toEqual([]);
    expect(within(form).getByText(/-3 is too small: the least here is 0/)).toBeInTheDocument();
    await type(form, 'Counted', '3');
    await unfold(form, 'M');
    await type(form, 'Faulty of them', '4');
    await click('Note the goods in');
    expect(state().entries.goodsIn).toEqual([]);
    expect(screen.getByRole('button', { name: 'Note the goods in' })).toHaveAttribute(
      'title',
      expect.stringContaining('More of White shirt, 100 % polyester, M are faulty than came'),
    );
  });

  it('say while it is typed that more are faulty than came', async () => {
    await mill();
    const form = await goodsIn('M');
    await type(form, 'Counted', '3');
    await unfold(form, 'M');
    await type(form, 'Faulty of them', '4');
    expect(within(form).getByText(/fewer than none would be usable: count again/)).toBeVisible();
    await type(form, 'Counted', '5');
    expect(within(form).queryByText(/fewer than none would be usable/)).toBeNull();
  });

  it('of another size than ordered are kept and marked; what was counted before the order is named answers it', async () => {
    await mill();
    await order(12);
    const form = await goodsIn('L');
    await type(form, 'Counted', '7');
    await addRow(form, 'M');
    await type(form, 'Counted', '5', 1);
    const orders = within(form).getByRole('combobox', { name: 'Answers the order' });
    const [, ours] = within(orders).getAllByRole('option');
    await userEvent.selectOptions(orders, ours as HTMLElement);
    expect(within(form).getByRole('group', { name: /polyester, L: not ordered\. It is kept/ })).toBeVisible();
    expect(within(form).getByText('7 fewer than ordered.')).toBeVisible();
    await click('Note the goods in');
    expect(state().entries.goodsIn[0]?.body.rows).toMatchObject([
      { item: shirt('L'), ordered: null, counted: 7 },
      { item: shirt('M'), ordered: 12, counted: 5 },
    ]);
    expect(atHome()).toEqual(['L 7', 'M 5']);
    await userEvent.click(screen.getByRole('button', { name: /Sample Mill no bill yet/ }));
    expect(screen.getByText(/· not ordered$/)).toBeVisible();
    // Seven of the twelve are still to come.
    expect(screen.getByText(/7 × White shirt, 100 % polyester, M/)).toBeVisible();
  });

  it('that two noted of one order all count, and it is said', async () => {
    await mill();
    const id = await order(12);
    const counted = (day: string) => ({
      kind: 'goodsIn' as const,
      body: goodsInSchema.parse({
        ...{ day, supplierId: 'mill', supplyOrderId: id, currency: 'USD' },
        rows: [{ item: shirt('M'), ordered: 12, counted: 12, faulty: 0, amountMinor: null }],
      }),
    });
    act(() => {
      screenStore().actions.note('Goods', goodsInEntries(counted(TEST_DAY).body));
    });
    expect(screen.queryByText(/more in all than ordered/)).toBeNull();
    act(() => {
      screenStore().actions.note('Goods', goodsInEntries(counted(TEST_DAY).body));
    });
    expect(atHome()).toEqual(['M 24']);
    const both = screen.getAllByRole('button', { name: /more in all than ordered/ });
    expect(both).toHaveLength(2);
    await userEvent.click(both[0] as HTMLElement);
    expect(
      screen.getByText(/In all 24 usable of White shirt, 100 % polyester, M came for an order of 12/),
    ).toBeVisible();
    await click('Take these goods back out');
    expect(atHome()).toEqual(['M 12']);
    expect(screen.queryByText(/more in all than ordered/)).toBeNull();
  });

  it('of a supplier that was removed are counted in by its order, under the name that stands on it', async () => {
    await mill();
    await order(12);
    await userEvent.click(screen.getByRole('button', { name: /^Sample Mill/ }));
    await click('Remove Sample Mill');
    const open = within(screen.getByRole('region', { name: 'Still to come' }));
    expect(open.getByText(/Sample Mill/)).toBeVisible();
    await userEvent.click(open.getByRole('button', { name: /^Goods in for/ }));
    await click('All others came as ordered');
    await click('Note the goods in');
    expect(atHome()).toEqual(['M 12']);
    expect(screen.getByRole('button', { name: /, Sample Mill no bill yet/ })).toBeVisible();
    expect(screen.queryByRole('region', { name: 'Still to come' })).toBeNull();
  });

  it('change no price by themselves; taken over by a button, and taken back as it was', async () => {
    await mill();
    const before = priceNow();
    const form = await goodsIn('M');
    await type(form, 'Counted', '12');
    await type(form, 'All counted cost', '59.40');
    await click('Note the goods in');
    expect(priceNow()).toEqual(before);
    await userEvent.click(screen.getByRole('button', { name: /Sample Mill 59.40/ }));
    await click(/^Take over 4.95/);
    expect(priceNow()).toMatchObject({ value: 4.95, origin: 'yours' });
    expect(supplierNow()?.offers[0]?.tiers[0]?.each).toBe(4.95);
    expect(state().entries.rateTaken).toHaveLength(1);
    await click(/^Take back 4.95/);
    expect(priceNow()).toEqual(before);
    expect(supplierNow()?.offers[0]?.tiers[0]?.each).toBe(4.83);
    expect(state().entries.rateTaken).toEqual([]);
  });

  it('stand in one line each; their lot and faults are folded away and told', async () => {
    await mill();
    await order(12);
    await click(/^Goods in for/);
    const form = screen.getByRole('form', { name: 'Goods in' });
    expect(within(form).getByText('12 pieces at 4.83 USD')).toBeVisible();
    expect(within(form).queryByRole('textbox', { name: 'Lot' })).toBeNull();
    await unfold(form, 'M');
    await type(form, 'Lot', 'B7');
    await type(form, 'Counted', '12');
    await type(form, 'Faulty of them', '1');
    // What keeps it from being noted does not fold.
    await unfold(form, 'M');
    expect(within(form).getByRole('combobox', { name: 'What is wrong' })).toBeVisible();
    await userEvent.selectOptions(within(form).getByRole('combobox', { name: 'What is wrong' }), 'a hole');
    expect(within(form).getByText('1 faulty, lot B7')).toBeVisible();
  });

  it('cost what was ordered once that is said, and a typed price stays', async () => {
    await mill();
    const id = await order(12);
    await click(/^Goods in for/);
    const form = screen.getByRole('form', { name: 'Goods in' });
    await addRow(form, 'L');
    await type(form, 'Counted', '3', 1);
    await type(form, 'Counted', '10');
    await click('All others at the prices ordered');
    // 10 × 4.83; nobody knows what L costs.
    expect(within(form).getAllByRole('textbox', { name: 'All counted cost' })[0]).toHaveValue('48.30');
    expect(screen.queryByRole('button', { name: /at the prices ordered/ })).toBeNull();
    await type(form, 'All counted cost', '50.00');
    await click('Note the goods in');
    expect(state().entries.goodsIn[0]?.body).toMatchObject({
      supplyOrderId: id,
      rows: [
        { item: shirt('M'), counted: 10, amountMinor: 5000 },
        { item: shirt('L'), counted: 3, amountMinor: null },
      ],
    });
    expect(
      screen.getByRole('button', { name: /50\.00 USD for 1 of 2 things; nobody noted what the other cost/ }),
    ).toBeVisible();
  });

  it('as ordered and at the prices ordered are one press', async () => {
    await mill();
    await order(12);
    await click(/^Goods in for/);
    await click('All others as ordered, at the prices ordered');
    await click('Note the goods in');
    // 12 × 4.83.
    expect(state().entries.goodsIn[0]?.body.rows).toMatchObject([{ counted: 12, amountMinor: 5796 }]);
    expect(state().entries.stockMove[0]?.body.unitCost).toEqual({ minor: 5796, currency: 'USD', per: 12 });
  });

  it('that are half counted are there after a reload, half-typed numbers too, until they are noted', async () => {
    await mill();
    await order(12);
    await click(/^Goods in for/);
    const before = screen.getByRole('form', { name: 'Goods in' });
    await type(before, 'Counted', '11');
    await type(before, 'All counted cost', '53,1,3');
    await type(before, 'Freight', '9.50');
    await screenStore().flush();
    cleanup();
    leaveScreens();
    await enter(<SuppliersScreen />);
    const form = screen.getByRole('form', { name: 'Goods in' });
    expect(within(form).getByRole('textbox', { name: 'Counted' })).toHaveValue('11');
    expect(within(form).getByRole('textbox', { name: 'All counted cost' })).toHaveValue('53,1,3');
    expect(within(form).getByRole('textbox', { name: 'Freight' })).toHaveValue('9.50');
    await type(form, 'All counted cost', '53.13');
    await click('Note the goods in');
    expect(state().entries.goodsIn[0]?.body).toMatchObject({
      freightMinor: 950,
      rows: [{ ordered: 12, counted: 11, amountMinor: 5313 }],
    });
    // One is still to come, in a form that begins anew.
    await click(/^Goods in for/);
    expect(screen.getByRole('textbox', { name: 'Counted' })).toHaveValue('');
    await click('Leave it');
    expect(screen.queryByRole('form', { name: 'Goods in' })).toBeNull();
  });

  it('are taken back out with what they laid into stock', async () => {
    await mill();
    const form = await goodsIn('M');
    await type(form, 'Counted', '12');
    await click('Note the goods in');
    await userEvent.click(screen.getByRole('button', { name: /Sample Mill no bill yet/ }));
    await click('Take these goods back out');
    expect([...state().entries.goodsIn, ...state().entries.stockMove]).toEqual([]);
  });
});

describe('a claim', () => {
  it('is written out for the supplier, noted as sent, and closed by what came of it', async () => {
    await mill();
    const form = await goodsIn('M');
    await type(form, 'Counted', '12');
    await unfold(form, 'M');
    await type(form, 'Faulty of them', '2');
    await userEvent.selectOptions(within(form).getByRole('combobox', { name: 'What is wrong' }), 'a stain');
    await click('Note the goods in');
    const open = screen.getByRole('region', { name: 'Open claims' });
    await userEvent.click(within(open).getByRole('button', { name: /Sample Mill/ }));
    await click('Claim it');
    expect(
      screen.getByText(/2 of 12 White shirt, 100 % polyester, M \(article WS-M\) came faulty: a stain\./),
    ).toBeInTheDocument();
    await click('Note it as sent');
    expect(state().entries.faultClaim[0]?.body.step).toMatchObject({
      what: 'claimed',
      rows: [{ item: shirt('M'), pieces: 2 }],
    });
    await click('Refunded');
    await userEvent.type(screen.getByRole('textbox', { name: 'Came back' }), '9.90');
    await click('Note it');
    expect(state().entries.faultClaim[1]?.body.step).toMatchObject({ what: 'refunded', amountMinor: 990 });
    expect(screen.queryByRole('region', { name: 'Open claims' })).toBeNull();
  });
});
