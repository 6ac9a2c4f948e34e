import { expect, it } from 'vitest';
import { foldTaps } from '@/lib/stall/count/foldTaps';
import type { TappedEntry } from '@/lib/stall/count/tappedEntry';
import { tapsSince } from '@/lib/stall/count/tapsSince';
import { closeBody } from '@/lib/stall/evening/closeBody';
import { noAnswers } from '@/lib/stall/evening/eveningAnswers';
import { reconcile } from '@/lib/stall/evening/reconcile';
import { dayCloseSchema } from '@/shared/schemas/stallPapers';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { aTapLog, fairGoods, saleOf, tapOn } from '@/tests/fixtures/stallTaps';
import { fairClock } from '@/tests/lib/stall/evening/fairEvening';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

/* Two Fern L for 28.00 each were sold and the day closed; a third, Fern 2XL for 31.00, came later. */

const log = aTapLog();
const first = tapOn(log, saleOf(fairGoods('fern', 'L')));
const second = tapOn(log, saleOf(fairGoods('fern', 'L')));
const third = tapOn(log, saleOf(fairGoods('fern', '2XL')));

const eveningOf = (taps: readonly TappedEntry[]) =>
  reconcile(fairPlan, foldTaps(fairPlan, taps, fairClock), noAnswers, fairClock);
const close = dayCloseSchema.parse(
  closeBody(eveningOf([first, second]), {
    ...{ number: { count: 1, letter: 'A' }, issuedOn: TEST_DAY, planId: 'plan-1' },
    ...{ answers: noAnswers, clock: fairClock },
  }),
);

it.each([
  ['the same', [first, second], 0],
  ['the same in another order, one twice', [second, first, second], 0],
  ['one more', [first, second, third], 1],
  ['one fewer', [first], -1],
  ['none any more', [], -2],
  ['as many, and others', [first, third], 'others'],
] as const)('a close knows its taps: %s', (_, taps, since) => {
  expect(tapsSince(close, taps)).toBe(since);
});

it('taps that took the place of others come to other takings', () => {
  expect(close.money.gross).toBe(5600);
  expect(eveningOf([first, third]).money.gross).toBe(5900);
});

it('a close that kept no digest knows its taps by their number alone', () => {
  const { tapsDigest: _, ...before } = close;
  expect(tapsSince(before, [first, third])).toBe(0);
  expect(tapsSince(before, [first])).toBe(-1);
});
