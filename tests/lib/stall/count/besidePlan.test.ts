import { describe, expect, it } from 'vitest';
import { besidePlan } from '@/lib/stall/count/besidePlan';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { fairGoods, goodsOf } from '@/tests/fixtures/stallTaps';

const otterL = fairGoods('otter', 'L');
const fernS = fairGoods('fern', 'S');
const without = { ...fairPlan, goods: fairPlan.goods.filter((one) => one !== otterL) };
const priced = (price: number, currency = 'USD') => ({
  body: { ...fairPlan, currency, goods: fairPlan.goods.map((one) => ({ ...one, price })) },
});
const tapped = [goodsOf(fernS), goodsOf(otterL)];

describe('besidePlan', () => {
  it('names what was tapped and left the plan, as the newest plan before does', () => {
    expect(besidePlan(without, [priced(2700), priced(2600)], tapped)).toEqual([{ ...otterL, price: 2700 }]);
  });

  it('names nothing that the plan itself names', () => {
    expect(besidePlan(fairPlan, [priced(2700)], tapped)).toEqual([]);
  });

  it('leaves out what no plan names', () => {
    expect(besidePlan(without, [{ body: without }], tapped)).toEqual([]);
  });

  it('takes no price from a plan in another currency', () => {
    expect(besidePlan(without, [priced(2700, 'CHF'), priced(2600)], tapped)).toEqual([
      { ...otterL, price: 2600 },
    ]);
    expect(besidePlan(without, [priced(2700, 'CHF')], tapped)).toEqual([]);
  });
});
