// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import '@/tests/app/_screens/stage';
import { act, cleanup, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { AfterRunScreen } from '@/app/_afterRun/AfterRunScreen';
import { canonicalText } from '@/lib/stored/canonicalText';
import { runSchema } from '@/shared/schemas/making/run';
import { paymentSchema } from '@/shared/schemas/orderEvents';
import { bodyOf, enter, leaveScreens, screenStore, undo } from '@/tests/app/_screens/screens';
import { clubFacts, clubStandard, noFacts } from '@/tests/fixtures/clubStandard';
import { TEST_DAY } from '@/tests/tools/clock/testDay';
import { eventually } from '@/tests/tools/eventually';

vi.mock('next/navigation', () => ({
  usePathname: () => '/making/run/after',
  useRouter: () => ({ push: () => undefined }),
}));

afterEach(() => {
  cleanup();
  leaveScreens();
});

/** The worked run, begun and made. */
async function makeRun(
  orderId: string | null = null,
  runId = 'run',
  { facts = typedFacts(), metresEach }: { facts?: ReturnType<typeof clubFacts>; metresEach?: number } = {},
): Promise<void> {
  if (runId === 'run') await act(() => screenStore().open());
  const { actions } = screenStore();
  const body = runSchema.parse({ name: 'Club shirts', works: [{ jobId: 'club', orderId }] });
  await act(() => actions.edit('Run', [{ do: 'add', kind: 'run', id: runId, body }]));
  const standard = clubStandard();
  const works = standard.works.map((work) =>
    metresEach === undefined ? work : { ...work, sheets: { ...work.sheets, metresEach } },
  );
  await act(() =>
    actions.issue('Begin', {
      kind: 'runStandard',
      about: { kind: 'run', id: runId },
      series: `runStandard ${runId}`,
      body: (number) => ({ ...standard, works, runId, number, issuedOn: TEST_DAY }),
    }),
  );
  const { pressings, actuals, hours } = facts;
  // On the day of the documents of the store, whose prices are none set since.
  const entries = [...pressings, ...actuals, ...hours].map(({ kind, body: noted }) => {
    const body = 'day' in noted ? { ...noted, day: TEST_DAY } : noted;
    return {
      kind,
      body: 'for' in body ? { ...body, for: { kind: 'run', id: runId } } : { ...body, runId },
    };
  });
  await act(() => actions.note('Made', entries as Parameters<typeof actions.note>[1]));
}

/** Its hours as typed: eight and a half on the clock in one go would be a whole night. */
function typedFacts(): ReturnType<typeof clubFacts> {
  const facts = clubFacts({ reprints: 622 });
  return { ...facts, hours: facts.hours.map((one) => ({ ...one, body: { ...one.body, from: 'typed' } })) };
}

/** Made and closed, without a move in stock. */
async function makeClosed(): Promise<void> {
  await makeRun();
  await close();
}

async function close(runId = 'run'): Promise<void> {
  const { actions } = screenStore();
  const body = { runId, standardId: null, day: TEST_DAY, step: { what: 'closed' as const, note: '' } };
  await act(() => actions.note('Close', [{ kind: 'runStep', body }]));
}

const row = (name: string) => screen.getByRole('row', { name: new RegExp(`^${name}`) });
const press = async (name: RegExp) => userEvent.click(await screen.findByRole('button', { name }));
const section = (name: string) => screen.findByRole('region', { name });
const entries = () => screenStore().getState().entries;
const steps = () => entries().runStep.map(({ body }) => body.step);
const stockOf = (kind: string) =>
  entries()
    .stockMove.filter(({ body }) => body.item.kind === kind)
    .reduce((sum, { body }) => sum + body.quantity, 0);

describe('after the run', () => {
  it('says what an hour paid and goes from the profit quoted to what came', async () => {
    await makeClosed();
    await enter(<AfterRunScreen runId="run" />);
    expect(screen.getByText('48.29')).toBeVisible();
    expect(screen.getByText('56.26')).toBeVisible();
    expect(row('Profit as quoted')).toHaveTextContent('288.37');
    expect(row('Blanks used')).toHaveTextContent('−7.15');
    expect(row('Blanks used')).toHaveTextContent('2 ghost, 1 specks, 1 reversed');
    // 8.40 h for 7.538 planned: 52 min.
    expect(row('Your time, 52 min more')).toHaveTextContent('−15.52');
    expect(row('Price of blanks, dearer')).toHaveTextContent('−4.93');
    expect(row('Profit as it came')).toHaveTextContent('254.44');
    expect(screen.getByText(/^bars torn off: the scale begins at/)).toBeVisible();
    // 4.93 and 7.15 of blanks are told together.
    expect(await section('Where 33.93 USD went')).toHaveTextContent('Your time took 15.52; blanks 12.08');
  });

  it('says that a price came in since it was closed, and nothing before one did', async () => {
    await makeClosed();
    await enter(<AfterRunScreen runId="run" />);
    expect(row('Profit as it came')).toBeVisible();
    expect(screen.queryByText(/since it was closed/)).toBeNull();
    const { actions } = screenStore();
    const actual = { of: 'freight' as const, amountMinor: 1_200 };
    const body = { runId: 'run', day: TEST_DAY, currency: 'USD', actual };
    await act(async () => {
      actions.note('Freight', [{ kind: 'runActual', body }]);
    });
    expect(
      screen.getByText('Amounts came in since it was closed, and count here: 1 amount typed.'),
    ).toBeVisible();
  });

  it('says once that pieces were lost without a cause, where each is named', async () => {
    const facts = typedFacts();
    const pressings = facts.pressings.map((one) =>
      one.body.fault === 'ghost' ? { ...one, body: { ...one.body, fault: null } } : one,
    );
    await makeRun(null, 'run', { facts: { ...facts, pressings } });
    await enter(<AfterRunScreen runId="run" />);
    expect(await screen.findByText('2 were lost and nobody said why.')).toBeVisible();
    expect(screen.queryByText(/without a cause\. What keeps/)).toBeNull();
  });

  it('judges nothing before it is closed: says what is still to press, and folds what it would come to', async () => {
    const [scrap] = clubFacts({ reprints: null }).pressings.filter(({ body }) => body.result === 'scrap');
    const begun = { ...noFacts, pressings: scrap === undefined ? [] : [scrap] };
    await makeRun(null, 'run', { facts: begun });
    await enter(<AfterRunScreen runId="run" />);
    expect(await section('So far')).toHaveTextContent('37 of 37 still to press; 1 lost');
    expect(screen.getByRole('link', { name: 'To the press' })).toHaveAttribute('href', '/making/run/press');
    expect(screen.queryByText('it paid you an hour')).toBeNull();
    expect(screen.queryByText(/^Where .* went$/)).toBeNull();
    expect(screen.queryByRole('row', { name: /^Profit/ })).toBeNull();
    await press(/^As if it ended now$/);
    expect(row('Profit if it ended now')).toBeVisible();
  });

  it('counts what is held for reprints as won by the close alone', async () => {
    await makeRun(null, 'run', { facts: { ...noFacts, actuals: clubFacts({ reprints: null }).actuals } });
    await enter(<AfterRunScreen runId="run" />);
    await press(/^As if it ended now$/);
    // Nobody knows yet whether one will be asked for.
    expect(row('Blanks used')).toBeVisible();
    expect(screen.queryByRole('row', { name: /^Held for reprints/ })).toBeNull();
    await press(/^Close the run$/);
    expect(row('Held for reprints, not needed')).toHaveTextContent(/\+6.22None was needed$/);
  });

  it('counts a run whose every piece came good as pressed', async () => {
    await makeRun();
    await enter(<AfterRunScreen runId="run" />);
    expect(await section('So far')).toHaveTextContent('All 37 are pressed; 4 lost');
    expect(screen.getByRole('link', { name: 'Close it' })).toHaveAttribute('href', '#after-actuals');
  });

  it.each([
    ['0', /^A time of 0 min is noted/],
    ['720', /^12 h are noted in one go/],
  ])('shows the pay of an hour as doubtful while a time of %s min is noted', async (minutes, told) => {
    await makeClosed();
    await enter(<AfterRunScreen runId="run" />);
    expect(screen.getByText('it paid you an hour')).toBeVisible();
    await press(/^Time worked$/);
    const form = screen.getByRole('form', { name: 'Time worked' });
    await userEvent.selectOptions(within(form).getByRole('combobox'), 'Setting up');
    await userEvent.type(within(form).getByRole('textbox', { name: 'Time in minutes' }), minutes);
    await press(/^Note the time$/);
    expect(screen.getByText(told)).toBeVisible();
    expect(screen.getByText('Doubtful')).toBeVisible();
    expect(screen.queryByText('it paid you an hour')).toBeNull();
    await undo();
    expect(screen.getByText('it paid you an hour')).toBeVisible();
  });

  it('asks whether hours were meant where next to no minutes are typed', async () => {
    await makeRun();
    await enter(<AfterRunScreen runId="run" />);
    await press(/^Time worked$/);
    await userEvent.type(screen.getByRole('textbox', { name: 'Time in minutes' }), '1.5');
    await userEvent.tab();
    expect(
      screen.getByText('That is 1.5 min. Hours are typed as minutes here: an hour and a half is 90.'),
    ).toBeVisible();
  });

  it('leads back to the run and to the other places of the making', async () => {
    await makeRun();
    await enter(<AfterRunScreen runId="run" />);
    expect(screen.getByRole('link', { name: /The run: Club shirts$/ })).toHaveAttribute(
      'href',
      '/making/run',
    );
    expect(within(screen.getByRole('navigation', { name: 'Making' })).getByText('Stock')).toBeVisible();
  });

  it('says in one line what it took, with the fields folded', async () => {
    await makeRun();
    await enter(<AfterRunScreen runId="run" />);
    // Freight, packaging, fees and income nobody noted.
    expect(await section('What it took')).toHaveTextContent(
      '41 blanks, 58 sheets, 44 mL, 8 h 24 min; 4 figures as planned',
    );
    expect(screen.queryByRole('textbox')).toBeNull();
  });

  it('keeps the cause of a gap', async () => {
    await makeClosed();
    await enter(<AfterRunScreen runId="run" />);
    await userEvent.selectOptions(within(row('Your time')).getByRole('combobox'), 'Interruptions');
    expect(steps().slice(1)).toMatchObject([{ what: 'cause', line: 'labour', cause: 'interruption' }]);
  });

  it('tells of a whole night, and keeps what was typed', async () => {
    await makeRun();
    await enter(<AfterRunScreen runId="run" />);
    await press(/^Time worked$/);
    const form = screen.getByRole('form', { name: 'Time worked' });
    await userEvent.selectOptions(within(form).getByRole('combobox'), 'Setting up');
    const time = within(form).getByRole('textbox', { name: /^Time/ });
    await userEvent.type(time, '961');
    await userEvent.tab();
    expect(within(form).getByText(/^Nobody works more than 16 h/)).toBeVisible();
    await userEvent.clear(time);
    await userEvent.type(time, '600');
    await userEvent.tab();
    expect(within(form).getByText(/^That is a whole night/)).toBeVisible();
    await press(/^Note the time$/);
    expect(entries().hours.at(-1)?.body).toMatchObject({ minutes: 600, element: 'setUp' });
  });

  it('refuses an amount of no blanks, and fewer than none', async () => {
    await makeRun();
    await enter(<AfterRunScreen runId="run" />);
    await press(/^Blanks used$/);
    await userEvent.type(screen.getByRole('textbox', { name: /^Paid for those blanks/ }), '200');
    await userEvent.tab();
    expect(screen.getByRole('button', { name: /^Note it/ })).toHaveAttribute('aria-disabled', 'true');
    const used = screen.getByRole('textbox', { name: /^Blanks used/ });
    await userEvent.type(used, '-3');
    await userEvent.tab();
    expect(used).toHaveAttribute('aria-invalid', 'true');
    expect(used).toHaveValue('-3');
  });

  it('tells that more was pressed than laid out, and asks while more blanks are typed', async () => {
    await makeRun();
    await enter(<AfterRunScreen runId="run" />);
    // One spare of each size was laid out: 22 M and L, of which 24 were begun; 43 in all.
    expect(
      screen.getByText(/^24 of M and L went into the first press, but only 22 were laid out/),
    ).toBeVisible();
    await press(/^Blanks used$/);
    const used = screen.getByRole('textbox', { name: /^Blanks used/ });
    await userEvent.type(used, '43');
    await userEvent.tab();
    expect(screen.queryByText(/^Only 43 were laid out/)).toBeNull();
    await userEvent.clear(used);
    await userEvent.type(used, '44');
    await userEvent.tab();
    expect(screen.getByText(/^Only 43 were laid out when it began/)).toBeVisible();
    await press(/^Note it$/);
    expect(entries().runActual.at(-1)?.body.actual).toMatchObject({ of: 'blanks', quantity: 44 });
  });

  it('finds what was typed after a reload, until it is noted', async () => {
    await makeRun();
    await enter(<AfterRunScreen runId="run" />);
    await press(/^Blanks used$/);
    await userEvent.type(screen.getByRole('textbox', { name: /^Blanks used/ }), '42');
    await userEvent.type(screen.getByRole('textbox', { name: /^Paid for those blanks/ }), '207.90');
    await userEvent.tab();
    await press(/^Time worked$/);
    await userEvent.type(screen.getByRole('textbox', { name: /^Time/ }), '35');
    await userEvent.tab();
    const field = (name: RegExp) => screen.findByRole('textbox', { name });
    await reload();
    expect(await field(/^Blanks used/)).toHaveValue('42');
    expect(await field(/^Paid for those blanks/)).toHaveValue('207.90');
    expect(await field(/^Time/)).toHaveValue('35');
    await press(/^Note it$/);
    expect(entries().runActual.at(-1)?.body.actual).toEqual({
      of: 'blanks',
      quantity: 42,
      amountMinor: 20_790,
    });
    await reload();
    expect(await field(/^Blanks used/)).toHaveValue('');
  });

  it('asks for the length of a roll, and counts it as the standard does', async () => {
    // A roll 610 mm wide: a letter sheet of 215.9 × 279.4 mm is 98.889 mm of it, and 6000 / 98.889 = 60.674.
    await makeRun(null, 'run', { metresEach: (215.9 * 279.4) / 610 / 1000 });
    await enter(<AfterRunScreen runId="run" />);
    await press(/^Roll used$/);
    expect(screen.queryByRole('textbox', { name: /^Sheets used/ })).toBeNull();
    const used = screen.getByRole('textbox', { name: /^Roll used/ });
    // 58 sheets were noted: 5.74 m.
    expect(screen.getByText('now 5.74')).toBeVisible();
    await userEvent.type(used, '6');
    await press(/^Note it$/);
    const noted = entries().runActual.at(-1)?.body.actual;
    expect(noted).toMatchObject({ of: 'sheets', quantity: expect.closeTo(60.674, 3) });
    expect(screen.getByText(/6 m of roll/)).toBeVisible();
  });

  it('says so where there is no such run', async () => {
    await act(() => screenStore().open());
    await enter(<AfterRunScreen runId="none" />);
    expect(screen.getByRole('heading', { level: 1, name: /run is not here/ })).toBeVisible();
  });
});

/** Reloads, with both folds opened again where they are shut. */
async function reload(): Promise<void> {
  cleanup();
  await enter(<AfterRunScreen runId="run" />);
  for (const name of [/^Blanks used$/, /^Time worked$/]) {
    const fold = await screen.findByRole('button', { name });
    if (fold.getAttribute('aria-expanded') !== 'true') await userEvent.click(fold);
  }
}

describe('what runs teach', () => {
  it('takes all sizes of a blank over by one button and back by one tap, to the last bit', async () => {
    await makeRun();
    await enter(<AfterRunScreen runId="run" />);
    expect(await section('What runs teach')).toHaveTextContent(/^3?What runs teachTwo prices change/);
    const before = canonicalText(bodyOf('blank', 'white-shirt'));
    await press(/^Take it over: Price of White shirt.*$/);
    expect(bodyOf('blank', 'white-shirt').sizes.map(({ price }) => price?.origin)).toEqual(
      Array.from({ length: 6 }, () => 'yours'),
    );
    // 0.12 dearer each: 4.95 for 4.83.
    expect(bodyOf('blank', 'white-shirt').sizes[0]?.price?.value).toBe(4.72);
    expect(entries().rateTaken).toHaveLength(6);
    // 4.60, 6.10 and 7.10 as the worked order has them, each 0.12 dearer.
    expect(screen.getByText(/^Taken over /)).toBeVisible();
    expect(screen.getByText(/S, M, L and XL 4.60 USD → 4.72 USD; 2XL 6.10 USD → 6.22 USD/)).toHaveTextContent(
      /, as paid\.$/,
    );
    await press(/^Take back: Price of White shirt.*$/);
    await eventually(() => expect(canonicalText(bodyOf('blank', 'white-shirt'))).toBe(before));
    expect(entries().rateTaken).toEqual([]);
  });

  it('says where ink is learned', async () => {
    await makeRun();
    await enter(<AfterRunScreen runId="run" />);
    expect(await screen.findByRole('link', { name: 'record of refills' })).toHaveAttribute(
      'href',
      '/workshop#ink-record',
    );
  });

  it('undoes a blank with all its sizes as one step', async () => {
    await makeRun();
    await enter(<AfterRunScreen runId="run" />);
    const before = canonicalText(bodyOf('blank', 'white-shirt'));
    await press(/^Take it over: Price of White shirt.*$/);
    await undo();
    expect(canonicalText(bodyOf('blank', 'white-shirt'))).toBe(before);
    expect(entries().rateTaken).toEqual([]);
  });

  it('asks for the mirror after a reversed print until the maker says it was checked', async () => {
    await makeRun();
    await enter(<AfterRunScreen runId="run" />);
    expect(await screen.findByText(/one print came out reversed/)).toBeVisible();
    await press(/^The mirror was checked/);
    await eventually(() => expect(screen.queryByText(/came out reversed/)).toBeNull());
    expect(steps()).toEqual([
      { what: 'mirrorChecked', jobId: 'club', pressingIds: [expect.stringMatching(/^[a-z0-9]+-\d+$/)] },
    ]);
  });
});

describe('closing', () => {
  it('shows what it moves in stock and books it in the same step', async () => {
    await makeRun();
    await enter(<AfterRunScreen runId="run" />);
    await press(/^What it moves in stock/);
    expect(screen.getByText('White shirt, 100 % polyester, M: 2 spoiled')).toBeVisible();
    expect(screen.getByText(/^44 mL of ink, of channels nobody noted/)).toBeVisible();
    await press(/^Close the run$/);
    expect(steps().map(({ what }) => what)).toEqual(['closed']);
    expect(stockOf('blank')).toBe(-41);
    expect(stockOf('paper')).toBe(-58);
    // Of which channels its 44 mL were nobody noted: nothing is booked, and it is said.
    expect(stockOf('ink')).toBe(0);
    expect(screen.getByText('Its stock is booked, save what nobody noted enough of:')).toBeVisible();
    expect(screen.getAllByText(/^44 mL of ink, of channels nobody noted: note it in stock/)).not.toEqual([]);
    await undo();
    expect([steps(), entries().stockMove]).toEqual([[], []]);
  });

  it('books the exact difference alone on a second close', async () => {
    await makeRun();
    await enter(<AfterRunScreen runId="run" />);
    await press(/^Close the run$/);
    await press(/^Open the run again$/);
    await press(/^Sheets used$/);
    await userEvent.type(screen.getByRole('textbox', { name: /^Sheets used/ }), '60');
    await press(/^Note it$/);
    expect(screen.getByText(/only the difference is booked/)).toBeVisible();
    await press(/^Close the run$/);
    expect(entries().stockMove.at(-1)?.body.quantity).toBe(-2);
    expect([stockOf('blank'), stockOf('paper')]).toEqual([-41, -60]);
  });

  it('leaves the stock alone where the maker says so, and offers it still', async () => {
    await makeRun();
    await enter(<AfterRunScreen runId="run" />);
    await userEvent.click(await screen.findByRole('checkbox', { name: /^Book what it moved/ }));
    await press(/^Close the run$/);
    expect(entries().stockMove).toEqual([]);
    await press(/^Book it in stock$/);
    expect(stockOf('blank')).toBe(-41);
    expect(screen.queryByRole('button', { name: 'Book it in stock' })).toBeNull();
    expect(screen.getByText(/^Its stock is booked/)).toBeVisible();
  });
});

describe('over all runs', () => {
  it('has the money of its order, and tells each run in words beside the drawing', async () => {
    await makeRun('order');
    await makeRun('order', 'second');
    const { actions } = screenStore();
    const payment = paymentSchema.parse({
      ...{ orderId: 'order', day: TEST_DAY, kind: 'payment', amountMinor: 38_066, currency: 'USD' },
      way: 'cash',
    });
    await act(() => actions.note('Money came', [{ kind: 'payment', body: payment }]));
    await enter(<AfterRunScreen runId="run" />);
    await press(/^Close the run$/);
    cleanup();
    await enter(<AfterRunScreen runId="second" />);
    await press(/^Close the run$/);
    const table = await screen.findByRole('table', { name: /^Closed runs: quoted, made and paid/ });
    expect(within(table).getAllByText('380.66, also for another run')).toHaveLength(2);
    expect(screen.getByRole('figure')).toHaveTextContent(/^Pay of an hour.*up to 56.26 USD$/);
    expect(screen.getByText(/−31.04 in all, against you in 2 of 2/)).toBeVisible();
  });

  it('has price quoted, as made and the money that came side by side', async () => {
    await makeRun();
    await enter(<AfterRunScreen runId="run" />);
    await press(/^Close the run$/);
    const table = await screen.findByRole('table', { name: /^Closed runs: quoted, made and paid/ });
    const cells = within(table)
      .getAllByRole('cell')
      .map(({ textContent }) => textContent);
    expect(cells).toEqual(['711.50', '711.50', 'no order', '288.37', '254.44', '56.26', '48.29']);
    expect(await section('Over all runs')).toHaveTextContent(
      '48.29 USD an hour over 1 run; 56.26 USD quoted',
    );
  });
});
