// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import './countStage';
import { act, cleanup, fireEvent, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it, vi } from 'vitest';
import { addDays } from '@/shared/days';
import { closeFair } from '@/tests/app/_screens/closeFair';
import { disk, leaveScreens, screenStore } from '@/tests/app/_screens/screens';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { TEST_DAY } from '@/tests/tools/clock/testDay';
import { eventually } from '@/tests/tools/eventually';
import { enterCount, fixPlan, key, tapped, tile } from './inCount';

const click = (element: HTMLElement) => userEvent.click(element);
const kept = () => eventually(() => expect(screen.getByText(/^no signal needed · kept/)).toBeVisible());
const isInverted = (element: HTMLElement) => element.className.includes('last');

describe('the sales count', () => {
  it('leads to the plan where none is fixed', async () => {
    await enterCount();
    expect(screen.getByRole('heading', { name: 'No plan is fixed yet' })).toBeVisible();
    expect(screen.getByRole('link', { name: 'To the plan' })).toHaveAttribute('href', '/stall/spring-fair');
  });

  it('of a closed day says so before anything is tapped, and still sells', async () => {
    await closeFair('dry');
    await enterCount();
    const told = screen.getByText(/^This day is closed\./);
    expect(told).toHaveTextContent(
      'This day is closed. A sale tapped now still counts, but comes after the close: the day then has to be closed again.',
    );
    expect(within(told).getByRole('link', { name: 'See the evening' })).toHaveAttribute(
      'href',
      '/stall/spring-fair/evening',
    );
    await click(tile(/^Star Map L, 28, .* left/));
    expect(tapped().at(-1)).toMatchObject({ what: 'sale', goods: { lineId: 'star-map', size: 'L' } });
    expect(told).toHaveTextContent(
      /^This day is closed\. One tap came after the close, so its sums and its stock are not those of the day\. Close it again\./,
    );
    await kept();
  });

  it('of an open day says nothing of a close', async () => {
    await fixPlan();
    await enterCount();
    expect(screen.queryByText(/This day is closed/)).toBeNull();
  });

  it('sells one with one tap: the tile is marked and has one less, the head adds up, and all is kept', async () => {
    const planId = await fixPlan();
    await enterCount();
    expect(
      screen.getByRole('img', { name: /^0 sold\. 9 cash back; 22 pay; 31 all; 44 unsold too\.$/ }),
    ).toBeVisible();
    await click(tile(/^Otter L, 28, 7 left/));
    expect(isInverted(tile(/^Otter L, 28, 6 left/))).toBe(true);
    expect(screen.getByText('28', { selector: 'strong' }).parentElement).toHaveTextContent('28 USD taken');
    expect(screen.getByText(/to go until the day’s costs are back/)).toHaveTextContent(
      '8 to go until the day’s costs are back',
    );
    expect(tapped()).toEqual([
      { what: 'sale', goods: { jobId: 'fair-shirts', lineId: 'otter', size: 'L' }, minor: 2800, pay: 'card' },
    ]);
    expect(screenStore().getState().entries.stallTap[0]?.body).toMatchObject({
      stallDayId: 'spring-fair',
      planId,
      currency: 'USD',
    });
    await kept();
  });

  it('says what the customer pays where tax is added to prices, and counts that as taken', async () => {
    await fixPlan({ taxMode: 'added', tax: 0.0725 });
    await enterCount();
    await click(tile(/^Otter L, 28,/));
    expect(key(/^Next customer/)).toHaveTextContent('1 for 30.03 with tax');
    expect(screen.getByText('30.03', { selector: 'strong' }).parentElement).toHaveTextContent(
      '30.03 USD taken',
    );
    await kept();
  });

  it('tells the price of a row, and the designs of goods without sizes in one', async () => {
    await fixPlan();
    await enterCount();
    const fern = screen.getByRole('region', { name: 'Fern' });
    expect(within(fern).getByText('28, from 2XL 31')).toBeVisible();
    expect(within(fern).getAllByRole('button')).toHaveLength(6);
    const mugs = screen.getByRole('region', { name: 'Mugs' });
    expect(
      within(mugs)
        .getAllByRole('button')
        .map(({ textContent }) => textContent),
    ).toEqual(['Fern12 left', 'Otter12 left', 'Star Map12 left']);
  });

  it('undoes the last tap that counts, one after the other, and says which', async () => {
    await fixPlan();
    await enterCount();
    await click(tile(/^Otter L,/));
    await click(tile(/^Fern S,/));
    await click(key(/^Undo ?Fern S, 28$/));
    expect(tile(/^Fern S, 28, 4 left/)).toBeVisible();
    await click(key(/^Undo ?Otter L, 28$/));
    expect(tapped()).toEqual([]);
    await click(key(/^Undo ?nothing yet$/));
    expect(tapped()).toEqual([]);
    await kept();
  });

  it('counts a gone tile as asked for, and sells one even so where told', async () => {
    await fixPlan();
    await enterCount();
    await click(tile(/^Star Map 3XL, 31, 1 left/));
    await click(tile(/^Star Map 3XL, none left/));
    expect(tile(/^Star Map 3XL, none left: count as asked for, so far 1$/)).toHaveTextContent('asked 1');
    fireEvent.contextMenu(tile(/^Star Map 3XL/));
    await click(await screen.findByRole('button', { name: 'Sell one even so, 31' }));
    expect(tile(/^Star Map 3XL, 1 more than brought/)).toBeVisible();
    expect(tapped().map(({ what }) => what)).toEqual(['sale', 'asked', 'sale']);
  });

  it('makes a sale of what was counted as asked for, with one tap at the thumb', async () => {
    await fixPlan();
    await enterCount();
    const sold = () => screen.queryByRole('button', { name: /^Sold one all the same ?Star Map 3XL, 31:/ });
    await click(tile(/^Star Map 3XL, 31, 1 left/));
    expect(sold()).toBeNull();
    await click(tile(/^Star Map 3XL, none left/));
    // In the line of its neighbours, so that it hides no goods.
    expect([...(sold()?.parentElement?.children ?? [])].map((one) => one.textContent)).toEqual([
      'Asked for, not here so far 1',
      'Sold one all the sameStar Map 3XL, 31: none left, so it counts as asked for',
      'More',
    ]);
    await click(sold() ?? document.body);
    // Two were sold, one was brought; nobody went without.
    expect(tapped().map(({ what }) => what)).toEqual(['sale', 'sale']);
    expect(tile(/^Star Map 3XL, 1 more than brought: count as asked for$/)).toBeVisible();
    expect(key(/^Next customer ?2 for 62$/)).toBeVisible();
    expect(sold()).toBeNull();
    // The next one asks again, and another tap is about something else.
    await click(tile(/^Star Map 3XL/));
    expect(sold()).toBeVisible();
    await click(tile(/^Fern L,/));
    expect(sold()).toBeNull();
    expect(tapped().map(({ what }) => what)).toEqual(['sale', 'sale', 'asked', 'sale']);
    await kept();
  });

  it('takes cash for all of the ticket when told so last, rounds it by the coin, and goes on so', async () => {
    await fixPlan({ currency: 'CHF', goods: fairPlan.goods.map((goods) => ({ ...goods, price: 1998 })) });
    await enterCount();
    await click(tile(/^Fern S, 19\.98/));
    expect(key(/^Next customer ?1 for 19\.98$/)).toBeVisible();
    await click(key(/^Cash$/));
    // 19.98 is paid as 20.00 where the smallest coin is five.
    expect(key(/^Next customer ?1 for 20$/)).toBeVisible();
    await click(key(/^Next customer/));
    expect(key(/^Next customer/)).toHaveAttribute('aria-disabled', 'true');
    expect(key(/^Cash$/)).toHaveAttribute('aria-pressed', 'true');
    await click(tile(/^Fern M,/));
    expect(tapped().at(-1)).toMatchObject({ what: 'sale', pay: 'cash' });
  });

  it('offers a pair as soon as the ticket has one, and takes it off', async () => {
    await fixPlan();
    await enterCount();
    await click(tile(/^Fern S,/));
    expect(screen.queryByRole('button', { name: /^Two shirts/ })).toBeNull();
    await click(tile(/^Otter M,/));
    await click(key(/^Two shirts ?−6$/));
    expect(key(/^Next customer ?2 for 50$/)).toBeVisible();
    expect(screen.queryByRole('button', { name: /^Two shirts/ })).toBeNull();
  });

  it('offers every set that fits, at the thumb and under More', async () => {
    const [pair] = fairPlan.sets;
    if (pair === undefined) throw new Error('the fair has no set');
    const gift = { id: 'gift', name: 'Shirt and mug', pieces: 2, price: 4000, rangeIds: ['shirts', 'mugs'] };
    await fixPlan({ sets: [pair, { ...gift, sizes: null }] });
    await enterCount();
    await click(tile(/^Fern S,/));
    await click(tile(/^Otter M,/));
    // Two of 28: 50 for the one, 40 for the other.
    expect(key(/^Two shirts ?−6$/)).toBeVisible();
    expect(key(/^Shirt and mug ?−16$/)).toBeVisible();
    await click(key(/^More$/));
    const sheet = within(await screen.findByRole('dialog', { name: 'More' }));
    expect(sheet.getByRole('button', { name: /^Two shirts ?−6$/ })).toBeVisible();
    await click(sheet.getByRole('button', { name: /^Shirt and mug ?−16$/ }));
    expect(tapped().at(-1)).toEqual({ what: 'set', setId: 'gift', minor: 1600, pay: 'card' });
    expect(key(/^Next customer ?2 for 40$/)).toBeInTheDocument();
  });

  it('is there again after a reload, the way of paying and the open ticket as well', async () => {
    await fixPlan();
    await enterCount();
    await click(key(/^Cash$/));
    await click(tile(/^Fern S,/));
    await kept();
    cleanup();
    leaveScreens();
    await enterCount();
    expect(tile(/^Fern S, 28, 3 left/)).toBeVisible();
    expect(key(/^Cash$/)).toHaveAttribute('aria-pressed', 'true');
    expect(key(/^Next customer ?1 for 28$/)).toBeVisible();
    expect(key(/^Undo ?Fern S, 28$/)).toBeVisible();
  });
});

describe('under a long press', () => {
  it('opens by holding a tile, which sells nothing', async () => {
    await fixPlan();
    await enterCount();
    vi.useFakeTimers();
    try {
      fireEvent.pointerDown(tile(/^Fern L,/), { button: 0 });
      act(() => vi.advanceTimersByTime(500));
      fireEvent.pointerUp(tile(/^Fern L,/));
      fireEvent.click(tile(/^Fern L,/), { detail: 1 });
    } finally {
      vi.useRealTimers();
    }
    expect(await screen.findByRole('button', { name: 'Given away' })).toBeVisible();
    expect(tapped()).toEqual([]);
  });

  it('takes another price, a piece given, spoiled, put back, and money back', async () => {
    await fixPlan();
    await enterCount();
    const goods = { jobId: 'fair-shirts', lineId: 'fern', size: 'L' };
    const choose = async (name: RegExp | string) => {
      fireEvent.contextMenu(tile(/^Fern L,/));
      await click(await screen.findByRole('button', { name }));
    };
    fireEvent.contextMenu(tile(/^Fern L,/));
    await userEvent.type(await screen.findByRole('textbox', { name: 'Other price' }), '20');
    await click(key(/^Sell at it$/));
    await choose('Given away');
    await choose('Damaged, a second');
    await choose('Put back, the price');
    await choose('Give 28 back');
    expect(tapped()).toEqual([
      { what: 'sale', goods, minor: 2000, isOwnPrice: true, pay: 'card' },
      { what: 'given', goods },
      { what: 'damaged', goods, isSecond: true },
      { what: 'putBack', goods },
      { what: 'refund', goods, minor: 2800, pay: 'card' },
    ]);
    // 9 brought, one sold and come back, one given, one spoiled.
    expect(tile(/^Fern L, 28, 7 left/)).toBeVisible();
  });

  it('puts no more out than a day can be closed with', async () => {
    // A close holds 100,000 of a size; 95,000 are brought.
    const goods = fairPlan.goods.map((one) => ({ ...one, bring: 95_000 }));
    await fixPlan({ goods });
    await enterCount();
    const putOut = async (pieces: string) => {
      fireEvent.contextMenu(tile(/^Fern L,/));
      await userEvent.click(await screen.findByText('More were put out'));
      await userEvent.type(screen.getByRole('textbox', { name: 'Pieces put out' }), pieces);
      await click(key(/^Count them in$/));
    };
    await putOut('5001');
    expect(screen.getByRole('textbox', { name: 'Pieces put out' })).toHaveAccessibleDescription(/5,?000/);
    expect(tapped()).toEqual([]);
    await click(key(/^Close$/));
    await putOut('5000');
    expect(tile(/^Fern L, 28, 100000 left/)).toBeVisible();
    fireEvent.contextMenu(tile(/^Fern L,/));
    await userEvent.click(await screen.findByText('More were put out'));
    expect(screen.queryByRole('textbox', { name: 'Pieces put out' })).toBeNull();
    expect(screen.getByText(/^As many were put out as a day can be closed with/)).toBeVisible();
    expect(tapped()).toHaveLength(1);
  });

  it('sells a second for its share of the price, where the plan has one', async () => {
    await fixPlan({ secondsShare: 0.5 });
    await enterCount();
    const goods = { jobId: 'fair-shirts', lineId: 'fern', size: 'L' };
    fireEvent.contextMenu(tile(/^Fern L,/));
    await click(await screen.findByRole('button', { name: 'Sell a second, 14' }));
    expect(tapped()).toEqual([{ what: 'sale', goods, minor: 1400, isSecond: true, pay: 'card' }]);
    expect(tile(/^Fern L, 28, 8 left/)).toBeVisible();
    expect(key(/^Undo/)).toHaveTextContent('Fern L, a second, 14');
  });

  it('gives back what was paid and not the price of now', async () => {
    await fixPlan();
    await enterCount();
    fireEvent.contextMenu(tile(/^Fern L,/));
    const field = await screen.findByLabelText(/^Paid for it/);
    expect(field).toHaveValue('28.00');
    await userEvent.clear(field);
    await userEvent.type(field, '25');
    await click(key(/^Give 25 back$/));
    expect(tapped()).toMatchObject([{ what: 'refund', minor: 2500 }]);
  });

  it('says of what is given back that it is without tax, which goes back with it', async () => {
    await fixPlan({ taxMode: 'added', tax: 0.0725 });
    await enterCount();
    fireEvent.contextMenu(tile(/^Fern L,/));
    expect(await screen.findByLabelText(/^Paid for it, without tax/)).toHaveValue('28.00');
    expect(
      within(screen.getByRole('form', { name: 'A piece that came back' })).getByText(
        'Its tax goes back with it.',
      ),
    ).toBeVisible();
    // 7.25 % of 28 is 2.03.
    expect(key(/^Give 30\.03 back$/)).toBeVisible();
  });

  it('sells at no other price while what is typed may be misread', async () => {
    await fixPlan();
    await enterCount();
    fireEvent.contextMenu(tile(/^Fern L,/));
    const price = await screen.findByRole('textbox', { name: 'Other price' });
    // A comma groups thousands here, and 12 was a price on the way.
    await userEvent.type(price, '12,50');
    await click(key(/^Sell at it$/));
    expect(tapped()).toEqual([]);
    expect(price).toHaveFocus();
    expect(price).toHaveAccessibleDescription(/could be misread/);
    expect(price).not.toHaveAccessibleDescription(/in force/);
    await userEvent.clear(price);
    await userEvent.type(price, '12.50');
    await click(key(/^Sell at it$/));
    expect(tapped()).toMatchObject([{ what: 'sale', minor: 1250, isOwnPrice: true }]);
  });

  it('exchanges a piece for another with what it costs more', async () => {
    await fixPlan();
    await enterCount();
    await click(tile(/^Fern L,/));
    fireEvent.contextMenu(tile(/^Fern L,/));
    await click(await screen.findByText('Exchange'));
    await userEvent.selectOptions(screen.getByLabelText('What goes instead'), 'Fern 2XL, 31, 2 left');
    await click(key(/^Exchange, 3 on top$/));
    expect(tile(/^Fern L, 28, 9 left/)).toBeVisible();
    expect(tile(/^Fern 2XL, 31, 1 left/)).toBeVisible();
    expect(key(/^Next customer ?1 for 31$/)).toBeVisible();
  });
});

describe('under More', () => {
  it('leads to the panel of a piece without a long press', async () => {
    await fixPlan();
    await enterCount();
    await click(key(/^More$/));
    await click(await screen.findByRole('button', { name: /^Other price, exchange/ }));
    await click(tile(/^Fern L,/));
    await click(await screen.findByRole('button', { name: 'Given away' }));
    expect(tapped().map(({ what }) => what)).toEqual(['given']);
    await click(tile(/^Fern L,/));
    expect(tapped().map(({ what }) => what)).toEqual(['given', 'sale']);
  });

  it('takes nothing out of the tin while how much may be misread', async () => {
    await fixPlan();
    await enterCount();
    await click(key(/^More$/));
    await click(await screen.findByText('Tin'));
    const amount = screen.getByRole('textbox', { name: 'How much' });
    await userEvent.type(amount, '12,50');
    await click(screen.getByRole('radio', { name: 'Taken out' }));
    await click(key(/^Into the count$/));
    expect(tapped()).toEqual([]);
    expect(amount).toHaveFocus();
    expect(amount).not.toHaveAccessibleDescription(/in force/);
  });

  it('counts visitors, weather, notes, leads and the tin', async () => {
    await fixPlan();
    await enterCount();
    await click(key(/^More$/));
    await click(await screen.findByRole('button', { name: 'Visitors +10' }));
    await click(key(/^Visitors \+10 · 10$/));
    await click(key(/^showers$/));
    await click(key(/^Wants something made$/));
    await click(screen.getByText('In words'));
    await userEvent.type(screen.getByRole('textbox', { name: 'Words' }), 'Band plays');
    await click(key(/^Note it$/));
    await click(screen.getByText('Tin'));
    await userEvent.type(screen.getByRole('textbox', { name: 'How much' }), '50');
    await click(screen.getByRole('radio', { name: 'Taken out' }));
    await click(key(/^Into the count$/));
    expect(tapped()).toEqual([
      { what: 'visitors', count: 10 },
      { what: 'visitors', count: 10 },
      { what: 'weather', weatherId: 'showers' },
      { what: 'lead', words: '' },
      { what: 'note', words: 'Band plays' },
      { what: 'tin', cause: 'skimmed', minor: 5000, words: '' },
    ]);
  });

  it('puts the keys on the side of the other hand, and remembers it', async () => {
    await fixPlan();
    await enterCount();
    await click(key(/^More$/));
    await click(await screen.findByText('This phone'));
    await click(key(/^Keys for the left hand$/));
    cleanup();
    await enterCount();
    expect(key(/^Undo/).closest('[class*="mirrored"]')).not.toBeNull();
  });

  it('says where the screen cannot be kept awake', async () => {
    await fixPlan();
    await enterCount();
    await click(key(/^More$/));
    await click(await screen.findByText('This phone'));
    expect(screen.getByText(/cannot keep the screen awake/)).toBeVisible();
  });
});

describe('what was asked for and not here', () => {
  it('is counted by goods that are gone and in words, each again with one tap', async () => {
    await fixPlan({
      goods: fairPlan.goods.map((one) => ({ ...one, bring: one.size === 'L' ? 0 : one.bring })),
    });
    await enterCount();
    await click(key(/^Asked for, not here/));
    await click(await screen.findByRole('button', { name: 'Otter L' }));
    await userEvent.type(screen.getByRole('textbox', { name: /^What was it/ }), 'youth sizes');
    await click(key(/^Count it$/));
    await click(key(/^youth sizes · 1$/));
    expect(tapped()).toEqual([
      { what: 'asked', goods: { jobId: 'fair-shirts', lineId: 'otter', size: 'L' }, words: '' },
      { what: 'asked', goods: null, words: 'youth sizes' },
      { what: 'asked', goods: null, words: 'youth sizes' },
    ]);
    expect(key(/^Asked for, not here/)).toHaveTextContent('so far 3');
  });
});

describe('a sheet over the count', () => {
  it('closes by a press beside it', async () => {
    await fixPlan();
    await enterCount();
    await click(key(/^More$/));
    fireEvent.click(await screen.findByRole('dialog', { name: 'More' }));
    expect(screen.queryByRole('dialog')).toBeNull();
  });
});

describe('goods that the newest plan names no longer', () => {
  const isOtterL = ({ lineId, size }: (typeof fairPlan.goods)[number]) => lineId === 'otter' && size === 'L';

  it('have a tile at the end once they were tapped, by name and price as before, and are sold on', async () => {
    await fixPlan();
    await enterCount();
    await click(tile(/^Otter L, 28/));
    await fixPlan({ goods: fairPlan.goods.filter((one) => !isOtterL(one)) });
    const rows = screen.getAllByRole('region').map((row) => row.getAttribute('aria-label'));
    expect(rows).toEqual(['Fern', 'Lighthouse', 'Otter', 'Star Map', 'Mugs', 'Not in the plan']);
    const beside = within(screen.getByRole('region', { name: 'Not in the plan' }));
    await click(beside.getByRole('button', { name: 'Otter L, 28, 1 out so far' }));
    expect(beside.getByRole('button', { name: 'Otter L, 28, 2 out so far' })).toBeVisible();
    expect(tapped().map(({ what }) => what)).toEqual(['sale', 'sale']);
    expect(key(/^Undo ?Otter L, 28$/)).toBeVisible();
    expect(key(/^Next customer ?2 for 56$/)).toBeVisible();
  });

  it('have none while nobody tapped them', async () => {
    await fixPlan();
    await enterCount();
    await fixPlan({ goods: fairPlan.goods.filter((one) => !isOtterL(one)) });
    expect(screen.queryByRole('region', { name: 'Not in the plan' })).toBeNull();
  });
});

describe('what is told', () => {
  it('a full disk at once: the taps stay on the screen, and are kept once there is room', async () => {
    await fixPlan();
    await enterCount();
    disk.isFull = true;
    await click(tile(/^Fern S,/));
    await click(tile(/^Fern M,/));
    const alarm = within(await screen.findByRole('alert'));
    expect(alarm.getByText('Not kept.')).toBeVisible();
    expect(alarm.getByRole('button', { name: 'Carry to another device' })).toBeVisible();
    expect(tile(/^Fern S, 28, 3 left/)).toBeVisible();
    disk.isFull = false;
    await click(alarm.getByRole('button', { name: 'Try again' }));
    await kept();
    expect(tapped()).toHaveLength(2);
  });

  it('a clock on a day that is none of the plan; the sale is kept', async () => {
    await fixPlan({ days: [{ day: addDays(TEST_DAY, 24), fromMinute: 600, toMinute: 1020, weight: 1 }] });
    await enterCount();
    expect(screen.queryByText(/^The clock of this device says/)).toBeNull();
    await click(screen.getByText('The clock says another day than the plan.'));
    expect(
      screen.getByText(/^The clock of this device says .* Sales are kept and counted all the same/),
    ).toBeVisible();
    await click(tile(/^Fern S,/));
    expect(tapped()).toHaveLength(1);
  });

  it('a newer plan that came after counting began: it holds from then on, and the taps before still count', async () => {
    await fixPlan();
    await enterCount();
    await click(tile(/^Fern S, 28/));
    await fixPlan({ goods: fairPlan.goods.map((one) => ({ ...one, price: 2500 })) });
    expect(tile(/^Fern S, 25, 3 left/)).toBeVisible();
    await click(screen.getByText('A newer plan came.'));
    expect(
      screen.getByText(/^A newer plan came after you began.* One tap by the plan before still counts\.$/),
    ).toBeVisible();
  });

  it('a plan that was taken back elsewhere: what was sold by it is not hidden, and counting goes on', async () => {
    const planId = await fixPlan();
    await enterCount();
    await click(tile(/^Fern S, 28/));
    const issued = screenStore()
      .getState()
      .entries.issuing.find(({ body }) => body.paperId === planId);
    act(() => {
      screenStore().actions.note('Back', [{ kind: 'takeBack', body: { entryId: issued?.id ?? '' } }]);
    });
    expect(screen.getByText(/^This plan was taken back, but sales were counted by it/)).toBeVisible();
    await click(tile(/^Fern S, 28, 3 left/));
    expect(tapped()).toHaveLength(2);
  });

  it('prices of the last hour by the clock of the last day', async () => {
    await fixPlan({ lastHourFrom: 0, goods: fairPlan.goods.map((one) => ({ ...one, lastHourPrice: 2000 })) });
    await enterCount();
    expect(screen.getByText('Prices of the last hour hold.')).toBeVisible();
    await click(tile(/^Fern S, 20,/));
    expect(tapped()).toMatchObject([{ minor: 2000 }]);
  });
});
