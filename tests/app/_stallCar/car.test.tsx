// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import '@/tests/app/_screens/stage';
import { act, cleanup, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { WithWorkspace } from '@/app/_keeping/WithWorkspace';
import { CarPart } from '@/app/_stallCar/CarPart';
import { otherDay } from '@/app/_stallCar/otherDay';
import { carHeld } from '@/lib/stall/car/carHeld';
import { planMoves } from '@/lib/stall/car/planMoves';
import { closeBody, closeSeries } from '@/lib/stall/evening/closeBody';
import { closeMoves } from '@/lib/stall/evening/closeMoves';
import type { StallAnswer } from '@/lib/stall/plan/stallPlanned';
import { foldStock } from '@/lib/stock/foldStock';
import type { StockMove } from '@/shared/schemas/stock';
import { disk, enter, screenStore, undo } from '@/tests/app/_screens/screens';
import { fairAnswer } from '@/tests/fixtures/stallAnswer';
import { fairAnswers, fairClock, fairEvening } from '@/tests/lib/stall/evening/fairEvening';
import { TEST_DAY } from '@/tests/tools/clock/testDay';
import { eventually } from '@/tests/tools/eventually';

const DAY = 'spring-fair';
type Planned = Extract<StallAnswer, { readonly kind: 'planned' }>;

const Room = ({ answer = fairAnswer }: Readonly<{ answer?: Planned | null }>) => (
  <WithWorkspace>
    {(workspace) => {
      const stallDay = workspace.stallDays[DAY];
      if (stallDay === undefined) throw new Error('no fair');
      const { piles, entries, papers } = workspace;
      const { left } = carHeld({ piles, moves: entries.stockMove }, papers);
      const part = { workspace, id: DAY, stallDay, answer, left, isOld: false, today: TEST_DAY };
      return (
        <>
          <h1>The fair</h1>
          <CarPart {...part} numeral={7} />
        </>
      );
    }}
  </WithWorkspace>
);
const plans = () => screenStore().getState().papers.stallPlan;
const press = (name: string | RegExp) => userEvent.click(screen.getByRole('button', { name }));
const car = () => within(screen.getByRole('region', { name: 'Car and tin' }));
const lying = (place: 'home' | 'van') => {
  const { stockMove, stockTransfer, stockCount } = screenStore().getState().entries;
  return foldStock([...stockMove, ...stockTransfer, ...stockCount]).find(
    ({ item, place: at }) => item.kind === 'finished' && at.kind === place,
  )?.quantity;
};
const fernL = { jobId: 'fair-shirts', lineId: 'fern', size: 'L' } as const;
const fernCounted = (quantity: number): void =>
  act(() => {
    screenStore().actions.note('Count', [
      {
        kind: 'stockCount',
        body: {
          item: { kind: 'finished', ...fernL },
          ...{ place: { kind: 'home' }, grade: 'first', quantity },
        },
      },
    ]);
  });
/** Of the Winter Fair, which was closed with five sold of the eight Fern in L that it had loaded, and nothing counted. */
async function closeWinterFair(): Promise<void> {
  const row = { ...{ goods: fernL, brought: 8, sold: 5, given: 0, damaged: 0, seconds: 0, counted: null } };
  const { actions } = screenStore();
  const stock = () => {
    const { stockMove, stockTransfer, stockCount } = screenStore().getState().entries;
    return { moves: stockMove, piles: foldStock([...stockMove, ...stockTransfer, ...stockCount]) };
  };
  const noted = (bodies: readonly StockMove[]) =>
    bodies.map((body) => ({ kind: 'stockMove', body }) as const);
  const load = planMoves('winter-fair', [{ ...fernL, bring: 8 }], stock());
  act(() => {
    actions.note('Load', noted(load));
  });
  await act(() =>
    actions.issue('Close', {
      ...{
        kind: 'dayClose',
        about: { kind: 'stallDay', id: 'winter-fair' },
        series: closeSeries('winter-fair'),
      },
      body: (number) => ({
        ...closeBody(fairEvening(), {
          ...{ number, issuedOn: TEST_DAY, planId: 'plan-0', answers: fairAnswers, clock: fairClock },
        }),
        ...{ stallDayId: 'winter-fair', title: 'Winter Fair' },
      }),
      notes: (paperId) =>
        noted(closeMoves([row], { ...stock(), stallDayId: 'winter-fair', closes: [] }, paperId)),
    }),
  );
}
/** One Fern in S fewer. */
const fewer: Planned = {
  ...fairAnswer,
  goods: fairAnswer.goods.map((one, at) => (at === 0 ? { ...one, mine: 3 } : one)),
};

describe('loading the car', () => {
  it('fixes the plan as a paper, with the float that is advised', async () => {
    await enter(<Room />);
    expect(car().getByText('Not fixed yet')).toBeVisible();
    expect(car().queryByRole('link', { name: 'Count sales here' })).toBeNull();
    await press('Fix the plan');
    await eventually(() => expect(plans()).toHaveLength(1));
    const [paper] = plans();
    expect(paper?.about).toEqual({ kind: 'stallDay', id: DAY });
    expect(paper?.body.goods.reduce((sum, { bring }) => sum + bring, 0)).toBe(132);
    // Seven tens, five fives, twenty ones.
    expect(paper?.body.float.map(({ value, count }) => value * count)).toEqual([70, 25, 20]);
    expect(await car().findByText('132 pieces')).toBeVisible();
    expect(car().getByText('The plan is fixed as it stands.')).toBeVisible();
    expect(car().getByRole('link', { name: 'Count sales here' })).toHaveAttribute(
      'href',
      `/stall/${DAY}/count`,
    );
    // Counting is what comes next, so it stands before fixing anew and not at the end of the folds.
    const acts = car().getByRole('button', { name: 'Fix it anew' }).parentElement;
    expect(within(acts ?? document.body).getAllByRole('link')[0]).toBe(acts?.firstElementChild);
  });

  it('says that it is not fixed where a paper cannot hold it, and can be tried again', async () => {
    // A plan holds at most 100,000 of one size.
    const goods = fairAnswer.goods.map((one, at) => (at === 0 ? { ...one, mine: 100_001 } : one));
    await enter(<Room answer={{ ...fairAnswer, goods }} />);
    await press('Fix the plan');
    expect(await car().findByText(/^It is not fixed. Something in it is more than/)).toBeVisible();
    expect(car().getByRole('button', { name: 'Fix the plan' })).not.toHaveAttribute('aria-disabled');
    expect(plans()).toHaveLength(0);
  });

  it('moves what is known of the stock to the car in the same step, and undo brings both back', async () => {
    await enter(<Room />);
    fernCounted(12);
    expect(car().getByText(/^9 pieces of the stock move to the car/)).toBeVisible();
    await press('Fix the plan');
    await eventually(() => expect(plans()).toHaveLength(1));
    expect([lying('home'), lying('van')]).toEqual([3, 9]);
    await undo();
    expect(plans()[0]?.withdrawn).toBe(true);
    expect(lying('home')).toBe(12);
  });

  it('takes a design out of the car that the plan fixed anew does not have', async () => {
    await enter(<Room />);
    fernCounted(12);
    await press('Fix the plan');
    await eventually(() => expect(plans()).toHaveLength(1));
    expect([lying('home'), lying('van')]).toEqual([3, 9]);
    cleanup();
    const withoutFern = fairAnswer.goods.filter(
      ({ jobId, lineId }) => jobId !== 'fair-shirts' || lineId !== 'fern',
    );
    await enter(<Room answer={{ ...fairAnswer, goods: withoutFern }} />);
    expect(car().getByText(/^9 pieces of the stock come home from the car/)).toBeVisible();
    await press('Fix it anew');
    await eventually(() => expect(plans()).toHaveLength(2));
    expect([lying('home'), lying('van')]).toEqual([12, 0]);
  });

  it('takes along what a closed day left in the car uncounted, and says so', async () => {
    await enter(<Room />);
    fernCounted(12);
    await closeWinterFair();
    expect([lying('home'), lying('van')]).toEqual([4, 3]);
    expect(
      car().getByText(
        /^9 pieces of the stock move to the car\. .*3 of them lie in the car from Winter Fair, not counted\.$/,
      ),
    ).toBeVisible();
    await press('Fix the plan');
    await eventually(() => expect(plans()).toHaveLength(1));
    // Of the nine that are brought three lay there and four at home: two are still to be pressed.
    expect([lying('home'), lying('van')]).toEqual([-2, 9]);
    await undo();
    expect([lying('home'), lying('van')]).toEqual([4, 3]);
  });

  it('takes a plan back with what was moved for it', async () => {
    await enter(<Room />);
    fernCounted(12);
    await press('Fix the plan');
    await eventually(() => expect(plans()).toHaveLength(1));
    await press('Take the plan back');
    await eventually(() => expect(plans()[0]?.withdrawn).toBe(true));
    expect([lying('home'), lying('van')]).toEqual([12, 0]);
    expect(car().getByText('Not fixed yet')).toBeVisible();
  });

  it('says what the plan of now differs by, and puts it in the place of the fixed one', async () => {
    await enter(<Room />);
    await press('Fix the plan');
    await eventually(() => expect(plans()).toHaveLength(1));
    cleanup();
    await enter(<Room answer={fewer} />);
    expect(car().getByText('131 pieces for 132: Fern S 3 for 4.')).toBeVisible();
    await press('Fix it anew');
    await eventually(() => expect(plans()).toHaveLength(2));
    expect(await car().findByText('131 pieces')).toBeVisible();
    await press('Take the plan back');
    expect(await car().findByText('132 pieces')).toBeVisible();
  });

  it('keeps a plan that sales were counted by', async () => {
    await enter(<Room />);
    await press('Fix the plan');
    await eventually(() => expect(plans()).toHaveLength(1));
    const planId = plans()[0]?.id ?? '';
    act(() => {
      screenStore().actions.note('Sale', [
        {
          kind: 'stallTap',
          body: { stallDayId: DAY, planId, currency: 'USD', tap: { what: 'next' } },
        },
      ]);
    });
    const back = screen.getByRole('button', { name: 'Take the plan back' });
    expect(back).toHaveAttribute('aria-disabled', 'true');
    await userEvent.click(back);
    expect(plans()[0]?.withdrawn).toBe(false);
  });

  it('counts by a plan that was taken back before its sales arrived, says so, and lets another one be fixed', async () => {
    await enter(<Room />);
    await press('Fix the plan');
    await eventually(() => expect(plans()).toHaveLength(1));
    await press('Take the plan back');
    await eventually(() => expect(plans()[0]?.withdrawn).toBe(true));
    const planId = plans()[0]?.id ?? '';
    act(() => {
      screenStore().actions.note('Sale', [
        { kind: 'stallTap', body: { stallDayId: DAY, planId, currency: 'USD', tap: { what: 'next' } } },
      ]);
    });
    expect(car().getByText(/^This plan was taken back, but sales were counted by it/)).toBeVisible();
    expect(car().getByText('132 pieces')).toBeVisible();
    await press('Fix it anew');
    await eventually(() => expect(plans()).toHaveLength(2));
    await eventually(() => expect(car().queryByText(/^This plan was taken back/)).toBeNull());
  });

  it('says at once that it is not fixed where the disk is full', async () => {
    await enter(<Room />);
    disk.isFull = true;
    await press('Fix the plan');
    expect(await car().findByText(/^It is not fixed\. The device has no room left/)).toBeVisible();
    expect(plans()).toHaveLength(0);
  });

  it('waits for the plan', async () => {
    await enter(<Room answer={null} />);
    expect(screen.getByRole('button', { name: 'Fix the plan' })).toHaveAttribute(
      'title',
      'The plan comes first.',
    );
  });
});

describe('the tin', () => {
  it('of a day without a plan is not told yet, which is not that none is needed', async () => {
    await enter(<Room answer={null} />);
    expect(car().getByText(/the tin not told yet/)).toBeVisible();
    await press('The float');
    expect(await car().findByText(/^The plan comes first: what is needed in the tin/)).toBeVisible();
    expect(car().queryByText(/Nobody is expected/)).toBeNull();
  });

  it('is filled by hand or by the advice', async () => {
    await enter(<Room />);
    await press('The float');
    // The same small boxes as in the evening, so that both fit beside each other on any screen.
    const notes = within(await screen.findByRole('group', { name: 'Notes' }));
    const tens = notes.getByRole('textbox', { name: '10.00' });
    expect(notes.getByRole('textbox', { name: '100.00' })).toHaveValue('0');
    expect(tens).toHaveValue('7');
    await userEvent.clear(tens);
    await userEvent.type(tens, '9');
    await userEvent.tab();
    // 90, 25 and 20.
    expect(await car().findByText(/135\.00 USD in the tin/)).toBeVisible();
    await press(/^Take the advice: 115\.00 USD/);
    expect(await car().findByText(/115\.00 USD in the tin/)).toBeVisible();
  });
});

describe('what else goes along', () => {
  it('is ticked off, added and taken out', async () => {
    await enter(<Room />);
    await press('Take along');
    const bags = await screen.findByRole('checkbox', { name: 'Bags' });
    await userEvent.click(bags);
    expect(bags).toBeChecked();
    await userEvent.type(screen.getByRole('textbox', { name: 'A further thing' }), 'Tent');
    await press('Add a thing');
    expect(await screen.findByRole('checkbox', { name: 'Tent' })).not.toBeChecked();
    await press('Remove Order pad');
    expect(screen.queryByRole('checkbox', { name: 'Order pad' })).toBeNull();
  });
});

describe('a list without anything on it', () => {
  it('offers the usual things by one button, each to be ticked off or taken out', async () => {
    await enter(<Room />);
    act(() => {
      screenStore().actions.edit('Empty it', [
        { do: 'change', kind: 'stallDay', id: DAY, to: (now) => ({ ...now, takeAlong: [] }) },
      ]);
    });
    await press('Take along');
    await userEvent.click(await screen.findByRole('button', { name: 'Add the usual things' }));
    for (const name of [
      'Card reader, charged',
      'A second way to take payment',
      'Tent, side walls and weights',
      'Waterproof covers for card and cartons',
    ])
      expect(await screen.findByRole('checkbox', { name })).not.toBeChecked();
    expect(screen.queryByRole('button', { name: 'Add the usual things' })).toBeNull();
    await press('Remove Bags');
    expect(screen.queryByRole('checkbox', { name: 'Bags' })).toBeNull();
  });
});

describe('a file that comes back', () => {
  const of = { kind: 'stallDay', id: 'autumn', name: 'Autumn Fair' } as const;
  const meeting = (id: string) => ({ kind: 'stallDay', id }) as never;

  it('is told where it is of another day', () => {
    expect(otherDay({ copy: { of } as never, meetings: [meeting('autumn')] }, DAY)).toBe('Autumn Fair');
    expect(otherDay({ copy: { of: 'everything' } as never, meetings: [] }, DAY)).toBe('other things');
  });

  it('is not where this day is in it', () => {
    expect(otherDay({ copy: { of } as never, meetings: [meeting(DAY)] }, DAY)).toBeNull();
  });
});
