import { describe, expect, it } from 'vitest';
import { planDifferences } from '@/lib/stall/car/planDifferences';
import { type FixedPlan, plansCountedBy, plansOf } from '@/lib/stall/car/plansOf';
import { fairPlan } from '@/tests/fixtures/stallPlan';

const plan = (id: string, at: number, more: Partial<FixedPlan> = {}): FixedPlan => ({
  ...{ id, at, device: 'devicea1', number: { count: 1, letter: 'A' }, body: fairPlan, withdrawn: false },
  ...more,
});
const none: ReadonlySet<string> = new Set();
const names = (plans: readonly FixedPlan[]) => plans.map(({ id }) => id);

describe('the plans of a stall day', () => {
  const first = plan('one', 10);
  const second = plan('two', 20, { device: 'deviceb2' });
  const other = plan('other', 99, { body: { ...fairPlan, stallDayId: 'autumn-fair' } });

  it('are counted by the newest, in whatever order they came', () => {
    for (const papers of [
      [first, second, other],
      [other, second, first],
    ]) {
      const found = plansOf(papers, 'spring-fair', none);
      expect(found.counts?.id).toBe('two');
      expect(names(found.earlier)).toEqual(['one']);
      expect(found.isOfSeveral).toBe(true);
    }
  });

  it('are counted by the one before where the newest was taken back', () => {
    const found = plansOf([first, { ...second, withdrawn: true }], 'spring-fair', none);
    expect([found.counts?.id, found.earlier.length, names(found.withdrawn)]).toEqual(['one', 0, ['two']]);
    expect(found.isOfSeveral).toBe(false);
  });

  it('are counted by the same on every device where two are of one moment', () => {
    const [a, b] = [plan('a', 10), plan('b', 10)];
    expect(plansOf([a, b], 'spring-fair', none).counts?.id).toBe('b');
    expect(plansOf([b, a], 'spring-fair', none).counts?.id).toBe('b');
  });

  it('are counted by one that was taken back where a tap or a close names it, for no count may be hidden', () => {
    const back = { ...second, withdrawn: true };
    const tapped = plansCountedBy([{ body: { planId: 'two' } }], []);
    const found = plansOf([first, back], 'spring-fair', tapped);
    expect([found.counts?.id, found.isTakenBack]).toEqual(['two', true]);
    expect([names(found.earlier), found.withdrawn, found.isOfSeveral]).toEqual([['one'], [], false]);
    const closed = plansCountedBy([], [{ body: { planId: 'two' }, withdrawn: false }]);
    expect(plansOf([back], 'spring-fair', closed).counts?.id).toBe('two');
  });

  it('are counted by another one where a close was withdrawn, or a newer plan stands', () => {
    const back = { ...second, withdrawn: true };
    const undone = plansCountedBy(
      [],
      [
        { body: { planId: 'two' }, withdrawn: true },
        { body: { planId: null }, withdrawn: false },
      ],
    );
    expect(plansOf([back], 'spring-fair', undone).counts).toBeNull();
    const third = plan('three', 30);
    const found = plansOf([back, third], 'spring-fair', new Set(['two']));
    expect([found.counts?.id, found.isTakenBack, names(found.earlier)]).toEqual(['three', false, ['two']]);
  });

  it('are none where none was fixed', () => {
    expect(plansOf([other], 'spring-fair', none).counts).toBeNull();
  });
});

describe('a second plan', () => {
  const [fern, ...rest] = fairPlan.goods;
  if (fern === undefined) throw new Error('no goods');

  it('that says the same differs in nothing, whatever it expects to come of it', () => {
    expect(planDifferences(fairPlan, { ...fairPlan, weightedProfit: 12, outcomes: [] })).toBeNull();
  });

  it('tells which goods it brings more or fewer of, those that came or went among them', () => {
    const { goods: _, ...plain } = fairPlan;
    // 4 Fern in S become 3; the last mug, 12 Star Map, stays at home.
    const goods = [{ ...fern, bring: 3 }, ...rest.slice(0, -1)];
    expect(planDifferences(fairPlan, { ...plain, goods })).toMatchObject({
      bring: [
        { lineId: 'fern', size: 'S', before: 4, now: 3 },
        { lineId: 'star-map', size: '11 oz', before: 12, now: 0 },
      ],
      prices: [],
      pieces: { before: 132, now: 119 },
    });
  });

  it('tells nothing else where what making costs once only follows the pieces', () => {
    const costs = { ...fairPlan.costs, batch: 99.5, benchHours: 12.8 };
    const more = { ...fairPlan, costs, goods: [{ ...fern, bring: 5 }, ...rest] };
    expect(planDifferences(fairPlan, more)).toMatchObject({ isOtherCost: false, isOtherwise: false });
    const finished = { ...fairPlan, costs, goods: [{ ...fern, fromHome: 2 }, ...rest] };
    expect(planDifferences(fairPlan, finished)).toMatchObject({ isOtherCost: true, isOtherwise: false });
    // Of the same pieces it is preparing or the bench that costs something else.
    expect(planDifferences(fairPlan, { ...fairPlan, costs })?.isOtherwise).toBe(true);
    const fee = { ...costs, stallFee: 90 };
    expect(planDifferences(fairPlan, { ...more, costs: fee })?.isOtherwise).toBe(true);
  });

  it('tells late prices and seconds of goods of both plans alone', () => {
    const late = (goods: typeof fairPlan.goods) =>
      goods.map((one) => ({ ...one, lastHourPrice: 2000, seconds: 1 }));
    const before = { ...fairPlan, goods: late([fern, ...rest]) };
    const isOtherwise = (goods: typeof fairPlan.goods) =>
      planDifferences(before, { ...fairPlan, goods })?.isOtherwise;
    expect(isOtherwise(late(rest))).toBe(false);
    expect(isOtherwise([{ ...fern, lastHourPrice: 2000 }, ...late(rest)])).toBe(true);
    expect(isOtherwise([{ ...fern, lastHourPrice: 1900, seconds: 1 }, ...late(rest)])).toBe(true);
  });

  it('tells prices that changed, and that something else did', () => {
    const goods = [{ ...fern, price: 3000 }, ...rest];
    expect(planDifferences(fairPlan, { ...fairPlan, goods })).toMatchObject({
      bring: [],
      prices: [{ lineId: 'fern', size: 'S', before: 2800, now: 3000 }],
      isOtherwise: false,
    });
    expect(planDifferences(fairPlan, { ...fairPlan, lastHourFrom: 960 })?.isOtherwise).toBe(true);
  });

  it('tells what seconds cost, with a price of their own and without', () => {
    const half = { ...fairPlan, secondsShare: 0.5 };
    expect(planDifferences(half, { ...fairPlan, secondsShare: 0.7 })).toMatchObject({
      secondsShare: { before: 0.5, now: 0.7 },
      isOtherwise: false,
    });
    expect(planDifferences(half, fairPlan)?.secondsShare).toEqual({ before: 0.5, now: null });
    expect(planDifferences(half, half)).toBeNull();
  });

  it.each([
    ['a name', { name: 'fog' }],
    ['an id', { id: 'fog' }],
    ['a factor', { factor: 0.4 }],
    ['a chance', { chance: 0.2 }],
  ])('tells that a weather has %s of its own, for it is tapped and held against the plan', (_, more) => {
    const [dry, ...others] = fairPlan.weathers;
    if (dry === undefined) throw new Error('no weather');
    const now = { ...fairPlan, weathers: [{ ...dry, ...more }, ...others] };
    expect(planDifferences(fairPlan, now)).toMatchObject({ isOtherWeather: true, isOtherwise: false });
  });

  it.each([{ cost: 9 }, { cost: null }, { packaging: 1 }, { leftoverShare: 0 }, { fromHome: 2 }])(
    'tells that goods cost something else: %o',
    (more) => {
      const now = { ...fairPlan, goods: [{ ...fern, ...more }, ...rest] };
      expect(planDifferences(fairPlan, now)).toMatchObject({ bring: [], isOtherCost: true });
    },
  );

  it('tells nothing of what differs by the order of sums alone', () => {
    // 6.543 and the next number that can be written.
    const now = { ...fairPlan, goods: [{ ...fern, cost: 6.543000000000001 }, ...rest] };
    expect(fern.cost).toBe(6.543);
    expect(planDifferences(fairPlan, now)).toBeNull();
  });
});
