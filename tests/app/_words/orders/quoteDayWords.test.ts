import { expect, it } from 'vitest';
import { formatterFor } from '@/app/_words/formatter';
import { quoteDayCautions } from '@/app/_words/orders/quoteDayWords';
import { club } from '@/tests/fixtures/clubJob';

const formatter = formatterFor(club().workshop);
const dates = { orderBlanksBy: null, approveBy: null, ready: '2026-12-16', leadDays: 11 };
const told = (leadDays: number | null, wantedOn: string | null) =>
  quoteDayCautions({ leadDays }, { wantedOn, dates }, formatter).map(({ sentence }) => sentence);

it('a wanted day that is not promised and a lead time that is too short are told, others are not', () => {
  expect(told(1, '2026-12-14')).toEqual([
    'It is wanted on Dec 14, 2026, and that cannot be kept beside what was accepted.',
    'A lead time of 1 working day is shorter than the bench can keep.',
  ]);
  expect(told(11, '2026-12-16')).toEqual([]);
  expect(told(null, null)).toEqual([]);
});
