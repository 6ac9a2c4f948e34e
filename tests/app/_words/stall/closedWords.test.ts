import { expect, it } from 'vitest';
import { closedAgainst } from '@/app/_words/stall/closedWords';
import { addDays } from '@/shared/days';
import type { StallPlan } from '@/shared/schemas/stallPapers';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

const SECOND = addDays(TEST_DAY, 1);
const amount = (money: number) => money.toFixed(2);

const [day] = fairPlan.days;
const [outcome] = fairPlan.outcomes;
if (day === undefined || outcome === undefined) throw new Error('the fair has no day');

/** Two days that weigh the same: an order of the same weathers is told once, by the first. */
const twoDays: StallPlan = {
  ...fairPlan,
  days: [day, { ...day, day: SECOND }],
  outcomes: [
    { ...outcome, weather: 'dry, dry', weatherIds: ['dry', 'dry'], profit: 800 },
    { ...outcome, weather: 'dry, wet', weatherIds: ['dry', 'wet'], profit: 300 },
    { ...outcome, weather: 'wet, wet', weatherIds: ['wet', 'wet'], profit: -100 },
  ],
};

const held = (...parts: readonly (readonly [string, string, number])[]) => ({
  weather: {
    factor: 1,
    parts: parts.map(([on, weatherId, minutes]) => ({ day: on, weatherId, minutes })),
  },
});

it.each([
  [held([TEST_DAY, 'dry', 420], [SECOND, 'dry', 420]), 'the plan had 800.00 when it is dry on both days'],
  [held([TEST_DAY, 'dry', 420], [SECOND, 'wet', 420]), 'the plan had 300.00 when it is dry and wet'],
  // The other way round, and wet for the longer part of the first day.
  [
    held([TEST_DAY, 'dry', 120], [TEST_DAY, 'wet', 300], [SECOND, 'dry', 420]),
    'the plan had 300.00 when it is dry and wet',
  ],
  // Of one day nobody said it.
  [held([TEST_DAY, 'dry', 420]), 'the plan had 337.25, over the weathers'],
  [{ weather: null }, 'the plan had 337.25, over the weathers'],
])('a closed fair of two days is told beside its plan in their weathers', (close, told) => {
  expect(closedAgainst(close, twoDays, amount)).toBe(`profit; ${told}`);
});

it('a closed fair whose plan is not here tells no plan', () => {
  expect(closedAgainst(held([TEST_DAY, 'dry', 420]), null, amount)).toBe('profit');
});
