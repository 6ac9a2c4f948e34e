// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import '@/tests/app/_screens/stage';
import { act, fireEvent, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeEach, describe, expect, it, vi } from 'vitest';
import { StallScreen } from '@/app/_stall/StallScreen';
import { SPRING_FAIR_ID } from '@/lib/examples/springFair';
import { springFairTap } from '@/lib/examples/springFairCount';
import { addDays } from '@/shared/days';
import type { StallDay } from '@/shared/schemas/stallDay';
import { closeFair } from '@/tests/app/_screens/closeFair';
import { bodyOf, enter, idsOf, screenStore } from '@/tests/app/_screens/screens';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

const push = vi.hoisted(() => vi.fn<(href: string) => void>());
vi.mock('next/navigation', () => ({ useRouter: () => ({ push }), usePathname: () => '/stall' }));

beforeEach(() => push.mockClear());

const change = (to: Partial<StallDay>) =>
  act(async () => {
    screenStore().actions.edit('Change', [
      { do: 'change', kind: 'stallDay', id: SPRING_FAIR_ID, to: (now) => ({ ...now, ...to }) },
    ]);
  });
const row = () => within(screen.getByRole('region', { name: 'Coming' })).getByRole('listitem');

describe('the calendar', () => {
  it('leads to a day, and says how far it is', async () => {
    await enter(<StallScreen />);
    expect(screen.getByRole('link', { name: 'Exampleton Spring Fair' })).toHaveAttribute(
      'href',
      `/stall/${SPRING_FAIR_ID}`,
    );
    expect(row()).toHaveTextContent('accepted');
  });

  it('asks for what is due next, and says how much more', async () => {
    await enter(<StallScreen />);
    await change({
      stage: 'idea',
      applyBy: TEST_DAY,
      permit: { state: 'unset', until: null },
      insurance: { state: 'asked', until: null },
    });
    expect(row()).toHaveTextContent('only an ideaApply today and 2 more');
    await change({ applyBy: addDays(TEST_DAY, -1) });
    expect(row()).toHaveTextContent('Apply: the last day was yesterday');
  });

  it('has what is over and what is put away apart', async () => {
    await enter(<StallScreen />);
    await change({ stage: 'refused' });
    expect(within(screen.getByRole('region', { name: 'Over' })).getByRole('listitem')).toBeVisible();
    expect(screen.getByText(/No stall day ahead/)).toBeVisible();
    await change({ archivedOn: TEST_DAY });
    expect(screen.getByRole('button', { name: /1 stall day put away/ })).toBeVisible();
  });

  it('tells of a closed day what it left and what was decided, and has it over on its own day', async () => {
    const planId = await closeFair('dry');
    await enter(<StallScreen />);
    await change({ stage: 'idea' });
    const over = within(screen.getByRole('region', { name: 'Over' })).getByRole('listitem');
    // The worked fair left 483.95, which pays 38.02 for each of its hours.
    expect(over).toHaveTextContent(/closed483\.95 profit, 38 an hour, go again$/);
    expect(over).not.toHaveTextContent('only an idea');
    expect(screen.getByText(/No stall day ahead/)).toBeVisible();
    const body = springFairTap(planId, { minute: 0, tap: { what: 'visitors', count: 10 } });
    await act(async () => {
      screenStore().actions.note('Tap', [{ kind: 'stallTap', body }]);
    });
    expect(over).toHaveTextContent(/Other taps came after the close: close it again$/);
  });
});

describe('a new stall day', () => {
  const begin = async () => {
    await enter(<StallScreen />);
    await userEvent.click(screen.getByRole('button', { name: 'New stall day' }));
    expect(screen.getByRole('textbox', { name: 'Name of the fair or market' })).toHaveFocus();
  };
  const added = () => idsOf('stallDay').find((id) => id !== SPRING_FAIR_ID) ?? '';

  it('takes a name alone, and opens', async () => {
    await begin();
    await userEvent.keyboard('{Enter}');
    expect(idsOf('stallDay')).toHaveLength(1);
    await userEvent.keyboard('Harbour market{Enter}');
    expect(bodyOf('stallDay', added())).toMatchObject({ name: 'Harbour market', days: [], ranges: [] });
    expect(push).toHaveBeenCalledWith(`/stall/${added()}`);
  });

  it('begins with the goods and costs of an earlier one, unpaid and on its own day', async () => {
    await begin();
    await userEvent.keyboard('Harbour market');
    const day = addDays(TEST_DAY, 40);
    fireEvent.change(screen.getByLabelText('Day, if known'), { target: { value: day } });
    await userEvent.selectOptions(
      screen.getByRole('combobox', { name: 'Begin with' }),
      'The goods and costs of Exampleton Spring Fair',
    );
    await userEvent.click(screen.getByRole('button', { name: 'Plan it' }));
    const copy = bodyOf('stallDay', added());
    expect(copy.ranges).toEqual(bodyOf('stallDay', SPRING_FAIR_ID).ranges);
    expect(copy.costs.map(({ paidOn }) => paidOn)).toEqual([null, null, null, null, null]);
    expect(copy.days.map((open) => open.day)).toEqual([day]);
    expect(copy.held).toEqual([]);
  });
});
