import { expect, it } from 'vitest';
import { finishedFor } from '@/lib/stall/car/finishedFor';
import type { FixedPlan } from '@/lib/stall/car/plansOf';
import { closeBody } from '@/lib/stall/evening/closeBody';
import type { Pile } from '@/lib/stock/foldStock';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { fairAnswers, fairClock, fairEvening } from '@/tests/lib/stall/evening/fairEvening';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

const fern = { jobId: 'fair-shirts', lineId: 'fern', size: 'M' };
const otter = { jobId: 'fair-shirts', lineId: 'otter', size: 'L' };
const pile = (goods: typeof fern, place: 'home' | 'van', quantity: number): Pile => ({
  ...{ item: { kind: 'finished', ...goods }, place: { kind: place }, grade: 'first', quantity },
  ...{ lots: [], counted: null },
});
const piles = [
  pile(fern, 'home', 2),
  pile(fern, 'van', 8),
  pile(otter, 'van', 7),
  { ...pile(otter, 'van', 1), grade: 'second' } as const,
];
const plan: FixedPlan = {
  ...{ id: 'plan-1', at: 10, device: 'devicea1', number: { count: 1, letter: 'A' } },
  ...{ body: fairPlan, withdrawn: false },
};
const close = closeBody(fairEvening(fairAnswers), {
  ...{ number: { count: 1, letter: 'A' }, issuedOn: TEST_DAY, planId: 'plan-1' },
  ...{ answers: fairAnswers, clock: fairClock },
});

const atHome = [{ ...fern, pieces: 2 }];

it('a day is planned with what lies at home before its plan is fixed', () => {
  expect(finishedFor('spring-fair', piles, { stallPlan: [], dayClose: [] })).toEqual(atHome);
  expect(finishedFor('autumn-fair', piles, { stallPlan: [plan], dayClose: [] })).toEqual(atHome);
});

it('a day whose plan is fixed is planned with what lies in the car too, first grade alone', () => {
  expect(finishedFor('spring-fair', piles, { stallPlan: [plan], dayClose: [] })).toEqual([
    { ...fern, pieces: 10 },
    { ...otter, pieces: 7 },
  ]);
});

it('a plan that was taken back and a day that was closed have nothing in the car', () => {
  const takenBack = { ...plan, withdrawn: true };
  expect(finishedFor('spring-fair', piles, { stallPlan: [takenBack], dayClose: [] })).toEqual(atHome);
  const closed = { stallPlan: [plan], dayClose: [{ id: 'close-1', body: close, withdrawn: false }] };
  expect(finishedFor('spring-fair', piles, closed)).toEqual(atHome);
});
