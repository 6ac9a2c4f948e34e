import { expect, it } from 'vitest';
import { formatterFor } from '@/app/_words/formatter';
import { quoteDayCautions } from '@/app/_words/orders/quote/quoteDayWords';
import { club } from '@/tests/fixtures/clubJob';

const formatter = formatterFor(club().workshop);
const dates = { orderBlanksBy: null, approveBy: null, ready: '2026-12-16', leadDays: 11 };
const validUntil = '2026-12-10';
const told = (leadDays: number | null, wantedOn: string | null) =>
  quoteDayCautions({ leadDays }, { wantedOn, dates, validUntil }, formatter).map(({ sentence }) => sentence);

it('a wanted day that is not promised and a lead time that is too short are told, others are not', () => {
  expect(told(1, '2026-12-14')).toEqual([
    'It is wanted on Dec 14, 2026, and that cannot be kept beside what was accepted.',
    'A lead time of 1 working day is shorter than the bench can keep.',
  ]);
  expect(told(11, '2026-12-16')).toEqual([]);
  expect(told(null, null)).toEqual([]);
});

it('a quote that can be accepted after the last day to approve is told, one that ends on it is not', () => {
  const cautions = (approveBy: string | null) =>
    quoteDayCautions(
      { leadDays: null },
      { wantedOn: '2026-12-16', dates: { ...dates, approveBy }, validUntil },
      formatter,
    );
  expect(cautions('2026-12-09')).toEqual([
    {
      sentence:
        'It is valid until Dec 10, 2026, and its answer may come after Dec 9, 2026, the last day to approve.',
      detail: 'Dec 16, 2026 cannot be kept then. Let it be valid for fewer days, or agree on a later day.',
    },
  ]);
  expect(cautions('2026-12-10')).toEqual([]);
  expect(cautions(null)).toEqual([]);
});
