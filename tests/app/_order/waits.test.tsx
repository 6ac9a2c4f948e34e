// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import { act, cleanup, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { wantedDayWords } from '@/app/_words/docket/jobWords';
import { FIRST_JOB_ID } from '@/lib/examples/exampleDocuments';
import { exampleWorkshop } from '@/lib/examples/exampleWorkshop';
import type { Job } from '@/shared/schemas/job';
import { bodyOf, clearScreens, screenStore, undo } from '@/tests/app/_screens/screens';
import { clubQuote } from '@/tests/fixtures/orderPapers';
import { TEST_DAY } from '@/tests/tools/clock/testDay';
import {
  accepted,
  approve,
  change,
  creditWhole,
  dayIn,
  enterOrder,
  events,
  form,
  invoice,
  newPictures,
  order,
  pay,
  payments,
  quote,
  rows,
  saidInFull,
  section,
  steps,
  TEST_YEAR,
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

describe('what an order waits for', () => {
  it('is a quote at first, and then what the customer still owes', async () => {
    await enterOrder();
    expect(section('What it waits for').getByText('You answer with a quote')).toBeVisible();
    expect(rows()).toEqual([
      expect.stringContaining('The order has no number yet.'),
      expect.stringContaining('Answer with a quote'),
      expect.stringContaining('Letter that the crest may be printed'),
    ]);
  });

  it('leads from the answer to what it lacks: the customer, then a job, then the quote', async () => {
    await enterOrder();
    const waits = section('What it waits for');
    const name = (act: string) => `${act}: Answer with a quote`;
    expect(waits.getByRole('button', { name: name('Quote') })).toBeVisible();
    change({ customerId: null, jobIds: [] });
    await userEvent.click(waits.getByRole('button', { name: name('Choose the customer') }));
    await waitFor(() => expect(screen.getByLabelText('Customer')).toHaveFocus());
    await userEvent.selectOptions(screen.getByLabelText('Customer'), 'Exampleton Ramblers Club');
    await userEvent.click(waits.getByRole('button', { name: name('Add a job') }));
    await waitFor(() => expect(screen.getByRole('button', { name: 'Add a new job' })).toHaveFocus());
    change({ jobIds: ['club-order'] });
    expect(waits.getByRole('button', { name: name('Quote') })).toBeVisible();
  });

  it('ticks an open item as come, and takes it back with undo', async () => {
    await enterOrder();
    await userEvent.click(
      section('What it waits for').getByRole('button', { name: /^It came: Letter that the crest/ }),
    );
    expect(order().openItems[0]?.doneOn).toBe(TEST_DAY);
    expect(rows().join()).not.toContain('Letter');
    await undo();
    expect(order().openItems[0]?.doneOn).toBeNull();
  });

  it('gives an order without a number the next one', async () => {
    await enterOrder();
    await userEvent.click(screen.getByRole('button', { name: 'Give it one' }));
    expect(steps()).toMatchObject([{ what: 'enquired', number: { year: TEST_YEAR, count: 1 } }]);
    expect(
      screen.getByText(new RegExp(`^order ${TEST_DAY.slice(2, 4)}-001[A-Z], 37 shirts, wanted `)),
    ).toBeVisible();
  });

  it('brings the job to the choice that was accepted, in one step, and all that is made of it', async () => {
    const jobId = FIRST_JOB_ID;
    const goods = clubQuote.goods.map((one) => ({ ...one, jobId }));
    const [more] = clubQuote.alternatives;
    if (more === undefined) throw new Error('the quote offers nothing beside');
    // Three more in L at 12.50 each.
    const lines = goods.map(({ lineId, sizes, start }) => ({
      ...{ jobId, lineId, start, without: [] },
      sizes: [...sizes, { size: 'L', quantity: 3, each: 1250, total: 3750 }],
    }));
    const line = () => bodyOf('job', jobId).lines[0];
    const pieces = () => line()?.quantities.reduce((sum, { quantity }) => sum + quantity, 0);
    await enterOrder();
    await quote({
      goods,
      alternatives: [
        { ...more, id: 'three-more', priced: { lines, charges: clubQuote.charges, discount: null } },
      ],
    });
    await userEvent.click(screen.getByRole('button', { name: 'Accepted: Yes or no to the quote' }));
    const yes = form('Accepted');
    expect(yes.queryByText(/^The job becomes/)).toBeNull();
    await userEvent.selectOptions(yes.getByLabelText('What they chose'), 'Three more L, 801.43 USD');
    expect(yes.getByText(/^The job becomes 40 × Club shirt\./)).toBeVisible();
    await userEvent.click(yes.getByRole('button', { name: 'Note it' }));
    expect([pieces(), order().alternatives.map(({ id }) => id)]).toEqual([40, ['back-only']]);
    await userEvent.click(screen.getByRole('button', { name: 'More papers' }));
    await userEvent.click(screen.getByRole('tab', { name: 'Delivery note' }));
    const panel = within(screen.getByRole('tabpanel'));
    expect(await panel.findByText('40 pieces', {}, { timeout: 20_000 })).toBeVisible();
    await undo();
    expect([pieces(), order().alternatives.length]).toEqual([37, 2]);
    expect(steps().some(({ what }) => what === 'accepted')).toBe(false);
  });

  it('tells that a job is not what was accepted, and takes it over', async () => {
    const jobId = FIRST_JOB_ID;
    await enterOrder();
    const paperId = await quote({
      goods: clubQuote.goods.map((one) => ({ ...one, jobId })),
      alternatives: [],
    });
    tell({ what: 'accepted', paperId, alternativeId: null, by: 'Alex', how: 'message', proof: null });
    expect(screen.queryByText(/is not as it was accepted/)).toBeNull();
    act(() => {
      screenStore().actions.edit('Fewer', [
        {
          ...{ do: 'change', kind: 'job', id: jobId },
          to: (job: Job) => ({
            ...job,
            lines: job.lines.map((line) => ({ ...line, quantities: [{ size: 'L', quantity: 11 }] })),
          }),
        },
      ]);
    });
    expect(screen.getByText('Ramblers Club shirts is not as it was accepted.')).toBeVisible();
    expect(screen.getByText(/Accepted: 37 × Club shirt\. The bench/)).toBeVisible();
    await userEvent.click(screen.getByRole('button', { name: 'Make it what was accepted' }));
    expect(bodyOf('job', jobId).lines[0]?.quantities).toHaveLength(6);
    expect(screen.queryByText(/is not as it was accepted/)).toBeNull();
  });

  it('notes a yes with who said it, how, and which of the choices', async () => {
    await enterOrder();
    const paperId = await quote();
    await userEvent.click(screen.getByRole('button', { name: 'Accepted: Yes or no to the quote' }));
    const yes = form('Accepted');
    await userEvent.selectOptions(yes.getByLabelText('What they chose'), 'Three more L, 801.43 USD');
    await userEvent.selectOptions(yes.getByLabelText('How'), 'By phone');
    await userEvent.click(yes.getByRole('button', { name: 'Note it' }));
    expect(steps().at(-1)).toEqual({
      ...{
        what: 'accepted',
        paperId,
        alternativeId: 'more',
        by: 'Alex Placeholder',
        how: 'phone',
        proof: null,
      },
    });
    // The total, and all of it is owed.
    expect(section('Money').getAllByText('801.43')).toHaveLength(2);
    expect(screen.queryByRole('form', { name: 'Accepted' })).toBeNull();
    expect(document.activeElement).toHaveTextContent('What it waits for');
  });

  it('does not take a yes of nobody, and keeps what was typed', async () => {
    await enterOrder();
    await quote();
    await userEvent.click(screen.getByRole('button', { name: 'Accepted: Yes or no to the quote' }));
    const by = form('Accepted').getByLabelText('Who said so');
    await userEvent.clear(by);
    await userEvent.click(form('Accepted').getByRole('button', { name: 'Note it' }));
    expect(steps().some(({ what }) => what === 'accepted')).toBe(false);
    expect(screen.getByRole('form', { name: 'Accepted' })).toBeVisible();
  });

  it('says that a quote had ended, and takes the yes all the same', async () => {
    await enterOrder();
    await quote({ validUntil: dayIn(-5) });
    expect(rows().some((row) => row.includes('A new quote: the last one is no longer valid'))).toBe(true);
    await userEvent.click(screen.getByText('Something else happened'));
    await userEvent.click(screen.getByRole('button', { name: 'Accepted' }));
    expect(
      form('Accepted').getByText(new RegExp(`^This quote was valid until ${saidInFull(dayIn(-5))}\\.`)),
    ).toBeVisible();
    await userEvent.click(form('Accepted').getByRole('button', { name: 'Note it' }));
    expect(screen.getByText('It was accepted after the quote had ended.')).toBeVisible();
  });

  it('locks the blanks until deposit and proof are here, and says what opens them', async () => {
    await enterOrder();
    approve(false);
    await accepted();
    const locked = await screen.findByRole('button', { name: 'Blanks ordered: Order the blanks' });
    expect(locked).toHaveAttribute('aria-disabled', 'true');
    expect(rows().some((row) => row.includes('opens once the deposit and the approved proof are here'))).toBe(
      true,
    );
    await userEvent.click(locked);
    expect(screen.queryByRole('form', { name: 'Blanks ordered' })).toBeNull();
  });

  it('goes on without the approval for the versions of today alone', async () => {
    await enterOrder();
    await accepted();
    await userEvent.click(screen.getByRole('button', { name: 'Do it even so: Order the blanks' }));
    const why = form('Go on without the deposit and the approved proof');
    await userEvent.type(why.getByLabelText(/^Why you go on/), 'shown by hand');
    await userEvent.click(why.getByRole('button', { name: 'Note it' }));
    const [deposit, approval] = steps().slice(-2);
    expect(deposit).toEqual({ what: 'override', gate: 'deposit', reason: 'shown by hand' });
    const artworks = screenStore().getState().kinds.artwork.bodies;
    const named = approval?.what === 'override' ? (approval.versions ?? []) : [];
    expect(named.length).toBeGreaterThan(0);
    for (const { artworkId, version } of named) expect(artworks[artworkId]?.version).toBe(version);
  });

  it('goes on in spite of it only for a reason, which stays told', async () => {
    await enterOrder();
    approve(true);
    await accepted();
    await userEvent.click(screen.getByRole('button', { name: 'Do it even so: Order the blanks' }));
    const why = form('Go on without the deposit');
    await userEvent.type(why.getByLabelText(/^Why you go on/), 'ok');
    await userEvent.click(why.getByRole('button', { name: 'Note it' }));
    expect(steps().some(({ what }) => what === 'override')).toBe(false);
    await userEvent.type(why.getByLabelText(/^Why you go on/), ', known club');
    await userEvent.click(why.getByRole('button', { name: 'Note it' }));
    expect(steps().at(-1)).toEqual({ what: 'override', gate: 'deposit', reason: 'ok, known club' });
    expect(screen.getByText(`Gone on without the deposit on ${saidInFull(TEST_DAY)}.`)).toBeVisible();
    expect(screen.getByText(/Because: ok, known club/)).toBeVisible();
    expect(screen.getByRole('button', { name: 'Blanks ordered: Order the blanks' })).not.toHaveAttribute(
      'aria-disabled',
    );
  });

  it('notes each step at the bench with the version of each picture, one after the other', async () => {
    await enterOrder();
    approve(true);
    await accepted();
    pay(38066);
    for (const [button, what] of [
      ['Blanks ordered: Order the blanks', 'Blanks ordered'],
      ['They came in: Blanks are on the way', 'Blanks came in'],
      ['Printed: Print the sheets', 'Printed'],
      ['Pressed: Press', 'Pressed'],
      ['Checked: Check every piece', 'Checked'],
      ['Packed: Pack', 'Packed'],
    ] as const) {
      await userEvent.click(screen.getByRole('button', { name: button }));
      await userEvent.click(form(what).getByRole('button', { name: 'Note it' }));
    }
    const noted = steps().slice(-6);
    expect(noted.map(({ what }) => what)).toEqual([
      ...['blanksOrdered', 'goodsIn', 'printed', 'pressed', 'checked', 'packed'],
    ]);
    const versions = noted.map((step) => ('versions' in step ? step.versions?.length : 0));
    expect(versions).toEqual([2, 2, 2, 2, 2, 2]);
    // The balance is not here: the shirts stay until it is, or is passed.
    expect(screen.getByRole('button', { name: 'Delivered: Hand it over' })).toHaveAttribute(
      'aria-disabled',
      'true',
    );
  });

  it('locks printing and pressing while a picture that was made anew waits for its yes', async () => {
    await enterOrder();
    approve(true);
    await accepted();
    pay(38066);
    const versions = Object.entries(screenStore().getState().kinds.artwork.bodies).map(
      ([artworkId, { version }]) => ({ artworkId, version }),
    );
    tell({ what: 'blanksOrdered', note: '', versions });
    newPictures();
    expect(screen.getByText(/^You send the proof/)).toBeVisible();
    expect(screen.getByRole('button', { name: 'They came in: Blanks are on the way' })).toBeVisible();
    tell({ what: 'goodsIn', note: '', versions });
    const locked = (name: string) => screen.getByRole('button', { name });
    expect(locked('Printed: Print the sheets')).toHaveAttribute('aria-disabled', 'true');
    expect(rows().some((row) => row.includes('opens once the approved proof is here'))).toBe(true);
    tell({ what: 'printed', note: '', versions });
    expect(locked('Pressed: Press')).toHaveAttribute('aria-disabled', 'true');
    await userEvent.click(screen.getByRole('button', { name: 'Do it even so: Press' }));
    const why = form('Go on without the approved proof');
    await userEvent.type(why.getByLabelText(/^Why you go on/), 'said on the phone');
    await userEvent.click(why.getByRole('button', { name: 'Note it' }));
    expect(locked('Pressed: Press')).not.toHaveAttribute('aria-disabled');
    expect(screen.getByText(/^You press/)).toBeVisible();
  });

  it('asks for no second yes to what was pressed, when a picture is made anew for the next order', async () => {
    await enterOrder();
    approve(true);
    await accepted();
    pay(76131);
    await userEvent.click(screen.getByText('Something else happened'));
    await userEvent.click(screen.getByRole('button', { name: 'Pressed' }));
    await userEvent.click(form('Pressed').getByRole('button', { name: 'Note it' }));
    newPictures();
    await userEvent.click(screen.getByRole('button', { name: 'Printed' }));
    expect(form('Printed').getByText(/does not count until the approved proof/)).toBeVisible();
    await userEvent.click(screen.getByRole('button', { name: 'Checked: Check every piece' }));
    expect(form('Checked').queryByText(/does not count/)).toBeNull();
    await userEvent.click(form('Checked').getByRole('button', { name: 'Note it' }));
    await userEvent.click(screen.getByRole('button', { name: 'Packed: Pack' }));
    await userEvent.click(form('Packed').getByRole('button', { name: 'Note it' }));
    const deliver = screen.getByRole('button', { name: 'Delivered: Hand it over' });
    expect(deliver).not.toHaveAttribute('aria-disabled');
    await userEvent.click(deliver);
    await userEvent.click(form('Delivered').getByRole('button', { name: 'Note it' }));
    await userEvent.click(screen.getByRole('button', { name: 'Closed: Close the order' }));
    await userEvent.click(form('Closed').getByRole('button', { name: 'Note it' }));
    expect(screen.getByRole('button', { name: 'Open it again: It is over' })).toBeVisible();
  });

  it('tells how many blanks of each size are needed, and notes what they cost in the same step', async () => {
    await enterOrder();
    approve(true);
    await accepted();
    pay(38066);
    await userEvent.click(screen.getByRole('button', { name: 'Blanks ordered: Order the blanks' }));
    const blanks = form('Blanks ordered');
    // The example's job: 4 + 9 + 11 + 8 + 4 + 1.
    expect(blanks.getByText(/: 37 \(S 4, M 9, L 11, XL 8, 2XL 4, 3XL 1\)$/)).toBeVisible();
    expect(blanks.getByText(/^Good pieces only: how many spares they take is not known/)).toBeVisible();
    await userEvent.type(blanks.getByLabelText(/^What they cost/), '400');
    await userEvent.click(blanks.getByRole('button', { name: 'Note it' }));
    const expenses = () =>
      screenStore()
        .getState()
        .entries.expense.map(({ body }) => body);
    expect(expenses()).toMatchObject([
      { kind: 'blanks', amountMinor: 40000, currency: 'USD', day: TEST_DAY },
    ]);
    // 400 less the deposit of 380.66.
    expect(
      section('Money').getByText('Blanks and freight cost 19.34 USD more than the deposit.'),
    ).toBeVisible();
    await undo();
    expect(expenses()).toEqual([]);
    expect(steps().some(({ what }) => what === 'blanksOrdered')).toBe(false);
  });

  it('tells a step that was noted too early, and takes it back', async () => {
    await enterOrder();
    approve(true);
    await accepted();
    tell({ what: 'blanksOrdered', note: '' });
    expect(
      screen.getByText(
        new RegExp(
          `^“Blanks ordered”, noted for ${saidInFull(TEST_DAY)}, does not count yet: the deposit is not here`,
        ),
      ),
    ).toBeVisible();
    await userEvent.click(screen.getByRole('button', { name: 'Take back: Blanks ordered' }));
    expect(steps().some(({ what }) => what === 'blanksOrdered')).toBe(false);
  });

  it('goes by the day the accepted quote promised, until another day is wanted', async () => {
    await enterOrder();
    const [wantedOn, ready, other] = [dayIn(2), dayIn(28), dayIn(20)];
    change({ wantedOn });
    const atLength = (day: string) => wantedDayWords(day, TEST_DAY, exampleWorkshop(TEST_DAY).locale);
    const head = (words: string) => screen.getByText(new RegExp(`37 shirts, ${words}$`));
    const dates = { orderBlanksBy: null, approveBy: null, ready, leadDays: null };
    const paperId = await quote({ wantedOn, dates });
    expect(head(`wanted ${atLength(wantedOn)}`)).toBeVisible();
    tell({ what: 'accepted', paperId, alternativeId: null, by: 'Alex', how: 'message', proof: null });
    expect(head(`promised for ${atLength(ready)}`)).toBeVisible();
    change({ wantedOn: other });
    expect(head(`wanted ${atLength(other)}`)).toBeVisible();
  });

  it('says that the promised day is past, not the day it was wanted', async () => {
    await enterOrder();
    change({ wantedOn: dayIn(-9) });
    const past = { orderBlanksBy: null, approveBy: null, ready: dayIn(-2), leadDays: null };
    const paperId = await quote({ wantedOn: dayIn(-9), dates: past });
    expect(screen.getByText(`It was wanted on ${saidInFull(dayIn(-9))}, 9 days ago.`)).toBeVisible();
    tell({ what: 'accepted', paperId, alternativeId: null, by: 'Alex', how: 'message', proof: null });
    expect(screen.queryByText(/^It was wanted on/)).toBeNull();
    expect(screen.getByText(`It was promised for ${saidInFull(dayIn(-2))}, 2 days ago.`)).toBeVisible();
    expect(screen.getByText(/set it as the day it is wanted\.$/)).toBeVisible();
  });

  it('takes a step back by undo', async () => {
    await enterOrder();
    approve(true);
    await accepted();
    pay(38066);
    await userEvent.click(screen.getByRole('button', { name: 'Blanks ordered: Order the blanks' }));
    await userEvent.click(form('Blanks ordered').getByRole('button', { name: 'Note it' }));
    expect(screenStore().getState().undoLabel).toBe('Blanks ordered');
    await undo();
    expect(steps().at(-1)?.what).toBe('accepted');
  });
});

describe('the day a step is noted for', () => {
  const opened = async () => {
    await enterOrder();
    approve(true);
    await accepted();
    pay(38066);
    await userEvent.click(screen.getByRole('button', { name: 'Blanks ordered: Order the blanks' }));
    return form('Blanks ordered');
  };
  const setDay = async (day: string) => {
    const blanks = await opened();
    const field = blanks.getByLabelText('Day');
    await userEvent.clear(field);
    await userEvent.type(field, day);
    return blanks;
  };

  it('is set back where it happened earlier', async () => {
    const blanks = await setDay(dayIn(-2));
    expect(blanks.getByText('Noted later.')).toBeVisible();
    await userEvent.click(blanks.getByRole('button', { name: 'Note it' }));
    expect(events().at(-1)).toMatchObject({ day: dayIn(-2), step: { what: 'blanksOrdered' } });
  });

  it.each([
    [dayIn(2), /^That is in 2 days\./],
    [dayIn(-367), /^That is 367 days ago\. Is the year right\?/],
  ])('is asked about on %s, and taken when it stands', async (day, question) => {
    const blanks = await setDay(day);
    expect(blanks.getByText(question)).toBeVisible();
    await userEvent.click(blanks.getByRole('button', { name: 'Note it all the same' }));
    expect(events().at(-1)?.day).toBe(day);
  });
});

it('tells invoices that ask for the same, and leads to the credit note by which one is given back', async () => {
  await enterOrder();
  approve(true);
  await accepted();
  await invoice();
  expect(screen.queryByText(/ask for the same/)).toBeNull();
  await invoice();
  const [one, two] = ['001', '002'].map((count) => `${TEST_YEAR % 100}-${count}.`);
  const told = `Invoices ${one} \\(761\\.31 USD\\) and ${two} \\(761\\.31 USD\\) ask for the same`;
  expect(await screen.findByText(new RegExp(told))).toBeVisible();
  // What draws nothing scrolls nowhere.
  Element.prototype.scrollIntoView = () => undefined;
  await userEvent.click(screen.getByRole('button', { name: 'Credit notes' }));
  expect(await screen.findByRole('tab', { name: 'Credit note', selected: true })).toBeVisible();
  await creditWhole();
  await waitFor(() => expect(screen.queryByText(/ask for the same/)).toBeNull());
});

it('is closed as its row says, which asks nothing of what it took', async () => {
  await enterOrder();
  approve(true);
  await accepted();
  pay(76131);
  tell({ what: 'delivered', note: '' });
  expect(section('What it waits for').getByText('You close the order')).toBeVisible();
  await userEvent.click(screen.getByRole('button', { name: 'Closed: Close the order' }));
  expect(
    form('Closed').getByText(/^Nothing is left to do then\. What the order took is entered/),
  ).toBeVisible();
  expect(form('Closed').queryByText(/more came than is owed/)).toBeNull();
  await userEvent.click(form('Closed').getByRole('button', { name: 'Note it' }));
  expect(steps().at(-1)).toMatchObject({ what: 'closed' });
});

it('names what is to go back before it is closed, and begins a payment with it', async () => {
  await enterOrder();
  approve(true);
  await accepted();
  // 49.29 beyond 761.31.
  pay(81060);
  tell({ what: 'delivered', note: '' });
  await userEvent.click(screen.getByRole('button', { name: 'Closed: Close the order' }));
  expect(form('Closed').getByText(/^49\.29 USD more came than is owed\. Give it back to Alex/)).toBeVisible();
  await userEvent.click(form('Closed').getByRole('button', { name: 'Note it' }));
  await userEvent.click(section('Money').getByRole('button', { name: 'A payment' }));
  expect(form('Payment').getByLabelText('What happened')).toHaveDisplayValue('Given back');
  expect(form('Payment').getByLabelText(/^How much/)).toHaveValue('49.29');
});

describe('a day before the quote went out', () => {
  const setBefore = async (name: string) => {
    const day = form(name).getByLabelText('Day');
    await userEvent.clear(day);
    await userEvent.type(day, dayIn(-2));
    expect(form(name).getByText(question)).toBeVisible();
    expect(form(name).queryByRole('button', { name: 'Note it' })).toBeNull();
    await userEvent.click(form(name).getByRole('button', { name: 'Note it all the same' }));
  };
  const question = `That is before the quote went out, on ${saidInFull(dayIn(-1))}. Is the day right?`;

  it('is asked about where it is accepted, approved or paid, and taken when it stands', async () => {
    await enterOrder();
    await quote({ issuedOn: dayIn(-1) });
    await userEvent.click(screen.getByRole('button', { name: 'Accepted: Yes or no to the quote' }));
    await setBefore('Accepted');
    expect(events().at(-1)).toMatchObject({ day: dayIn(-2), step: { what: 'accepted' } });
    approve(false);
    await userEvent.click(screen.getByText('Something else happened'));
    await userEvent.click(screen.getByRole('button', { name: 'Approved' }));
    await setBefore('Approved');
    expect(events().at(-1)).toMatchObject({ day: dayIn(-2), step: { what: 'approved' } });
    await userEvent.click(screen.getByRole('button', { name: /^It came: Deposit/ }));
    await setBefore('Payment');
    expect(payments()).toMatchObject([{ day: dayIn(-2), amountMinor: 38066 }]);
  });
});

describe('whatever else happens', () => {
  const otherwise = async (name: string) => {
    await userEvent.click(screen.getByText('Something else happened'));
    await userEvent.click(screen.getByRole('button', { name }));
    return form(name);
  };

  it('lost wants to know why', async () => {
    await enterOrder();
    const lost = await otherwise('Lost');
    await userEvent.click(lost.getByRole('button', { name: 'Note it' }));
    expect(steps()).toEqual([]);
    await userEvent.selectOptions(lost.getByLabelText('Why'), 'The price');
    await userEvent.click(lost.getByRole('button', { name: 'Note it' }));
    expect(steps()).toEqual([{ what: 'lost', why: 'price', note: '' }]);
    expect(screen.getByText('Lost: the price')).toBeVisible();
    await userEvent.click(screen.getByRole('button', { name: 'Open it again: It is over' }));
    await userEvent.click(form('Opened again').getByRole('button', { name: 'Note it' }));
    expect(screen.getByText('You answer with a quote')).toBeVisible();
  });

  it('on hold waits for nobody until it goes on', async () => {
    await enterOrder();
    await userEvent.click((await otherwise('Put on hold')).getByRole('button', { name: 'Note it' }));
    expect(section('What it waits for').queryByText('Letter that the crest may be printed')).toBeNull();
    await userEvent.click(screen.getByRole('button', { name: 'Go on with it: It is on hold' }));
    await userEvent.click(form('Gone on with').getByRole('button', { name: 'Note it' }));
    expect(section('What it waits for').getByText('Letter that the crest may be printed')).toBeVisible();
  });

  it('prices a change of the order, which the total then holds with its tax', async () => {
    await enterOrder();
    await accepted();
    const changed = await otherwise('Change of the order');
    await userEvent.type(changed.getByLabelText('What they want'), 'Names on the sleeves');
    await userEvent.type(changed.getByLabelText(/^What it costs/), '20.005');
    expect(changed.getByLabelText(/^What it costs/)).toHaveAttribute('aria-invalid', 'true');
    await userEvent.click(changed.getByRole('button', { name: 'Note it' }));
    expect(steps().at(-1)?.what).toBe('accepted');
    await userEvent.clear(changed.getByLabelText(/^What it costs/));
    await userEvent.type(changed.getByLabelText(/^What it costs/), '20');
    await userEvent.click(changed.getByRole('button', { name: 'Note it' }));
    expect(steps().at(-1)).toEqual({
      ...{ what: 'change', wish: 'Names on the sleeves', amountMinor: 2000, currency: 'USD' },
    });
    // (711.50 + 20.00) × 1.07 = 782.705, half up.
    expect(section('Money').getAllByText('782.71')).toHaveLength(2);
  });

  it('counts rounds of proofs against those included', async () => {
    await enterOrder();
    tell({ what: 'revised', wish: 'bigger' });
    tell({ what: 'revised', wish: 'smaller' });
    const wish = await otherwise('Another proof wished');
    expect(wish.getByText(/^2 rounds of proofs are included, and 2 rounds were used/)).toBeVisible();
    await userEvent.type(wish.getByLabelText('What they want otherwise'), 'bigger again');
    await userEvent.click(wish.getByRole('button', { name: 'Note it' }));
    expect(screen.getByText('3 rounds of proofs, 2 included.')).toBeVisible();
  });

  it('links what is made again to its cause and who pays', async () => {
    await enterOrder();
    const again = await otherwise('Made again');
    await userEvent.type(again.getByLabelText('Pieces'), '2');
    await userEvent.selectOptions(again.getByLabelText('Why'), 'Fault of the blank');
    expect(again.getByLabelText('Who pays')).toHaveDisplayValue('The supplier');
    // Nothing was pressed yet, which is asked about.
    await userEvent.click(again.getByRole('button', { name: 'Note it all the same' }));
    expect(steps().at(-1)).toEqual({
      ...{ what: 'reprint', cause: 'blankFault', payer: 'supplier', pieces: 2, note: '' },
    });
  });

  it('tells a text that is too long and notes nothing until it fits', async () => {
    await enterOrder();
    const changed = await otherwise('Another proof wished');
    await userEvent.click(changed.getByLabelText('What they want otherwise'));
    await userEvent.paste('x'.repeat(600));
    expect(changed.getByText('100 letters too long: 500 fit here.')).toBeVisible();
    await userEvent.click(changed.getByRole('button', { name: 'Note it' }));
    expect(steps()).toEqual([]);
    expect(changed.getByLabelText('What they want otherwise')).toHaveValue('x'.repeat(600));
  });
});

it('a wanted day that is past is a stop that says what it causes', async () => {
  await enterOrder();
  change({ wantedOn: dayIn(-5) });
  expect(screen.getByText(`It was wanted on ${saidInFull(dayIn(-5))}, 5 days ago.`)).toBeVisible();
  expect(screen.getByText(/Agree on another one\./)).toBeVisible();
});
