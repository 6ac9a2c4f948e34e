import { expect, it } from 'vitest';
import { paidOfRun } from '@/lib/variances/paidOfRun';
import { paymentSchema } from '@/shared/schemas/orderEvents';

const payment = (orderId: string, kind: 'payment' | 'refund', amountMinor: number, currency = 'USD') =>
  paymentSchema.parse({ orderId, day: '2026-12-12', kind, amountMinor, currency, way: 'cash' });
const work = (orderId: string | null) => ({ jobId: 'job', orderId, stallDayId: null });
const runs = {
  club: { works: [work('club'), work('choir')] },
  more: { works: [work('choir')] },
  stall: { works: [work(null)] },
};
const payments = [
  payment('club', 'payment', 38_066),
  payment('choir', 'payment', 10_000),
  payment('choir', 'refund', 1_500),
  payment('club', 'payment', 9_999, 'EUR'),
  payment('other', 'payment', 7_777),
];

it('adds what came for the orders of a run, less what went back, in one currency', () => {
  expect(paidOfRun('club', runs, payments, 'USD')).toEqual({
    ...{ minor: 38_066 + 8_500, isShared: true, isElsewhere: true },
  });
});

it('tells nothing where no order waits, and no sum where nobody noted a payment: missing is not 0', () => {
  expect(paidOfRun('stall', runs, payments, 'USD')).toBeNull();
  const more = { more: runs.more };
  expect(paidOfRun('more', more, [], 'USD')).toEqual({ minor: null, isShared: false, isElsewhere: false });
  const euros = [payment('choir', 'payment', 900, 'EUR')];
  expect(paidOfRun('more', more, euros, 'USD')).toEqual({ minor: null, isShared: false, isElsewhere: true });
  // What came and went back is noted, and is 0.
  const back = [payment('choir', 'payment', 900), payment('choir', 'refund', 900)];
  expect(paidOfRun('more', more, back, 'USD')).toEqual({ minor: 0, isShared: false, isElsewhere: false });
});
