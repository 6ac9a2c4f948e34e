import { expect, it } from 'vitest';
import { carListSource } from '@/app/_stallCar/carListSource';
import type { CarOnScreen, StallPart } from '@/app/_stallCar/carOnScreen';
import { shortDay } from '@/app/_words/orders/orderDayWords';
import { addDays } from '@/shared/days';
import type { StallPlan } from '@/shared/schemas/stallPapers';
import { fairAsked } from '@/tests/fixtures/fairAsked';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

const [day] = fairPlan.days;
if (day === undefined) throw new Error('the fair has no day');
const today = { ...day, day: TEST_DAY };
const tomorrow = { ...day, day: addDays(TEST_DAY, 1) };
const on = (one: typeof day) => shortDay(one.day, TEST_DAY, 'en-US');

function rangesOf(days: StallPlan['days']) {
  const { stallDay, workshop } = fairAsked;
  const part = { workspace: { workshop }, stallDay, today: TEST_DAY } as unknown as StallPart;
  const car = { plans: { counts: { body: { ...fairPlan, days } } }, toIssue: null, float: [] };
  const source = carListSource(part, car as unknown as CarOnScreen, 'a4');
  if (source?.kind !== 'carList') throw new Error('no list');
  return source.body.ranges.map(({ name, designs }) => ({
    name,
    pieces: designs.flatMap(({ bring }) => bring).reduce((sum, count) => sum + count, 0),
    fern: designs.find((one) => one.name === 'Fern')?.bring,
  }));
}

it('a list to load by is of one load for one day', () => {
  expect(rangesOf([today]).map(({ name, pieces }) => [name, pieces])).toEqual([
    ['Shirts', 96],
    ['Mugs', 36],
  ]);
});

it('a list to load by has what goes on the table first and what is refilled overnight, which are all that is brought', () => {
  const [first, second, ...mugs] = rangesOf([today, tomorrow]);
  // Of 4, 8, 9, 6, 2 and 1 Fern half each, the odd one on the first day; no design has a second 3XL.
  expect(first).toMatchObject({ name: `Shirts, for ${on(today)}`, fern: [2, 4, 5, 3, 1, 1] });
  expect(second).toMatchObject({ name: `Shirts, overnight for ${on(tomorrow)}`, fern: [2, 4, 4, 3, 1] });
  expect((first?.pieces ?? 0) + (second?.pieces ?? 0)).toBe(96);
  // Three designs of 12.
  expect(mugs.map(({ name, pieces }) => [name, pieces])).toEqual([
    [`Mugs, for ${on(today)}`, 18],
    [`Mugs, overnight for ${on(tomorrow)}`, 18],
  ]);
});
