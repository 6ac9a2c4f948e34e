// @vitest-environment jsdom
import '@testing-library/jest-dom/vitest';
import './stallStage';
import { act, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, it } from 'vitest';
import { StallDayScreen } from '@/app/_stallDay/StallDayScreen';
import { SPRING_FAIR_ID } from '@/lib/examples/springFair';
import { addDays } from '@/shared/days';
import type { StallDay } from '@/shared/schemas/stallDay';
import { bodyOf, enter, screenStore } from '@/tests/app/_screens/screens';
import { eventually } from '@/tests/tools/eventually';

/** The worked fair with a second day, so many days after the first. */
async function twoDays(after: number): Promise<void> {
  await enter(<StallDayScreen stallDayId={SPRING_FAIR_ID} />);
  const [first] = bodyOf('stallDay', SPRING_FAIR_ID).days;
  if (first === undefined) throw new Error('no day');
  const days = [first, { ...first, id: 'second', day: addDays(first.day, after) }];
  await act(async () => {
    screenStore().actions.edit('Change', [
      { do: 'change', kind: 'stallDay', id: SPRING_FAIR_ID, to: (now) => ({ ...now, days }) },
    ]);
  });
}

it('a date that stands twice is asked about above and told at its field', async () => {
  await twoDays(0);
  await userEvent.click(await screen.findByRole('button', { name: /^Say it: The date of day 2/ }));
  expect(await screen.findByText(/^This date stands there already\. Change it/)).toBeVisible();
  expect(screen.getByLabelText('Day 2')).toHaveAccessibleDescription(/stands there already/);
});

it('a further day tells that the hours do not reach', async () => {
  await twoDays(1);
  await userEvent.click(screen.getByRole('button', { name: 'Your hours' }));
  // Twice 7 hours; 11.5 are told.
  expect(await screen.findByText(/^The stall is open 14 h, and your hours say 11 h 30 min:/)).toBeVisible();
});

it('holds the takings to expect against the fee of the stall', async () => {
  await enter(<StallDayScreen stallDayId={SPRING_FAIR_ID} />);
  await userEvent.click(await screen.findByRole('button', { name: 'What staying would save' }));
  // 1,424.87 over the weathers and 7 % tax are 1,524.61; the stall is 85.00: 17.9 times.
  expect(
    await screen.findByText(/^Takings to expect are 17\.9 times the stall fee: 8 to 10 is a good/),
  ).toBeVisible();
  const isNoFee = (now: StallDay) => ({
    ...now,
    costs: now.costs.map((cost) => ({ ...cost, isStallFee: false })),
  });
  await act(async () => {
    screenStore().actions.edit('Change', [
      { do: 'change', kind: 'stallDay', id: SPRING_FAIR_ID, to: isNoFee },
    ]);
  });
  await eventually(() => expect(screen.queryByText(/times the stall fee/)).toBeNull());
});
