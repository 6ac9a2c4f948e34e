// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import '@/tests/app/_screens/stage';
import { act, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { laterParts } from '@/app/_year/laterParts';
import { YearScreen } from '@/app/_year/YearScreen';
import { addDays } from '@/shared/days';
import type { Expense } from '@/shared/schemas/orderEvents';
import { damage, enter, leaveScreens, screenStore } from '@/tests/app/_screens/screens';
import { TEST_DAY } from '@/tests/tools/clock/testDay';
import { eventually } from '@/tests/tools/eventually';

vi.mock('next/navigation', () => ({
  usePathname: () => '/year',
  useRouter: () => ({ push: () => undefined }),
}));
const saved = vi.hoisted(() => ({ files: [] as { readonly name: string; readonly text: string }[] }));
vi.mock('@/app/_files/saveBytes', () => ({
  saveBytes: (name: string, bytes: Uint8Array) => {
    saved.files.push({ name, text: new TextDecoder().decode(bytes) });
  },
}));

beforeAll(() => laterParts.sums.fetch());

beforeEach(() => {
  saved.files.length = 0;
});

const noted = () => screenStore().getState().entries;
const click = (name: string | RegExp) => userEvent.click(screen.getByRole('button', { name }));
const answer = (heading: string) =>
  screen.getByRole('region', { name: heading }).querySelector('p')?.textContent;
const note = (body: Partial<Expense>) =>
  act(() => {
    const usual = {
      orderId: null,
      day: TEST_DAY,
      what: 'Rent',
      kind: 'rent',
      currency: 'USD',
      receipt: null,
    };
    screenStore().actions.note('Noted', [
      { kind: 'expense', body: { ...usual, amountMinor: 45000, ...body } as Expense },
    ]);
  });

async function openForm(button: string, form: string) {
  await click(button);
  return within(await screen.findByRole('form', { name: form }));
}

describe('the year', () => {
  it('says that nothing is known before anything is noted, and never a pay of 0', async () => {
    await enter(<YearScreen />);
    expect(answer('Pay of the year’s hour')).toBe(
      'Not known yet: note what comes, what goes and the time you work',
    );
    expect(screen.queryByRole('table', { name: 'From takings to what is left' })).toBeNull();
    expect(answer('Stock and machines')).toMatch(/^No stock is noted, /);
    expect(answer('Designs and fairs')).toBe('Nothing agreed or sold yet');
    expect(answer('Hours')).toBe('No hour is noted, so pay an hour is not known');
  });

  it('takes an expense of the workshop and hours, and tells the pay of an hour from them', async () => {
    await enter(<YearScreen />);
    const spent = await openForm('Money spent', 'Money spent');
    await userEvent.type(spent.getByLabelText(/^How much/), '45');
    await userEvent.selectOptions(spent.getByRole('combobox', { name: 'On what' }), 'Power');
    await userEvent.click(spent.getByRole('button', { name: 'Note it' }));
    expect(noted().expense.map(({ body }) => body)).toMatchObject([
      { orderId: null, kind: 'power', what: 'Power', amountMinor: 4500, currency: 'USD', day: TEST_DAY },
    ]);
    const hours = await openForm('Hours worked', 'Hours worked');
    await userEvent.type(hours.getByLabelText(/^How long/), '1.5');
    await userEvent.selectOptions(hours.getByRole('combobox', { name: 'Doing what' }), 'Buying');
    await userEvent.click(hours.getByRole('button', { name: 'Note it' }));
    expect(noted().hours.map(({ body }) => body)).toMatchObject([
      { minutes: 90, element: 'buying', for: { kind: 'workshop' }, from: 'typed' },
    ]);
    // −45.00 in an hour and a half.
    expect(answer('Pay of the year’s hour')).toBe('−30.00 USD an hour, −45.00 USD left for 1 h 30 min');
    expect(answer('Overhead')).toBe('45.00 USD not carried, 0.00 USD carried by work, 45.00 USD paid');
  });

  it('keeps the receipt of an expense', async () => {
    await enter(<YearScreen />);
    const spent = await openForm('Money spent', 'Money spent');
    await userEvent.type(spent.getByLabelText(/^How much/), '45');
    const file = new File(['paid'], 'bill.txt', { type: 'text/plain' });
    await userEvent.upload(spent.getByLabelText('File to keep'), file);
    await spent.findByText('bill.txt');
    await userEvent.click(spent.getByRole('button', { name: 'Note it' }));
    expect(noted().expense[0]?.body.receipt?.fileName).toBe('bill.txt');
    expect(screen.getByRole('button', { name: 'Save bill.txt' })).toBeInTheDocument();
  });

  it('notes hours for an order', async () => {
    await enter(<YearScreen />);
    const hours = await openForm('Hours worked', 'Hours worked');
    await userEvent.type(hours.getByLabelText(/^How long/), '1');
    await userEvent.selectOptions(
      hours.getByRole('combobox', { name: 'For what' }),
      'Order: Ramblers Club shirts',
    );
    await userEvent.click(hours.getByRole('button', { name: 'Note it' }));
    expect(noted().hours[0]?.body.for).toEqual({ kind: 'order', id: 'club-enquiry' });
  });

  it.each([
    ['0', /^No time is no entry/],
    ['17', /whole night and more/],
  ])('asks about %s hours, and takes them all the same', async (typed, question) => {
    await enter(<YearScreen />);
    const hours = await openForm('Hours worked', 'Hours worked');
    await userEvent.type(hours.getByLabelText(/^How long/), typed);
    expect(hours.getByText(question)).toBeVisible();
    await userEvent.click(hours.getByRole('button', { name: 'Note it all the same' }));
    expect(noted().hours.map(({ body }) => body.minutes)).toEqual([Number(typed) * 60]);
  });

  it('does not take more hours than a day has, and says why', async () => {
    await enter(<YearScreen />);
    const hours = await openForm('Hours worked', 'Hours worked');
    await userEvent.type(hours.getByLabelText(/^How long/), '25');
    await userEvent.click(hours.getByRole('button', { name: 'Note it' }));
    expect(noted().hours).toEqual([]);
    expect(hours.getByLabelText(/^How long/)).toHaveFocus();
  });

  it('asks about nothing paid, a day to come and another currency', async () => {
    await enter(<YearScreen />);
    const spent = await openForm('Money spent', 'Money spent');
    await userEvent.type(spent.getByLabelText(/^How much/), '0');
    expect(spent.getByText(/^Nothing was paid/)).toBeVisible();
    const day = spent.getByLabelText('Day');
    await userEvent.clear(day);
    await userEvent.type(day, addDays(TEST_DAY, 3));
    expect(spent.getByText(/^That is in 3 days/)).toBeVisible();
    await userEvent.selectOptions(spent.getByRole('combobox', { name: 'Currency' }), 'Euro · EUR');
    expect(spent.getByText(/in no sum: those are in USD/)).toBeVisible();
    await userEvent.clear(spent.getByLabelText(/^How much/));
    await userEvent.type(spent.getByLabelText(/^How much/), '12');
    await userEvent.clear(day);
    await userEvent.type(day, TEST_DAY);
    await userEvent.click(spent.getByRole('button', { name: 'Note it' }));
    expect(answer('Expenses')).toBe('Nothing spent is noted');
    expect(screen.getByText('In EUR, in no sum: 0.00 EUR came, 12.00 EUR went.')).toBeVisible();
  });

  it('finds what was noted by a word, and takes it back', async () => {
    await enter(<YearScreen />);
    note({});
    note({ what: 'Ink, four bottles', kind: 'ink', amountMinor: 3300 });
    for (const minor of [1, 2, 3, 4]) note({ what: 'Stamps', kind: 'office', amountMinor: minor });
    expect(answer('Expenses')).toBe('483.10 USD spent');
    const list = () =>
      within(screen.getByRole('list', { name: 'Expenses and hours' })).getAllByRole('listitem');
    expect(list()).toHaveLength(5);
    await click('Show all 6');
    expect(list()).toHaveLength(6);
    await userEvent.type(screen.getByRole('searchbox'), 'bottles');
    await eventually(() => expect(list()).toHaveLength(1));
    await click('Take back Ink, four bottles, 33.00 USD');
    expect(answer('Expenses')).toBe('450.10 USD spent');
  });

  it('tells one bill that may stand there twice', async () => {
    await enter(<YearScreen />);
    note({});
    note({});
    expect(
      within(screen.getByRole('list', { name: 'To be looked at' })).getByRole('listitem'),
    ).toHaveTextContent(/^450\.00 USD for Rent of .* may stand here twice/);
  });

  it('looks at another year, and at years that begin in another month, which the device keeps', async () => {
    await enter(<YearScreen />);
    const year = Number(TEST_DAY.slice(0, 4));
    note({ day: `${year - 3}-02-10` });
    expect(answer('Expenses')).toBe('Nothing spent is noted');
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'Year' }), String(year - 3));
    expect(answer('Expenses')).toBe('450.00 USD spent');
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'Begins in' }), 'April');
    await userEvent.selectOptions(
      screen.getByRole('combobox', { name: 'Year' }),
      `April ${year - 4} to March ${year - 3}`,
    );
    expect(answer('Expenses')).toBe('450.00 USD spent');
    leaveScreens();
    document.body.replaceChildren();
    await enter(<YearScreen />);
    expect(screen.getByRole('combobox', { name: 'Begins in' })).toHaveDisplayValue('April');
  });

  it('values what lies in stock at what was paid, and what a first count finds is no gain', async () => {
    await enter(<YearScreen />);
    note({});
    const figure = () =>
      screen.getByRole('row', { name: /^Stock, end less beginning/ }).lastElementChild?.textContent;
    const lying = (size: string) =>
      ({
        item: { kind: 'blank', blankId: 'tee', size, lot: null },
        place: { kind: 'home' },
        grade: 'first',
      }) as const;
    const cost = { minor: 450, currency: 'USD' };
    const bought = { quantity: 10, cause: 'bought', reference: null, unitCost: cost } as const;
    act(() => {
      const body = { ...lying('M'), quantity: 12, unitCost: cost };
      screenStore().actions.note('Counted', [{ kind: 'stockCount', body }]);
    });
    expect(figure()).toBe('0.00');
    act(() => {
      screenStore().actions.note('Bought', [{ kind: 'stockMove', body: { ...lying('L'), ...bought } }]);
    });
    expect(figure()).toBe('45.00');
    // Nothing says that the ten were paid.
    expect(screen.getByRole('button', { name: 'Perhaps not paid: 45.00 USD of stock' })).toBeVisible();
    // 12 counted and 10 bought, at 4.50 each: 54.00 and 45.00.
    expect(answer('Stock and machines')).toMatch(
      /^99\.00 USD in stock, 45\.00 USD more than at the beginning; /,
    );
    act(() => {
      const body = { ...lying('S'), quantity: 3 };
      screenStore().actions.note('Counted', [{ kind: 'stockCount', body }]);
    });
    expect(figure()).toBe('45.00');
    expect(
      screen.getByText(/^1 thing in stock is not all valued: nobody said what it cost, .* It is worth more/),
    ).toBeVisible();
    expect(screen.getByText('Stock, end less beginning, where its price is known')).toBeVisible();
  });

  it('draws how takings become what is left, and adds up the overhead of quarters to the year', async () => {
    await enter(<YearScreen />);
    const year = TEST_DAY.slice(0, 4);
    note({ day: `${year}-01-10`, kind: 'power', what: 'Power', amountMinor: 4500 });
    note({ day: `${year}-03-31` });
    note({ day: `${year}-04-01`, amountMinor: 1000 });
    const steps = within(screen.getByRole('table', { name: 'From takings to what is left' }));
    expect(steps.getByRole('row', { name: /^Expenses without machines/ })).toHaveTextContent(/−505\.00$/);
    expect(steps.getByRole('row', { name: /^Left, USD/ })).toHaveTextContent(/^Left, USD−505\.00/);
    await click('By quarter');
    const paid = within(screen.getByRole('table', { name: 'Overhead by quarter, USD' }))
      .getAllByRole('row')
      .map((row) => row.textContent);
    expect(paid).toEqual([
      'QuarterCarriedPaid',
      ...['Jan to Mar0.00495.00', 'Apr to Jun0.0010.00', 'Jul to Sep0.000.00', 'Oct to Dec0.000.00'],
    ]);
  });

  it('tells time and presses of which a record cannot be read, for its sums lack them, and no test press', async () => {
    const told = (kind: string, count: number) => ({
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
    // The store is on the shelf before anything is damaged.
    await enter(<YearScreen />);
    leaveScreens();
    document.body.replaceChildren();
    await damage(told('hours', 1), 'entries');
    await damage(told('pressing', 2), 'entries');
    await damage(told('washCheck', 3), 'entries');
    await enter(<YearScreen />);
    expect(await screen.findByText('A time worked cannot be read. It stays kept as it is.')).toBeVisible();
    expect(screen.getByText('A piece pressed cannot be read. It stays kept as it is.')).toBeVisible();
    expect(screen.queryByText(/wash check cannot be read/)).toBeNull();
  });

  it('hands out the file for the books', async () => {
    await enter(<YearScreen />);
    note({ what: '=1+2' });
    await userEvent.click(await screen.findByRole('button', { name: 'Save for the books, CSV' }));
    const [file] = saved.files;
    expect(file?.name).toBe(`Year ${TEST_DAY.slice(0, 4)}.csv`);
    expect(file?.text.split('\r\n')[1]).toMatch(new RegExp(`^${TEST_DAY},Room,'=1\\+2,,,,-450\\.00,USD,`));
  });
});
