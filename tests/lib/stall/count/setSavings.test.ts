import { describe, expect, it } from 'vitest';
import { openTicket } from '@/lib/stall/count/openTicket';
import type { StallPlan } from '@/shared/schemas/stallPapers';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { aTapLog, fairGoods, goodsOf, saleOf, tapOn } from '@/tests/fixtures/stallTaps';

const [pair] = fairPlan.sets;
if (pair === undefined) throw new Error('the fair has no pair');
/** Any two, shirts or mugs, for 50. */
const any: StallPlan = { ...fairPlan, sets: [{ ...pair, rangeIds: ['shirts', 'mugs'], sizes: null }] };

const setsOf = (plan: StallPlan, ...pieces: readonly ReturnType<typeof fairGoods>[]) => {
  const log = aTapLog();
  for (const goods of pieces) tapOn(log, saleOf(goods));
  return openTicket(plan, log.taps, log.device).sets.map(({ minor }) => minor);
};

describe('a set on a ticket', () => {
  const [small, large, mug] = [fairGoods('fern', 'L'), fairGoods('fern', '2XL'), fairGoods('otter')];

  it('is of the dearest pieces it fits, in whatever order they were tapped', () => {
    // Two of 28 and one of 31: 59 for 50.
    expect(setsOf(any, small, small, large)).toEqual([900]);
    expect(setsOf(any, large, small, small)).toEqual([900]);
  });

  it('is not offered where its pieces cost less one by one, or as much', () => {
    // Two mugs at 16 are 32; a mug and a shirt 44.
    expect(setsOf(any, mug, mug)).toEqual([]);
    expect(setsOf(any, small, mug)).toEqual([]);
    const log = aTapLog();
    for (let at = 0; at < 2; at += 1)
      tapOn(log, { what: 'sale', goods: goodsOf(small), minor: 2500, isOwnPrice: true, pay: 'card' });
    expect(openTicket(any, log.taps, log.device).sets).toEqual([]);
    expect(setsOf(any, small, small)).toEqual([600]);
  });
});
