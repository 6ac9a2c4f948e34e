// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import '@/tests/app/_screens/stage';
import { act, cleanup, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it, vi } from 'vitest';
import { EveningScreen } from '@/app/_evening/EveningScreen';
import { springFairTap, springFairTaps } from '@/lib/examples/springFairCount';
import { planSeries } from '@/lib/stall/car/plansOf';
import { foldStock } from '@/lib/stock/foldStock';
import { sha256OfValue } from '@/lib/stored/sha256';
import { addDays } from '@/shared/days';
import type { Tap } from '@/shared/schemas/stallEvents';
import type { StallPlan } from '@/shared/schemas/stallPapers';
import {
  bodyOf,
  damage,
  disk,
  enter,
  idsOf,
  leaveScreens,
  screenStore,
  undo,
} from '@/tests/app/_screens/screens';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { TEST_DAY } from '@/tests/tools/clock/testDay';
import { eventually } from '@/tests/tools/eventually';

vi.mock('next/navigation', () => ({
  usePathname: () => '/stall/spring-fair/evening',
  useRouter: () => ({ push: () => undefined }),
}));

const DAY = 'spring-fair';

async function fixPlan(plan: StallPlan = fairPlan): Promise<string> {
  await act(() => screenStore().open());
  const outcome = await act(() =>
    screenStore().actions.issue('Load the car', {
      kind: 'stallPlan',
      about: { kind: 'stallDay', id: DAY },
      series: `stallPlan ${DAY}`,
      body: (number) => ({ ...plan, number }),
    }),
  );
  if (outcome.state !== 'issued') throw new Error(`the plan was not issued: ${outcome.state}`);
  return outcome.paper.id;
}

/** A plan that another device fixed, past the app: it came with a copy. */
async function layPlanOf(device: string): Promise<void> {
  await act(() => screenStore().flush());
  leaveScreens();
  const counted = (count: number) => ({ id: `${device}-${count}`, version: 1, device, count, at: 1000 });
  const body = { ...fairPlan, number: { count: 1, letter: 'Z' } };
  await damage(
    {
      ...{ ...counted(1), kind: 'stallPlan', series: planSeries(DAY), number: body.number, body, file: null },
      ...{ about: { kind: 'stallDay', id: DAY }, sha256: sha256OfValue(body) },
    },
    'papers',
  );
  await damage({ ...counted(2), kind: 'issuing', body: { paperId: `${device}-1` } }, 'entries');
}

const tap = (planId: string, taps: readonly Tap[], currency = fairPlan.currency) =>
  act(async () => {
    const bodies = taps.map((one) => ({ ...springFairTap(planId, { minute: 0, tap: one }), currency }));
    screenStore().actions.note(
      'Taps',
      bodies.map((body) => ({ kind: 'stallTap', body })),
    );
    await screenStore().flush();
  });

/** The evening of the worked fair: 70 pieces tapped, nothing counted yet. */
async function enterEvening(more: readonly Tap[] = []): Promise<void> {
  const planId = await fixPlan();
  await tap(planId, [...springFairTaps().map((one) => one.tap), ...more]);
  await enter(<EveningScreen stallDayId={DAY} />);
}

/** The same, tapped on another phone at the hours of the fair. */
async function enterEveningByHours(more: ReturnType<typeof springFairTaps> = []): Promise<void> {
  const planId = await fixPlan();
  await act(() => screenStore().flush());
  leaveScreens();
  for (const [at, { minute, tap: one }] of [...springFairTaps(), ...more].entries()) {
    const device = 'otherdevice0';
    await damage(
      {
        ...{ id: `${device}-${at + 1}`, kind: 'stallTap', version: 1, device, count: at + 1 },
        at: new Date(`${TEST_DAY}T00:00`).setMinutes(minute),
        body: springFairTap(planId, { minute, tap: one }),
      },
      'entries',
    );
  }
  await enter(<EveningScreen stallDayId={DAY} />);
}

const slip = (heading: string) => within(screen.getByRole('region', { name: heading }));
const press = async (name: string | RegExp) => userEvent.click(await screen.findByRole('button', { name }));
const pick = (name: string) => userEvent.click(screen.getByRole('radio', { name }));
const closeButton = () => screen.findByRole('button', { name: /^Close/ });
const closes = () => screenStore().getState().papers.dayClose;

const typeCash = async (amount: string) => {
  const field = slip('Cash').getByLabelText(/^All that is in the tin/);
  await userEvent.clear(field);
  await userEvent.type(field, amount);
};

const typeFernM = async (pieces: string) => {
  await userEvent.click(screen.getByText('Every size, as counted'));
  const [fernM] = screen.getAllByLabelText('M');
  if (fernM === undefined) throw new Error('no box for Fern M');
  await userEvent.clear(fernM);
  await userEvent.type(fernM, pieces);
};

/** What lies at home, sizes together. */
const atHome = (): number => {
  const { stockMove, stockTransfer, stockCount } = screenStore().getState().entries;
  return foldStock([...stockMove, ...stockTransfer, ...stockCount])
    .filter(({ item, place }) => item.kind === 'finished' && place.kind === 'home')
    .reduce((sum, { quantity }) => sum + quantity, 0);
};

const closeOnce = async (many: number) => {
  await userEvent.click(await closeButton());
  await eventually(() => expect(closes()).toHaveLength(many));
};

describe('goods of which more were sold than brought', () => {
  it('are told against what should be left, below nothing', async () => {
    const planId = await fixPlan();
    // Of Fern 3XL one was brought, and two went: 132 less 2 should be left, and 131 are.
    const sale: Tap = {
      ...{ what: 'sale', goods: { jobId: 'fair-shirts', lineId: 'fern', size: '3XL' } },
      ...{ minor: 3100, pay: 'card' },
    };
    await tap(planId, [sale, sale]);
    await enter(<EveningScreen stallDayId={DAY} />);
    expect(screen.getByText(/^leaves −?[\d,]+ so far, /)).toBeVisible();
    await press('All is as it should be');
    expect(slip('Stock').getByText('131 counted, 130 should be:')).toBeVisible();
    expect(slip('Stock').getByText(/1 Fern 3XL is too many$/)).toBeVisible();
  });
});

describe('a reader that took more than all goods', () => {
  it('is asked about, and may be said to be right', async () => {
    const planId = await fixPlan();
    const goods = { jobId: 'fair-shirts', lineId: 'otter', size: 'L' };
    await tap(planId, [{ what: 'sale', goods, minor: 2800, pay: 'card' }, { what: 'next' }]);
    await enter(<EveningScreen stallDayId={DAY} />);
    await userEvent.click(slip('Card').getByText('The reader says otherwise'));
    await userEvent.type(slip('Card').getByLabelText(/^The reader’s total/), '50{Enter}');
    expect(slip('Card').getByText(/^The reader took 22.00 more than all goods come to/)).toBeVisible();
    expect(screen.getByText(/^To settle: .*22.00 USD more on the reader than was sold/)).toBeVisible();
    await press('It is right');
    expect(screen.queryByText(/more on the reader/)).toBeNull();
  });
});

describe('the evening of a day whose prices are without tax', () => {
  it('says that tax was added, and how', async () => {
    const planId = await fixPlan({ ...fairPlan, taxMode: 'added', tax: 0.0725 });
    const goods = { jobId: 'fair-shirts', lineId: 'otter', size: 'L' };
    await tap(planId, [{ what: 'sale', goods, minor: 2800, pay: 'cash' }, { what: 'next' }]);
    await enter(<EveningScreen stallDayId={DAY} />);
    expect(screen.getByText('30.03', { selector: 'strong' }).parentElement).toHaveTextContent(
      'USD taken, with the tax added',
    );
    expect(
      slip('Tax').getByText(/^7.25 % added to 28.00, on each ticket as it was paid; 30.03 with it\./),
    ).toBeVisible();
  });
});

describe('cash in a currency of coarse coins', () => {
  const goods = { jobId: 'fair-shirts', lineId: 'otter', size: 'L' };
  const sale: Tap = { what: 'sale', goods, minor: 24_950, pay: 'cash' };
  const enterInKroner = async (taps: readonly Tap[]) => {
    const planId = await fixPlan({ ...fairPlan, currency: 'NOK', float: [] });
    await tap(planId, taps, 'NOK');
    await enter(<EveningScreen stallDayId={DAY} />);
  };

  it('is closed as it was paid, the ticket that is still open too, and says so', async () => {
    // 249.50 is paid as 250, twice.
    await enterInKroner([sale, { what: 'next' }, sale]);
    expect(
      slip('Cash').getByText('Cash is paid in coins, on the ticket still open too: 1.00 more in all.'),
    ).toBeVisible();
    await typeCash('500');
    await press('All is as it should be');
    await closeOnce(1);
    expect(closes()[0]?.body.money).toMatchObject({
      ...{ gross: 49_900, cash: 50_000, cashRounding: 100, expectedCash: 50_000, countedCash: 50_000 },
    });
  });

  it('says that the tin may differ where nobody tapped the next customer', async () => {
    // 748.50 at once is 749; three customers paid 750, half a krone more each than is due.
    await enterInKroner([sale, sale, sale]);
    expect(
      slip('Cash').getByText(
        'Cash is paid in coins: 0.50 more in all. On one phone nobody tapped Next customer, so its cash is rounded at once: the tin may differ by up to 0.50 a customer.',
      ),
    ).toBeVisible();
  });

  it('says nothing of coins where all could be paid as it was due', async () => {
    await enterInKroner([
      { ...sale, minor: 25_000 },
      { ...sale, minor: 25_000 },
    ]);
    expect(slip('Cash').getAllByText('500.00')).not.toHaveLength(0);
    expect(screen.queryByText(/in coins|rounded/)).toBeNull();
  });
});

describe('taps that come after the close', () => {
  it('are told, with the way to have them counted', async () => {
    const planId = await fixPlan();
    const goods = { jobId: 'fair-shirts', lineId: 'otter', size: 'L' };
    const sale: Tap = { what: 'sale', goods, minor: 2800, pay: 'card' };
    await tap(planId, [sale, { what: 'next' }]);
    await enter(<EveningScreen stallDayId={DAY} />);
    await typeCash('120');
    await press('All is as it should be');
    await closeOnce(1);
    expect(screen.queryByText(/after the close/)).toBeNull();
    await tap(planId, [sale, { what: 'next' }, sale]);
    expect(screen.getByText(/^3 taps came after the close, so its sums/)).toBeVisible();
  });

  it('are told where as many were taken back, and closing again is no quiet button', async () => {
    const planId = await fixPlan();
    const sale = (lineId: string, minor: number): Tap => ({
      ...{ what: 'sale', goods: { jobId: 'fair-shirts', lineId, size: 'L' }, minor, pay: 'card' },
    });
    await tap(planId, [sale('otter', 2800), { what: 'next' }]);
    await enter(<EveningScreen stallDayId={DAY} />);
    await typeCash('120');
    await press('All is as it should be');
    await closeOnce(1);
    const again = await screen.findByRole('button', { name: 'Close it again' });
    expect(again.className).toMatch(/quiet/);
    const [{ id: entryId } = { id: '' }] = screenStore().getState().entries.stallTap;
    await act(async () => {
      screenStore().actions.note('Back', [{ kind: 'takeBack', body: { entryId } }]);
      await screenStore().flush();
    });
    await tap(planId, [sale('fern', 3100)]);
    expect(
      screen.getByText(/^As many taps came as were taken back after the close, so its sums/),
    ).toBeVisible();
    expect(again.className).toMatch(/strong/);
  });
});

describe('a number with digits too many', () => {
  it('is told, and the sums are without it until it is mended', async () => {
    await enterEvening();
    await typeCash('999999999');
    await userEvent.tab();
    expect(screen.getByText(/^What you typed comes to hundreds of millions/)).toBeVisible();
    expect(screen.getByText(/^To settle: count the tin/)).toBeVisible();
    await typeCash('532');
    await userEvent.tab();
    expect(screen.queryByText(/hundreds of millions/)).toBeNull();
  });
});

describe('a close that cannot be a paper', () => {
  it('says so and can be tried again', async () => {
    // Ten times 10,000 of Fern M were put out beside the 8, and a close holds 100,000 of a size.
    const goods = { jobId: 'fair-shirts', lineId: 'fern', size: 'M' };
    await enterEvening(Array.from({ length: 10 }, (): Tap => ({ what: 'refill', goods, pieces: 10_000 })));
    await typeCash('532');
    await press('All is as it should be');
    await userEvent.click(await closeButton());
    expect(
      await screen.findByText(/^The day is not closed. Something in it is more than a paper can hold/),
    ).toBeVisible();
    expect(await closeButton()).toHaveAccessibleDescription(/^The day is not closed/);
    expect(closes()).toHaveLength(0);
  });
});

describe('the evening of the worked fair', () => {
  it('tells each slip by its answer, and asks only for what is open', async () => {
    await enterEvening();
    expect(screen.getByText('1,723.00')).toBeVisible();
    expect(slip('Cash').getByText('532.00', { selector: 'strong' })).toBeVisible();
    expect(slip('Card').getByText('1,273.01')).toBeVisible();
    expect(slip('Card').getByText('39 tickets')).toBeVisible();
    expect(slip('Stock').getByText('62', { selector: 'strong' })).toBeVisible();
    expect(slip('Tax').getByText('112.72')).toBeVisible();
    expect(slip('Tax').getByText(/taken once on the day; 1,610\.28 without it/)).toBeVisible();
    expect(await closeButton()).toHaveAttribute('aria-disabled', 'true');
    expect(screen.getByText('To settle: count the tin and count 27 sizes.')).toBeVisible();
  });

  it('is closed once the short tin has its reason and the goods are found, and brings 62 pieces home', async () => {
    await enterEvening();
    await typeCash('530');
    expect(slip('Cash').getByText('2.00 short:')).toBeVisible();
    expect(screen.getByText(/the tin 2\.00 USD short/)).toBeVisible();
    await userEvent.click(await closeButton());
    expect(closes()).toEqual([]);
    await pick('Wrong change');
    await press('All is as it should be');
    // 483.95 of the 543.25 of a dry day.
    expect(slip('Result against plan').getByText('484')).toBeVisible();
    await pick('Go again');
    await closeOnce(1);
    expect(closes()[0]?.body).toMatchObject({
      ...{ decision: 'again', soldFrom: 'taps', weatherId: 'dry' },
      money: { gross: 172_300, countedCash: 53_000, difference: -200, reason: 'wrongChange' },
    });
    expect(atHome()).toBe(62);
    const again = await screen.findByRole('button', { name: 'Close it again' });
    // Nothing is asked any more, and nothing changed: what closes is quiet and says when it was closed.
    expect(again.className).toMatch(/quiet/);
    expect(screen.getByText(/^Closed .+, \d?\d:\d\d [AP]M, number 1[A-Z]?\.$/)).toBeVisible();
    expect(screen.queryByText('Where did it go?')).toBeNull();
    expect(screen.getByText('Where it went')).toBeVisible();
    await typeFernM('2');
    expect(again.className).toMatch(/strong/);
  });

  it('tells somebody who left no words once, and what others want with what it is', async () => {
    await enterEvening([
      { what: 'lead', words: 'Ten shirts for the choir' },
      { what: 'lead', words: '' },
    ]);
    expect(await screen.findByText('Somebody wants something made')).toBeVisible();
    expect(screen.getAllByText('wants something made')).toHaveLength(1);
  });

  it('is corrected by a second close, which books the stock once, and undo brings the first back', async () => {
    await enterEvening();
    await typeCash('532');
    await press('All is as it should be');
    await closeOnce(1);
    await screen.findByRole('button', { name: 'Close it again' });
    await typeFernM('2');
    expect(screen.getByText('Fern M: 3 should be, 2 counted.', { selector: 'p' })).toBeVisible();
    await pick('Given');
    await closeOnce(2);
    expect(closes()[1]?.number.count).toBe(2);
    expect(atHome()).toBe(61);
    await undo();
    expect(atHome()).toBe(62);
    expect(closes().map(({ withdrawn }) => withdrawn)).toEqual([false, true]);
  });

  it('asks again where the tin went when another amount is missing than the reason was said of', async () => {
    const planId = await fixPlan();
    await tap(planId, [...springFairTaps().map((one) => one.tap)]);
    await enter(<EveningScreen stallDayId={DAY} />);
    await typeCash('530');
    await pick('Wrong change');
    await press('All is as it should be');
    await closeOnce(1);
    await screen.findByRole('button', { name: 'Close it again' });
    // A piece of 28.00 that a second phone sold for cash comes late: 30.00 are missing now.
    const goods = { jobId: 'fair-shirts', lineId: 'fern', size: 'M' };
    await tap(planId, [{ what: 'sale', goods, minor: 2800, pay: 'cash' }]);
    expect(slip('Cash').getByText('30.00 short:')).toBeVisible();
    expect(screen.getByText(/^To settle: the tin 30\.00 USD short/)).toBeVisible();
    expect(screen.getByRole('radio', { name: 'Wrong change' })).not.toBeChecked();
    await pick('Wrong change');
    expect(screen.queryByText(/the tin 30\.00 USD short/)).toBeNull();
  });

  it('asks again where a size went when another number is missing than the reason was said of', async () => {
    const planId = await fixPlan();
    await tap(planId, [...springFairTaps().map((one) => one.tap)]);
    await enter(<EveningScreen stallDayId={DAY} />);
    await typeCash('532');
    await press('All is as it should be');
    await typeFernM('2');
    await pick('Given');
    await closeOnce(1);
    await screen.findByRole('button', { name: 'Close it again' });
    // A second phone comes late: two Fern M were put out there, so 5 should be left and 2 are.
    const goods = { jobId: 'fair-shirts', lineId: 'fern', size: 'M' };
    await tap(planId, [{ what: 'refill', goods, pieces: 2 }]);
    expect(screen.getByText('Fern M: 5 should be, 2 counted.', { selector: 'p' })).toBeVisible();
    expect(screen.getByRole('radio', { name: 'Given' })).not.toBeChecked();
    await pick('Not known');
    await closeOnce(2);
    const fernM = closes()[1]?.body.goods.find(({ lineId, size }) => lineId === 'fern' && size === 'M');
    expect(fernM).toMatchObject({ given: 0, reason: 'notKnown', reasonFor: -3 });
  });

  it('keeps what is typed when the browser is closed, half-typed figures too', async () => {
    await enterEvening();
    await typeCash('530,5,');
    await userEvent.type(screen.getByLabelText('Note for next time'), 'Nearer the gate.');
    await press('All is as it should be');
    cleanup();
    await act(() => screenStore().flush());
    leaveScreens();
    sessionStorage.clear();
    await enter(<EveningScreen stallDayId={DAY} />);
    expect(await screen.findByLabelText('Note for next time')).toHaveValue('Nearer the gate.');
    expect(slip('Cash').getByLabelText(/^All that is in the tin/)).toHaveValue('530,5,');
    expect(slip('Stock').getByText('62 left')).toBeVisible();
  });

  it('counts the tin by notes and coins', async () => {
    await enterEvening();
    await userEvent.click(slip('Cash').getByText('Notes and coins'));
    await userEvent.type(await slip('Cash').findByLabelText('20.00'), '26');
    await userEvent.type(slip('Cash').getByLabelText('10.00'), '1');
    // 520 + 10.
    expect(slip('Cash').getByText('2.00 short:')).toBeVisible();
    expect(slip('Cash').queryByLabelText(/^All that is in the tin/)).toBeNull();
  });

  it('may be closed though nobody counted, where that is said', async () => {
    await enterEvening();
    await press('It is not counted');
    await press('Not counted');
    await closeOnce(1);
    expect(closes()[0]?.body.money).toMatchObject({
      countedCash: null,
      difference: null,
      reason: 'notKnown',
    });
    // Nothing was counted and nothing was ever noted of these goods: nothing is invented.
    expect(atHome()).toBe(0);
  });

  it('notes what the payout was, as a further close', async () => {
    await enterEvening();
    await typeCash('532');
    await press('All is as it should be');
    await closeOnce(1);
    const before = screenStore().getState().entries.stockMove;
    await press('The payout came');
    await closeOnce(2);
    expect(screenStore().getState().entries.stockMove).toEqual(before);
    expect(closes()[1]?.body.money.payout?.minor).toBe(127_301);
    expect(atHome()).toBe(62);
  });

  it('takes an emptied payout for one that is not known, and not for none', async () => {
    await enterEvening();
    await typeCash('532');
    await press('All is as it should be');
    await press('The payout came');
    const came = slip('Card').getByLabelText(/^What came/);
    await userEvent.clear(came);
    // 1,311.00 on 39 tickets less 37.99 of fees.
    expect(slip('Card').getByText(/should reach the bank/)).toHaveTextContent('1,273.01');
    // Another amount can be typed where the first stood: 3.01 less than should come.
    await userEvent.type(came, '1270');
    expect(slip('Card').getByText(/3\.01/)).toBeVisible();
    await userEvent.clear(came);
    await closeOnce(1);
    expect(closes()[0]?.body.money.payout).toBeNull();
  });

  it('says at once when the close is not kept, and keeps what was said', async () => {
    await enterEvening();
    await typeCash('532');
    await press('All is as it should be');
    disk.isFull = true;
    await userEvent.click(await closeButton());
    expect(await screen.findByText(/^The day is not closed\./)).toBeVisible();
    expect(closes()).toEqual([]);
    disk.isFull = false;
    await closeOnce(1);
    expect(atHome()).toBe(62);
  });
});

describe('where the evening leads', () => {
  it('to its stall day, and once it is closed to the next one like it', async () => {
    await enterEvening();
    expect(screen.getByRole('link', { name: 'To the stall day' })).toHaveAttribute('href', `/stall/${DAY}`);
    expect(screen.queryByRole('button', { name: 'Plan the next one like it' })).toBeNull();
    await typeCash('532');
    await press('All is as it should be');
    await closeOnce(1);
    await userEvent.click(await screen.findByRole('button', { name: 'Plan the next one like it' }));
    const next = idsOf('stallDay').filter((id) => id !== DAY);
    expect(next.map((id) => bodyOf('stallDay', id))).toMatchObject([{ days: [], stage: 'idea' }]);
  });
});

describe('a count that finds other pieces than were tapped', () => {
  async function countFernM(pieces: string): Promise<void> {
    await enterEvening();
    await press('All is as it should be');
    await userEvent.click(screen.getByText('Every size, as counted'));
    const [fernM] = screen.getAllByLabelText('M');
    if (fernM === undefined) throw new Error('no box for Fern M');
    await userEvent.clear(fernM);
    await userEvent.type(fernM, pieces);
  }

  it('says into what a sale that was not tapped is booked, and asks how it was paid', async () => {
    await countFernM('2');
    await pick('Sold, not tapped');
    expect(
      screen.getByText('28.00 USD is added to the takings: so much more should be in the tin.'),
    ).toBeVisible();
    // 13 + 13 + 10 + 10 shirts and 16 mugs less this one.
    expect(slip('Stock').getByText('61 left')).toBeVisible();
    expect(slip('Stock').getByText(/, 1 Fern M sold, not tapped$/)).toBeVisible();
    expect(slip('Cash').getByText('560.00', { selector: 'strong' })).toBeVisible();
    await pick('By card');
    expect(screen.getByText(/so much more should be on the reader\.$/)).toBeVisible();
    expect(slip('Cash').getByText('532.00', { selector: 'strong' })).toBeVisible();
  });

  it('names what was spent from the tin', async () => {
    const spent = (minor: number, words: string): Tap => ({
      ...{ what: 'tin', cause: 'spent', minor, words },
    });
    await enterEvening([spent(650, 'tape'), spent(300, ''), spent(100, 'tape')]);
    const rows = slip('Cash')
      .getAllByText(/a cost of the day$/)
      .map((name) => name.parentElement?.textContent);
    expect(rows).toEqual(['spent on tape, a cost of the day−7.50', 'spent, a cost of the day−3.00']);
  });

  it('tells more pieces than were brought, and asks where they are from', async () => {
    await countFernM('9');
    const told =
      'Fern M: 3 should be of 8 brought, 9 counted. Look whether the count is right, else say where 6 more are from: until then the result gains nothing by them.';
    expect(screen.getByText(told, { selector: 'p' })).toBeVisible();
    // As it would be without them; no weather and no tin is told yet.
    const profit = slip('Result against plan').getByText(/is left|for the|where the plan/).textContent;
    await pick('Put out later, not tapped');
    expect(screen.getByText('Fern M: 3 should be of 8 brought, 9 counted.', { selector: 'p' })).toBeVisible();
    // 486 without the 2.00 of the tin; six more at 6.543 lose 40 %, 15.70.
    expect(profit).toMatch(/^486/);
    expect(slip('Result against plan').getByText(/is left|for the|where the plan/).textContent).toMatch(
      /^470/,
    );
  });
});

describe('hours of the day', () => {
  it('are written as those of its plan are', async () => {
    await enterEvening();
    const field = screen.getByLabelText('Hours the day took');
    expect(field).not.toHaveAccessibleDescription(/planned/);
    await userEvent.clear(field);
    await userEvent.type(field, '10');
    await userEvent.tab();
    // 11.5 hours of the worked fair.
    expect(field).toHaveAccessibleDescription(/11 h 30 min were planned\./);
  });
});

describe('what the fair teaches', () => {
  it('goes into the note for next time', async () => {
    await enterEvening();
    await press('Note it: youth sizes, asked for 6 times');
    expect(screen.getByLabelText('Note for next time')).toHaveValue('youth sizes, asked for 6 times.');
    await press('Leave it: black shirt, asked for 4 times');
    expect(screen.queryByText(/black shirt/)).toBeNull();
  });

  it('says how lost sales are reckoned, and closes without those that the maker leaves out', async () => {
    await enterEveningByHours();
    // Opened at 10:00; the last of seven went at 14:10, and 6 ÷ 250 a minute go on for 170.
    expect(
      screen.getByText(
        'Gone at 2:10 PM: 6 before the last took 250 min, at that pace about 4 more by the end. Asked for then: 3 times.',
      ),
    ).toBeVisible();
    await press('Do not learn from it: Otter L, 9 next time for 7');
    expect(screen.getByText(/That is left out of what the next plans learn\.$/)).toBeVisible();
    await typeCash('532');
    await press('All is as it should be');
    await closeOnce(1);
    const otterL = closes()[0]?.body.goods.find(({ lineId, size }) => lineId === 'otter' && size === 'L');
    expect(otterL).toMatchObject({ lost: 0, isLostLeftOut: true, asked: 3 });
    expect(await screen.findByRole('button', { name: /^Learn from it after all: Otter L/ })).toBeVisible();
  });

  it('learns of goods put out again until they were gone, and of two that went at once only where it is told to', async () => {
    const { tap: one } = springFairTaps().find(
      ({ tap }) => tap.what === 'sale' && tap.goods.lineId === 'otter' && tap.goods.size === 'L',
    ) ?? { tap: null };
    if (one?.what !== 'sale') throw new Error('no Otter L was sold');
    await enterEveningByHours([
      { minute: 900, tap: { what: 'refill', goods: one.goods, pieces: 2 } },
      { minute: 904, tap: one },
      { minute: 908, tap: one },
    ]);
    // Gone from 14:10 to 15:00: 6 ÷ 250 × 50. Put out at 15:00 and gone at 15:08: 1 ÷ 8 × 112.
    expect(
      screen.getByText(
        'Gone at 2:10 PM until more was put out: 6 before the last took 250 min, at that pace about 1 more. Gone at 3:08 PM: 1 before the last took 8 min, at that pace about 14 more by the end. Asked for then: 3 times. Of fewer than 3 pieces or 15 min the next plans learn nothing.',
      ),
    ).toBeVisible();
    // Wanted are 9 + 3 + 1.2, later 14 more; 4.05 were expected, and halfway lies 8.6, then 15.6.
    await press('Learn from it after all: Otter L, 10 next time for 9');
    expect(screen.queryByText(/the next plans learn nothing/)).toBeNull();
    await press('Do not learn from it: Otter L, 16 next time for 9');
    expect(screen.getByText(/That is left out of what the next plans learn\.$/)).toBeVisible();
  });

  it('makes an enquiry of somebody who wants something made, once', async () => {
    await enterEvening([{ what: 'lead', words: 'Ten shirts for the choir' }]);
    await press('Make an enquiry: Ten shirts for the choir');
    const orders = screenStore().getState().kinds.order.documents;
    expect(orders.filter(({ body }) => body.asked === 'Ten shirts for the choir')).toHaveLength(1);
    expect(screen.getByRole('link', { name: 'Open the enquiry: Ten shirts for the choir' })).toBeVisible();
  });

  it('knows the enquiry in every tab and on every device, for its id is that of the tap', async () => {
    await enterEvening([{ what: 'lead', words: 'Ten shirts for the choir' }]);
    await press('Make an enquiry: Ten shirts for the choir');
    const { entries, kinds } = screenStore().getState();
    const lead = entries.stallTap.find(({ body }) => body.tap.what === 'lead');
    expect(kinds.order.bodies[`lead-${lead?.id}`]?.asked).toBe('Ten shirts for the choir');
    cleanup();
    await act(() => screenStore().flush());
    leaveScreens();
    sessionStorage.clear();
    await enter(<EveningScreen stallDayId={DAY} />);
    expect(
      await screen.findByRole('link', { name: 'Open the enquiry: Ten shirts for the choir' }),
    ).toHaveAttribute('href', `/orders/lead-${lead?.id}`);
  });

  it('brings an enquiry back that was undone, numbered once', async () => {
    await enterEvening([{ what: 'lead', words: 'Ten shirts for the choir' }]);
    await press('Make an enquiry: Ten shirts for the choir');
    await act(() => screenStore().flush());
    await undo();
    await press('Bring the enquiry back: Ten shirts for the choir');
    await act(() => screenStore().flush());
    expect(screen.getByRole('link', { name: 'Open the enquiry: Ten shirts for the choir' })).toBeVisible();
    const { entries, kinds } = screenStore().getState();
    const [id] = Object.entries(kinds.order.bodies).find(([, { asked }]) => asked.includes('choir')) ?? [];
    expect(
      entries.orderEvent.filter(({ body }) => body.orderId === id).map(({ body }) => body.step.what),
    ).toEqual(['enquired']);
  });
});

describe('seconds', () => {
  const goods = { jobId: 'fair-shirts', lineId: 'fern', size: 'M' };

  it('that were kept come home in their own grade, and one that was sold does not', async () => {
    const planId = await fixPlan({ ...fairPlan, secondsShare: 0.5 });
    await tap(planId, [
      { what: 'damaged', goods, isSecond: true },
      { what: 'damaged', goods, isSecond: true },
      { what: 'sale', goods, minor: 1400, isSecond: true, pay: 'cash' },
    ]);
    await enter(<EveningScreen stallDayId={DAY} />);
    expect(
      screen.getByText(
        '1 second goes home in the grade of seconds; the price of the day was 50 % of a first.',
      ),
    ).toBeVisible();
    // 120 of float and 14.
    await typeCash('134');
    await press('All is as it should be');
    await closeOnce(1);
    const fernM = closes()[0]?.body.goods.find(({ lineId, size }) => lineId === 'fern' && size === 'M');
    expect(fernM).toMatchObject({ brought: 8, sold: 1, damaged: 1, seconds: 1, counted: 6, revenue: 1400 });
    const piles = foldStock(screenStore().getState().entries.stockMove).filter(
      ({ item, place }) =>
        item.kind === 'finished' && item.lineId === 'fern' && item.size === 'M' && place.kind === 'home',
    );
    expect(Object.fromEntries(piles.map(({ grade, quantity }) => [grade, quantity]))).toEqual({
      first: 6,
      second: 1,
    });
  });
});

describe('two plans of one fair', () => {
  it('are told where some taps were counted by the earlier one', async () => {
    const first = await fixPlan();
    await tap(first, [{ what: 'visitors', count: 10 }]);
    await tap(await fixPlan(), [{ what: 'visitors', count: 10 }]);
    await enter(<EveningScreen stallDayId={DAY} />);
    expect(screen.getByText(/^One tap was counted by an earlier plan/)).toBeVisible();
    expect(screen.queryByText(/^Two devices fixed a plan/)).toBeNull();
  });

  it('are told where two devices fixed them', async () => {
    await fixPlan();
    await layPlanOf('otherdevice0');
    await enter(<EveningScreen stallDayId={DAY} />);
    expect(
      screen.getByText(/^Two devices fixed a plan for this day\. The evening goes by the newest/),
    ).toBeVisible();
  });
});

describe('two days of one fair', () => {
  const [dry, ...others] = fairPlan.outcomes;
  if (dry === undefined) throw new Error('the plan has no outcomes');
  const second = { day: addDays(TEST_DAY, 1), fromMinute: 600, toMinute: 960, weight: 1 };
  const twoDays = {
    ...fairPlan,
    days: [...fairPlan.days, second],
    outcomes: [{ ...dry, weatherIds: ['dry', 'dry'] }, ...others],
  };
  const startOf = () => slip('Result against plan').getByRole('row', { name: /^the plan/ }).textContent;

  it('are held against the plan of their weathers, and against its mean where it has no such days', async () => {
    const planId = await fixPlan(twoDays);
    await tap(planId, [...springFairTaps().map((one) => one.tap)]);
    await enter(<EveningScreen stallDayId={DAY} />);
    await press('All is as it should be');
    const [first, later] = screen.getAllByLabelText(/^The weather on .* was$/);
    if (first === undefined || later === undefined) throw new Error('two days have two weathers');
    await userEvent.selectOptions(first, 'dry');
    await userEvent.selectOptions(later, 'dry');
    expect(startOf()).toContain('the plan, dry');
    await userEvent.selectOptions(later, 'wet');
    expect(startOf()).toContain('the plan, all weathers337.25');
  });
});

describe('a day without taps', () => {
  it('is told by what did not come home, and takes no size for sold that nobody counted', async () => {
    const goods = fairPlan.goods.filter(
      ({ lineId, size }) => lineId === 'fern' && (size === 'M' || size === 'L'),
    );
    await fixPlan({ ...fairPlan, goods });
    await enter(<EveningScreen stallDayId={DAY} />);
    expect(slip('Stock').getByText('Count 2 sizes')).toBeVisible();
    expect(slip('Result against plan').getByText('Not known yet')).toBeVisible();
    await userEvent.type(screen.getByLabelText('M'), '3');
    await userEvent.type(screen.getByLabelText('L'), '4');
    // 5 of 8 and 5 of 9 went: 280 at the plan’s prices. 120 of float, 100 in cash, 168 by card.
    await typeCash('220');
    await userEvent.type(slip('Card').getByLabelText(/^The reader’s total/), '168');
    expect(screen.getByText('268.00', { selector: 'strong' })).toBeVisible();
    await closeOnce(1);
    expect(closes()[0]?.body).toMatchObject({
      ...{ soldFrom: 'count', reductions: 1200 },
      money: { gross: 26_800, cash: 10_000, card: 16_800, difference: null },
    });
  });
});

it('shows the sales of a plan that was taken back elsewhere, and says so', async () => {
  const planId = await fixPlan();
  const issued = screenStore()
    .getState()
    .entries.issuing.find(({ body }) => body.paperId === planId);
  act(() => {
    screenStore().actions.note('Back', [{ kind: 'takeBack', body: { entryId: issued?.id ?? '' } }]);
  });
  await tap(
    planId,
    springFairTaps().map((one) => one.tap),
  );
  await enter(<EveningScreen stallDayId={DAY} />);
  expect(screenStore().getState().papers.stallPlan[0]?.withdrawn).toBe(true);
  expect(screen.getByText(/^This plan was taken back, but sales were counted by it/)).toBeVisible();
  // 132 were brought and 70 tapped.
  expect(screen.getByText('62').parentElement).toHaveTextContent('62 should be left');
});

it('says that no plan was fixed, and leads to it', async () => {
  await enter(<EveningScreen stallDayId={DAY} />);
  expect(screen.getByRole('heading', { level: 1, name: 'No plan was fixed' })).toBeVisible();
  expect(screen.getByRole('link', { name: 'To the plan of the day' })).toHaveAttribute(
    'href',
    `/stall/${DAY}`,
  );
});
