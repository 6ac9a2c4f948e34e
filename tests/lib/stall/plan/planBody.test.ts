import { describe, expect, it } from 'vitest';
import { exampleWorkshop } from '@/lib/examples/exampleWorkshop';
import { fairMugs, fairShirts } from '@/lib/examples/fairJobs';
import { springFair } from '@/lib/examples/springFair';
import { type PlanToFix, planBody } from '@/lib/stall/plan/planBody';
import type { StallPlan } from '@/shared/schemas/stallPapers';
import { stallPlanSchema } from '@/shared/schemas/stallPapers';
import { fairAnswer } from '@/tests/fixtures/stallAnswer';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

const stallDay = springFair({
  day: TEST_DAY,
  fairDay: TEST_DAY,
  jobs: { 'fair-shirts': fairShirts(TEST_DAY).job, 'fair-mugs': fairMugs(TEST_DAY).job },
  times: 1,
  isMetric: false,
});
const asked: PlanToFix = {
  stallDayId: 'spring-fair',
  day: TEST_DAY,
  stallDay,
  workshop: exampleWorkshop(TEST_DAY),
  answer: fairAnswer,
  float: fairPlan.float,
};
const number = { count: 1, letter: 'A' } as const;

function bodyOf(change: Partial<PlanToFix> = {}): StallPlan {
  const made = planBody({ ...asked, ...change });
  if (made.kind === 'refused') throw new Error(JSON.stringify(made.obstacles));
  return stallPlanSchema.parse(made.body(number));
}
const obstaclesOf = (change: Partial<PlanToFix>) => {
  const made = planBody({ ...asked, ...change });
  return made.kind === 'refused' ? made.obstacles : [];
};
const pricedLate = (price: number) => ({
  ...stallDay,
  prices: {
    ...stallDay.prices,
    lastHour: { fromMinute: 960, prices: [{ jobId: 'fair-shirts', lineId: 'fern', size: null, price }] },
  },
});

describe('a plan that is fixed', () => {
  it('says how many sizes of designs are too many', () => {
    const [one] = fairAnswer.goods;
    if (one === undefined) throw new Error('the fair has goods');
    const goods = Array.from({ length: 1501 }, (_, at) => ({ ...one, lineId: `line-${at}` }));
    expect(obstaclesOf({ answer: { ...fairAnswer, goods } })).toEqual([
      { kind: 'tooManyGoods', goods: 1501, most: 1500 },
    ]);
  });

  it('says of the worked fair what was typed for it by hand', () => {
    const { costs, ...rest } = bodyOf();
    const { costs: typed, ...typedRest } = fairPlan;
    // There is no commission, so nothing hangs on what it is taken of.
    expect(rest).toEqual({ ...typedRest, commissionBase: 'withoutTax' });
    // 85 + 15 spent either way, 27.60 + 6 + 12 saved by staying; 3,360 a year on 800 hours is 4.20.
    for (const name of ['cash', 'avoidable', 'overheadPerHour'] as const)
      expect(costs[name]).toBeCloseTo(typed[name], 9);
    expect(costs).toMatchObject({ stallFee: 85, hours: 11.5, wage: 18, batch: 98.17, benchHours: 12.67 });
  });

  it('takes the price of seconds along, and none where nobody said', () => {
    const prices = { ...stallDay.prices, secondsShare: 0.5 };
    expect(bodyOf({ stallDay: { ...stallDay, prices } }).secondsShare).toBe(0.5);
    const unsaid = { ...stallDay.prices, secondsShare: null };
    expect(bodyOf({ stallDay: { ...stallDay, prices: unsaid } })).not.toHaveProperty('secondsShare');
  });

  it('tells of all pieces that were finished before, for a refill takes them too, and none that were pressed for the day', () => {
    const [first, second, ...others] = fairAnswer.goods;
    if (first === undefined || second === undefined) throw new Error('no goods');
    const goods = [{ ...first, finishedBefore: 9 }, { ...second, atHome: 8, finishedBefore: 3 }, ...others];
    expect(
      bodyOf({ answer: { ...fairAnswer, goods } })
        .goods.slice(0, 3)
        .map(({ bring, fromHome }) => [bring, fromHome]),
    ).toEqual([
      [4, 9],
      [8, 3],
      [9, 0],
    ]);
  });

  it('has the prices of the last hour, for goods whose price falls alone', () => {
    const { goods, lastHourFrom } = bodyOf({ stallDay: pricedLate(28) });
    expect(lastHourFrom).toBe(960);
    // 28 stays 28; 31 of 2XL and 3XL falls to 28.
    expect(goods.filter(({ lineId }) => lineId === 'fern').map((one) => one.lastHourPrice)).toEqual([
      ...[null, null, null, null, 2800, 2800],
      null,
    ]);
  });

  it('has money in the minor units of its currency', () => {
    const { goods } = bodyOf({ answer: { ...fairAnswer, currency: 'JPY' } });
    expect(goods[0]?.price).toBe(28);
  });
});

describe('a plan is not fixed', () => {
  it('while the planning itself is refused, for the same reasons', () => {
    expect(obstaclesOf({ answer: { kind: 'refused', troubles: [{ kind: 'noWeather' }] } })).toEqual([
      { kind: 'trouble', trouble: { kind: 'noWeather' } },
    ]);
  });

  it('with nothing to bring, or with a set that has no price, and says both at once', () => {
    const [set] = stallDay.prices.sets;
    if (set === undefined) throw new Error('no set');
    const sets = [{ ...set, price: null }];
    expect(
      obstaclesOf({
        stallDay: { ...stallDay, prices: { ...stallDay.prices, sets } },
        answer: { ...fairAnswer, mine: { ...fairAnswer.mine, pieces: 0 } },
      }),
    ).toEqual([
      { kind: 'nothingBrought' },
      { kind: 'setWithoutPrice', setId: 'two-shirts', name: 'Two shirts' },
    ]);
  });

  it('without a way of selling or a day', () => {
    expect(obstaclesOf({ stallDay: { ...stallDay, channelId: null, days: [] } })).toEqual([
      { kind: 'trouble', trouble: { kind: 'noChannel' } },
      { kind: 'trouble', trouble: { kind: 'noDays' } },
    ]);
  });
});
