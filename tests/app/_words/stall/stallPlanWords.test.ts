import { expect, it } from 'vitest';
import { weatherAnswer } from '@/app/_words/stall/stallPlanWords';
import { fairAsked, plannedFair } from '@/tests/fixtures/fairAsked';

const { stallDay, workshop } = fairAsked;
const reader = { locale: workshop.locale, currency: workshop.currency };

it('what the weather does is told of weathers that can be', () => {
  const { mine } = plannedFair();
  const told = (chances: readonly number[]) => {
    const outcomes = mine.outcomes.map((one, at) => ({
      ...one,
      chance: chances[at] ?? 0,
      profit: [500, 90, -390][at] ?? 0,
    }));
    return weatherAnswer({ ...mine, outcomes }, null, stallDay, reader);
  };
  expect(told([0.65, 0.25, 0.1])).toEqual({
    key: '500.00 when it is dry',
    after: ', −390.00 when it is wet',
  });
  expect(told([0.75, 0.25, 0])).toEqual({ key: '500.00 when it is dry', after: ', 90.00 with showers' });
  expect(told([0, 1, 0])).toEqual({ key: '90.00', after: ' showers' });
});
