// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { act, cleanup, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeAll, beforeEach, describe, expect, it, vi } from 'vitest';
import { laterParts } from '@/app/_orders/laterParts';
import { OrdersScreen } from '@/app/_orders/OrdersScreen';
import type { StudyRequest } from '@/app/_studies/studies';
import { usualBlocks } from '@/lib/calendar/usualBlocks';
import { addDays, weekdayOf } from '@/shared/days';
import type { PaymentRequest } from '@/shared/schemas/orderPapers';
import { clubQuote, heading } from '@/tests/fixtures/orderPapers';
import { dayInShort } from '@/tests/tools/clock/dayWords';
import { TEST_DAY } from '@/tests/tools/clock/testDay';
import { aFile, numberOf, shelf } from './orderShelf';
import { bodyOf, clearScreens, enter, idsOf, screenStore, undo } from './screens';

const went = vi.hoisted(() => vi.fn<(address: string) => void>());
const worker = vi.hoisted(() => ({ isSilent: false }));
vi.mock('next/navigation', () => ({ useRouter: () => ({ push: went }) }));
vi.mock('@/app/_store/appDocuments', async () => {
  const { screenStore: appDocuments } = await import('./screens');
  return { appDocuments };
});
/* The sums are the real ones, made on this thread. */
vi.mock('@/app/_studies/shareStudyWorker', async () => {
  const { act: inAct } = await import('@testing-library/react');
  const { benchAnswer } = await import('@/lib/studies/bench/benchAnswer');
  const { Grid } = await import('@/lib/grid/evaluateGrid');
  const grid = new Grid();
  return {
    shareStudyWorker: () => ({
      worker: {
        ask: (_: string, request: StudyRequest, listener: (answered: unknown) => void) => {
          if (request.of !== 'job' || worker.isSilent) return;
          const { input } = request;
          queueMicrotask(() =>
            inAct(() => listener({ kind: 'answered', isLast: true, answer: benchAnswer(input, grid) })),
          );
        },
        leave: () => undefined,
        stop: () => undefined,
      },
      giveBack: () => undefined,
    }),
  };
});

// Parts that come later are here.
beforeAll(async () => {
  await Promise.all([laterParts.bench.fetch(), laterParts.repeat.fetch()]);
});
beforeEach(() => {
  vi.stubGlobal('Worker', class {});
  worker.isSilent = false;
  went.mockClear();
});
afterEach(() => {
  cleanup();
  clearScreens();
  vi.unstubAllGlobals();
});

const open = async () => {
  await screenStore().open();
};
/** The board with its rows, which are drawn once all above them stands. */
const enterBoard = async () => {
  await enter(<OrdersScreen />);
  await screen.findByRole('heading', { name: 'Bench hours by week' });
};
const row = (name: string) => {
  const found = screen.getByRole('link', { name }).closest('li');
  if (found === null) throw new Error(`no row of ${name}`);
  return found;
};
const rows = () =>
  within(screen.getByRole('region', { name: 'All orders' }))
    .queryAllByRole('link')
    .map(({ textContent }) => textContent);
const search = (text: string) => userEvent.type(screen.getByRole('searchbox'), text);
const press = (name: string | RegExp) => userEvent.click(screen.getByRole('button', { name }));

describe('the orders board', () => {
  it('finds the example’s order, which waits for its quote, and says so today', async () => {
    await enterBoard();
    expect(screen.getByText('One waits for you')).toBeVisible();
    const club = row('Ramblers Club shirts');
    expect(within(club).getByRole('link')).toHaveAttribute('href', '/orders/club-enquiry');
    expect(club).toHaveTextContent('no number yet, 37 shirts');
    expect(club).toHaveTextContent('Answer today');
    expect(club).toHaveTextContent('no price yet');
    expect(club).toHaveTextContent('Enquiry, 1 of 6');
    expect(screen.getByRole('heading', { name: /^You one/ })).toBeVisible();
    expect(screen.queryByRole('heading', { name: /^Customers/ })).toBeNull();
    const today = screen.getByRole('region', { name: 'Today' });
    expect(today).toHaveTextContent('One thing to do');
    expect(today).toHaveTextContent('Answer Ramblers Club shirts');
    expect(today).toHaveTextContent('no answer yet');
  });

  it('groups by whose turn it is, and says late money in words', async () => {
    await open();
    const wantedOn = addDays(TEST_DAY, 9);
    shelf.add('kayak', { name: 'Kayak Club bags', askedPieces: 24, wantedOn });
    shelf.enquired('kayak', 13, addDays(TEST_DAY, -1));
    shelf.add('choir', { name: 'Harbour Choir mugs' });
    shelf.enquired('choir', 12);
    await shelf.accepted('choir');
    shelf.pay('choir', 51735);
    await act(() =>
      screenStore().actions.issue('Request', {
        kind: 'paymentRequest',
        about: { kind: 'order', id: 'choir' },
        series: 'paymentRequest 26',
        body: (number) => ({ ...balanceRequest('choir', addDays(TEST_DAY, -6)), number }),
        file: aFile,
      }),
    );
    await enterBoard();
    // 761.31 less 517.35 is 243.96.
    expect(screen.getByText('Three wait for you')).toBeVisible();
    expect(screen.getByText('; 243.96 is six days late')).toBeVisible();
    const kayak = row('Kayak Club bags');
    expect(kayak).toHaveTextContent(`${numberOf('kayak')}, 24 pieces asked`);
    expect(kayak).toHaveTextContent('Answer today');
    expect(kayak).toHaveTextContent('asked yesterday');
    expect(kayak).toHaveTextContent(`wanted ${dayInShort(wantedOn)}`);
    const choir = row('Harbour Choir mugs');
    expect(choir).toHaveTextContent('761.31');
    expect(choir).toHaveTextContent('243.96 owed');
    expect(choir).toHaveTextContent('Approval and deposit, 3 of 6');
    const money = screen.getByRole('region', { name: 'Money' });
    expect(money).toHaveTextContent('243.96 to come, 517.35 in hand');
    expect(money).toHaveTextContent('late by six days, Harbour Choir mugs');
  });

  it('is narrowed to one turn, and found by number, customer and day', async () => {
    await open();
    shelf.add('kayak', {
      name: 'Kayak Club bags',
      customerId: 'ramblers-club',
      wantedOn: '2026-12-04',
    });
    shelf.enquired('kayak');
    await shelf.quote('club-enquiry', { validUntil: addDays(TEST_DAY, 14) });
    await enterBoard();
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'Whose turn' }), 'Your turn');
    expect(rows()).toEqual(['Kayak Club bags']);
    expect(screen.getByText('1 order found')).toBeVisible();
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'Whose turn' }), 'Everybody’s turn');
    for (const text of [numberOf('kayak').toLowerCase(), 'kayak', 'dec 4', '2026-12-04']) {
      await userEvent.clear(screen.getByRole('searchbox'));
      await search(text);
      expect(rows(), text).toContain('Kayak Club bags');
    }
    await userEvent.clear(screen.getByRole('searchbox'));
    await search('alex placeholder');
    expect(rows()).toEqual(['Kayak Club bags', 'Ramblers Club shirts']);
    await userEvent.clear(screen.getByRole('searchbox'));
    await search('nothing like it');
    expect(screen.getByText('No order found')).toBeVisible();
    await press('Show all');
    expect(rows()).toHaveLength(2);
  });

  it('puts an order away and back, and finds it among the closed ones', async () => {
    await enterBoard();
    await press('More for Ramblers Club shirts');
    await press('Put away Ramblers Club shirts');
    expect(screen.getByText('“Ramblers Club shirts” is put away.')).toBeVisible();
    expect(bodyOf('order', 'club-enquiry').archivedOn).toBe(TEST_DAY);
    await search('ramblers');
    expect(screen.getByText('No order found, 1 among the closed ones')).toBeVisible();
    await press('Show it');
    expect(row('Ramblers Club shirts')).toHaveTextContent('Put away');
    await press('More for Ramblers Club shirts');
    await press('Put back Ramblers Club shirts');
    expect(bodyOf('order', 'club-enquiry').archivedOn).toBeNull();
    expect(screen.getByRole('searchbox')).toHaveFocus();
    await undo();
    expect(bodyOf('order', 'club-enquiry').archivedOn).toBe(TEST_DAY);
  });

  it('shows three hundred orders some at a time', async () => {
    await open();
    act(() =>
      screenStore().actions.edit(
        'Add',
        Array.from({ length: 300 }, (_, at) => ({
          do: 'add' as const,
          kind: 'order' as const,
          id: `order-${at}`,
          body: { ...bodyOf('order', 'club-enquiry'), name: `Order ${at}`, jobIds: [] },
        })),
      ),
    );
    await enterBoard();
    expect(rows()).toHaveLength(40);
    expect(screen.getByRole('heading', { name: /^You 301/ })).toBeVisible();
    await press('Show 40 more orders');
    expect(rows()).toHaveLength(80);
    await search('order 299');
    expect(rows()).toEqual(['Order 299']);
  });

  it('says in one sentence how to begin where there is no order', async () => {
    await open();
    act(() => screenStore().actions.edit('Remove', [{ do: 'delete', kind: 'order', id: 'club-enquiry' }]));
    await enter(<OrdersScreen />);
    expect(screen.getByText(/^No order yet\. Note who asks/)).toBeVisible();
    expect(screen.getByRole('button', { name: 'New enquiry' })).toBeVisible();
    expect(screen.queryByRole('searchbox')).toBeNull();
  });
});

describe('today', () => {
  it('leads to where each thing is done', async () => {
    await open();
    shelf.add('kayak', { name: 'Kayak Club bags', customerId: 'ramblers-club' });
    shelf.enquired('kayak', 1, addDays(TEST_DAY, -1));
    await enterBoard();
    const card = screen.getByRole('region', { name: 'Today' });
    expect(card).toHaveTextContent('Two things to do');
    expect(card).toHaveTextContent('asked yesterday');
    expect(within(card).getByRole('link', { name: 'Price: Answer Kayak Club bags' })).toHaveAttribute(
      'href',
      '/orders/kayak#order-jobs',
    );
    // Its customer, its job and all pieces are there.
    expect(within(card).getByRole('link', { name: 'Quote: Answer Ramblers Club shirts' })).toHaveAttribute(
      'href',
      '/orders/club-enquiry#order-papers',
    );
    act(() =>
      screenStore().actions.edit('Nobody', [
        {
          do: 'change',
          kind: 'order',
          id: 'club-enquiry',
          to: (body) => ({ ...body, customerId: null }),
        },
      ]),
    );
    expect(within(card).getByRole('link', { name: 'Price: Answer Ramblers Club shirts' })).toHaveAttribute(
      'href',
      '/orders/club-enquiry#order-waits',
    );
  });

  it('tells what came too much for an order that is closed, and leads to its money', async () => {
    await open();
    shelf.add('choir', { name: 'Harbour Choir mugs', customerId: 'ramblers-club' });
    shelf.enquired('choir');
    await shelf.delivered('choir');
    // 761.31 came.
    shelf.pay('choir', 4929);
    shelf.step('choir', { what: 'closed', note: '' });
    await enterBoard();
    const card = screen.getByRole('region', { name: 'Today' });
    expect(card).toHaveTextContent('Give 49.29 USD back to Alextoo much came for Harbour Choir mugs');
    expect(within(card).getByRole('link', { name: /^Give back: Give 49\.29/ })).toHaveAttribute(
      'href',
      '/orders/choir#order-money',
    );
    const money = screen.getByRole('region', { name: 'Money' });
    expect(money).toHaveTextContent('too much came of Harbour Choir mugs: give it back49.29');
  });

  it('notes in place that something missing is here, one of two that are due the same day', async () => {
    await open();
    const item = { ofWhom: 'customer', doneBy: addDays(TEST_DAY, -2), doneOn: null } as const;
    shelf.add('kayak', {
      name: 'Kayak Club bags',
      openItems: [
        { id: 'letter', what: 'Letter', ...item },
        { id: 'sizes', what: 'Sizes', ...item },
      ],
    });
    await enterBoard();
    const card = screen.getByRole('region', { name: 'Today' });
    // The two, and a quote for each of the two orders.
    expect(card).toHaveTextContent('Four things to do');
    expect(card).toHaveTextContent('two days late');
    await press('It is here: Sizes: Kayak Club bags');
    expect(bodyOf('order', 'kayak').openItems.map(({ doneOn }) => doneOn)).toEqual([null, TEST_DAY]);
    expect(card).toHaveTextContent('Three things to do');
    expect(screen.getByRole('heading', { name: 'Today' })).toHaveFocus();
    await undo();
    expect(card).toHaveTextContent('Four things to do');
  });

  it('tells of a printer that stood still as long as the workshop says', async () => {
    await open();
    const day = addDays(TEST_DAY, -6);
    const prints = { prints: 1, total: 1, widthMm: 100, heightMm: 100, sessions: 1, jobId: null };
    act(() =>
      screenStore().actions.note('Run', [{ kind: 'inkPrints', body: { day, name: 'Run', ...prints } }]),
    );
    await enterBoard();
    const card = screen.getByRole('region', { name: 'Today' });
    expect(card).toHaveTextContent('no print noted for six days');
    expect(within(card).getByRole('link', { name: /^Note a print/ })).toHaveAttribute(
      'href',
      '/workshop#ink-run',
    );
  });
});

describe('the weeks ahead', () => {
  it('lead to the workshop’s hours where nobody has said when the bench is free', async () => {
    await open();
    act(() =>
      screenStore().actions.edit('Hours', [
        { do: 'change', kind: 'workshop', id: 'workshop', to: (body) => ({ ...body, blocks: null }) },
      ]),
    );
    await enterBoard();
    expect(screen.getByRole('link', { name: 'Say your free hours' })).toHaveAttribute(
      'href',
      '/workshop#workshop-blocks',
    );
  });

  it('say what is asked of each week, for the ear too, and what would be if all came', async () => {
    await open();
    act(() =>
      screenStore().actions.edit('Hours', [
        {
          do: 'change',
          kind: 'workshop',
          id: 'workshop',
          to: (body) => ({ ...body, blocks: [...usualBlocks] }),
        },
      ]),
    );
    await enterBoard();
    const weeks = screen.getByRole('table', { name: 'Hours at the bench by week' });
    // An hour on five evenings and four on Saturday, without the days gone by.
    const left = usualBlocks.filter(({ weekday }) => weekday >= weekdayOf(TEST_DAY));
    const hours = left.reduce((sum, { minutes }) => sum + minutes, 0) / 60;
    // On a Sunday none is left, and what is asked begins tomorrow.
    const asked =
      hours > 0 ? `^this week asked or quoted .* of ${hours} h$` : '^tomorrow asked or quoted .* of 9 h$';
    expect(await within(weeks).findByRole('row', { name: new RegExp(asked) })).toBeVisible();
    const thisWeek = hours > 0 ? / of \d h$/ : /^this week not free$/;
    expect(within(weeks).getByRole('row', { name: /^this week / })).toHaveAccessibleName(thisWeek);
    expect(within(weeks).getAllByRole('row')).toHaveLength(5);
    expect(screen.getByText(/^If the open one comes,/)).toBeVisible();
  });

  it('are not drawn as free while nobody knows yet what the orders take', async () => {
    worker.isSilent = true;
    await open();
    act(() =>
      screenStore().actions.edit('Hours', [
        {
          do: 'change',
          kind: 'workshop',
          id: 'workshop',
          to: (body) => ({ ...body, blocks: [...usualBlocks] }),
        },
      ]),
    );
    await enterBoard();
    expect(screen.getByText('Working out what the orders take…')).toBeVisible();
    const weeks = screen.getByRole('table', { name: 'Hours at the bench by week' });
    expect(within(weeks).getByRole('row', { name: 'this week' })).toBeVisible();
    expect(weeks.querySelector('svg')).toBeNull();
    expect(weeks).not.toHaveTextContent(/free/);
  });

  it('say that nothing can be planned of an enquiry without a job', async () => {
    await open();
    act(() =>
      screenStore().actions.edit('Hours', [
        {
          do: 'change',
          kind: 'workshop',
          id: 'workshop',
          to: (body) => ({ ...body, blocks: [...usualBlocks] }),
        },
        {
          do: 'change',
          kind: 'order',
          id: 'club-enquiry',
          to: (body) => ({ ...body, jobIds: [] }),
        },
      ]),
    );
    await enterBoard();
    expect(await screen.findByText(/^Of what is asked or quoted no job can be planned yet;/)).toBeVisible();
  });
});

describe('how quotes were answered', () => {
  it('is counted in a fold, and few are said to be few', async () => {
    await open();
    shelf.add('kayak', { name: 'Kayak Club bags' });
    shelf.enquired('kayak');
    await shelf.accepted('kayak', { issuedOn: TEST_DAY });
    await enterBoard();
    await userEvent.click(screen.getByText('Which quotes are taken'));
    expect(await screen.findByText('Of all answered: 1 of 1, too few to tell.')).toBeVisible();
    const answered = screen.getByRole('table', { name: 'By days from enquiry to quote' });
    expect(within(answered).getByRole('row', { name: 'the same day 1 of 1, too few to tell' })).toBeVisible();
  });
});

describe('a repeat', () => {
  it('takes two presses, says what is free and left out, and is one step to undo', async () => {
    await open();
    act(() =>
      screenStore().actions.edit('Discount', [
        {
          do: 'change',
          kind: 'order',
          id: 'club-enquiry',
          to: (body) => ({ ...body, discount: { kind: 'share', share: 0.1, why: '' } }),
        },
      ]),
    );
    shelf.enquired('club-enquiry');
    await shelf.delivered('club-enquiry', {
      tax: { ...clubQuote.tax, share: 0.05 },
      owner: { ...clubQuote.owner, rates: [pay] },
    });
    await enterBoard();
    const [orders, jobs] = [idsOf('order').length, idsOf('job').length];
    await press('Repeat Ramblers Club shirts');
    // The workshop asks 18.00 an hour and 7 % of tax.
    expect(
      screen.getByText(
        /^Changed since the quote of Nov 26, 2026: Your pay 17\.00 USD an hour, now 18\.00 USD/,
      ),
    ).toBeVisible();
    expect(screen.getByText('Tax is 7 %; it was 5 %.')).toBeVisible();
    expect(screen.getByText('Left out, as it was of that order alone: the discount.')).toBeVisible();
    expect(
      screen.getByText(
        'Prices that the jobs ask stay as they are: Club shirt 19.00 USD. Each job tells what the rates of today suggest.',
      ),
    ).toBeVisible();
    await press('Make “Ramblers Club shirts 2”');
    expect(idsOf('order')).toHaveLength(orders + 1);
    expect(idsOf('job')).toHaveLength(jobs + 1);
    const [address] = went.mock.calls[0] ?? [''];
    const id = address.replace('/orders/', '');
    expect(bodyOf('order', id)).toMatchObject({ repeats: 'club-enquiry', discount: null });
    const events = () => screenStore().getState().entries.orderEvent;
    expect(events().at(-1)?.body).toMatchObject({
      orderId: id,
      step: { what: 'enquired', number: { count: 2 } },
    });
    await undo();
    expect(idsOf('order')).toHaveLength(orders);
    expect(idsOf('job')).toHaveLength(jobs);
  });
});

/** Pay as it stood when the order was quoted. */
const pay = {
  place: JSON.stringify(['workshop', '', ['rates', 'wage']]),
  ...{ label: 'Your pay', value: 17, unit: 'money/h', date: '2026-11-20' },
};

/** 243.96 asked for before the goods go out. */
const balanceRequest = (orderId: string, dueOn: string): PaymentRequest => ({
  ...heading,
  orderId,
  what: 'balance',
  amount: 24396,
  total: 76131,
  paid: 51735,
  dueOn,
});
