// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import './stallStage';
import { act, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, it } from 'vitest';
import { StallDayScreen } from '@/app/_stallDay/StallDayScreen';
import { SPRING_FAIR_ID } from '@/lib/examples/springFair';
import { goodsKey } from '@/lib/stall/goodsKey';
import { toPress } from '@/lib/stall/making/toPress';
import { finishedAtHome } from '@/lib/stock/finishedAtHome';
import { foldStock } from '@/lib/stock/foldStock';
import { addDays } from '@/shared/days';
import type { StallDay } from '@/shared/schemas/stallDay';
import { closeFair } from '@/tests/app/_screens/closeFair';
import { bodyOf, enter, screenStore, undo } from '@/tests/app/_screens/screens';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

const NEXT = 'autumn-fair';

/** The worked fair is over and closed, in the weather that is told; the next one is planned from days before. */
async function nextFair(weatherId: string, to: (next: StallDay) => StallDay = (next) => next): Promise<void> {
  await closeFair(weatherId);
  const { actions } = screenStore();
  const day = bodyOf('stallDay', SPRING_FAIR_ID);
  const next: StallDay = {
    ...day,
    ...{ name: 'Exampleton Autumn Fair', held: [], made: [] },
    days: day.days.map((one) => ({ ...one, day: addDays(TEST_DAY, 60) })),
    forecast: { from: 'pastDays', stallDayIds: [SPRING_FAIR_ID], footfallRatio: 1 },
  };
  await act(async () => {
    actions.edit('Next fair', [{ do: 'add', kind: 'stallDay', id: NEXT, body: to(next) }]);
    await screenStore().flush();
  });
  await enter(<StallDayScreen stallDayId={NEXT} />);
  await screen.findByRole('group', { name: 'Fern' });
}

describe('a fair planned from the one that was closed', () => {
  it('rests on that fair, and offers what its weather left', async () => {
    await nextFair('showers');
    expect(screen.queryByText(/there is no forecast/i)).toBeNull();
    await userEvent.click(screen.getByRole('button', { name: 'Goods and forecast' }));
    expect(await screen.findByRole('checkbox', { name: /^Exampleton Spring Fair/ })).toBeChecked();
    await userEvent.click(screen.getByRole('button', { name: 'Chances of the weather' }));
    // 70 sold, 4.08 lost and 3 asked for of the 54 + 22 of a dry day are 101.4 %; (2 × 65 + 101.4) ÷ 3.
    // One day tells no tenth of a percent.
    await userEvent.click(
      await screen.findByRole('button', { name: /^Take 77 ?% for showers, learned on 1 day$/ }),
    );
    expect(bodyOf('stallDay', NEXT).weathers.find(({ name }) => name === 'showers')?.factor?.value).toBe(
      0.77,
    );
  });

  it('tells that own sales are among the sizes, and leaves them out where the maker says so', async () => {
    await nextFair('dry');
    await userEvent.click(screen.getByRole('button', { name: 'Goods and forecast' }));
    await userEvent.click(await screen.findByRole('button', { name: /^Shirts/ }));
    // 50 shirts sold, three Otter L asked for and 4.08 reckoned as lost.
    const told =
      '“Shares of your own”, counted like 50 pieces, blended with 57 sold or missed at your own stalls.';
    expect(screen.getByText(told)).toBeVisible();
    await userEvent.click(screen.getByRole('checkbox', { name: /^Leave own sales out of the sizes/ }));
    expect(bodyOf('stallDay', NEXT).areOwnSizesLeftOut).toBe(true);
    expect(screen.getByText(/alone: 57 sold or missed at your own stalls are left out\.$/)).toBeVisible();
    await undo();
    expect(screen.getByText(told)).toBeVisible();
  });

  it('counts first what came home, so that only what is short of it is pressed', async () => {
    await nextFair('dry');
    const { stockMove } = screenStore().getState().entries;
    const goods = { jobId: 'fair-shirts', lineId: 'fern', size: 'M' };
    const home = finishedAtHome(foldStock(stockMove));
    expect(home.reduce((sum, { pieces }) => sum + pieces, 0)).toBe(62);
    const atHome = home.find((one) => goodsKey(one) === goodsKey(goods))?.pieces ?? 0;
    // 8 were brought and 5 sold: of 8 for the next fair 5 are short.
    expect(toPress([{ ...goods, mine: 8, atHome }])).toEqual([{ ...goods, press: 5 }]);
  });
});
