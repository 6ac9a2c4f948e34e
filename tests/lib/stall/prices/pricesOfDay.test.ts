import { describe, expect, it } from 'vitest';
import { exampleWorkshop } from '@/lib/examples/exampleWorkshop';
import { fairMugs, fairShirts } from '@/lib/examples/fairJobs';
import { springFair } from '@/lib/examples/springFair';
import { dayPriceOf } from '@/lib/stall/plan/costs/dayPriceOf';
import { sellingTerms } from '@/lib/stall/plan/costs/sellingTerms';
import { pricesOfDay } from '@/lib/stall/prices/pricesOfDay';
import { withPrice } from '@/lib/stall/prices/withPrice';
import type { DayPrice, SetOffer } from '@/shared/schemas/stallDay';
import { fairAnswer } from '@/tests/fixtures/stallAnswer';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

const stallDay = springFair({
  day: TEST_DAY,
  fairDay: TEST_DAY,
  jobs: { 'fair-shirts': fairShirts(TEST_DAY).job, 'fair-mugs': fairMugs(TEST_DAY).job },
  times: 1,
  isMetric: false,
});
const channel = exampleWorkshop(TEST_DAY).channels.find(({ id }) => id === 'stall');
const terms = channel === undefined ? null : sellingTerms(channel);
if (terms === null) throw new Error('the example has no stall');
const asked = {
  ...{ answer: fairAnswer, stallDay, terms, ceilingOf: () => null, atShopOf: () => null, step: 5 },
};

describe('the prices of the worked fair', () => {
  const { rows, sets } = pricesOfDay(asked);

  it('are three, each between its neighbours on fives', () => {
    expect(rows.map(({ price, neighbours }) => [price, neighbours.rows.map((one) => one.price)])).toEqual([
      [28, [25, 28, 30]],
      [31, [30, 31, 35]],
      [16, [15, 16, 20]],
    ]);
  });

  it('earn about 71 more with shirts at 30: 39 of them up to XL at 1.83 each', () => {
    // 0.915079 of two is 1.830159 a piece; what is sold of S to XL is what the fair sells less its larger sizes.
    const small = fairAnswer.goods.reduce((sum, { price, sold }) => sum + (price === 28 ? sold : 0), 0);
    expect(rows[0]?.neighbours.rows[2]?.more).toBeCloseTo(small * 1.830159, 4);
    expect(rows[0]?.neighbours.recommended).toBe('above');
  });

  it('have the floors of the goods that need most: Star Map, 6.609 and a bag', () => {
    // (6.609 + 0.19 + 0.055556) ÷ 0.915079.
    expect(rows[0]?.floors.making).toBeCloseTo(7.49067, 4);
  });

  it('judge the pair by shirts up to XL alone: 56 one by one', () => {
    expect(sets.map(({ set, judged }) => [set.name, judged?.singles, judged?.saves])).toEqual([
      ['Two shirts', 56, 6],
    ]);
  });

  it('judge a set by goods that are of its ranges and of its sizes, and one of none not at all', () => {
    const [pair] = stallDay.prices.sets;
    if (pair === undefined) throw new Error('the fair has no pair');
    const judgedOf = (set: Partial<SetOffer>) =>
      pricesOfDay({
        ...asked,
        stallDay: { ...stallDay, prices: { ...stallDay.prices, sets: [{ ...pair, ...set }] } },
      }).sets[0]?.judged;
    // Two larger shirts are 31 each; a mug comes in no size of a shirt.
    expect(judgedOf({ sizes: ['2XL', '3XL'] })).toMatchObject({ singles: 62, saves: 12 });
    expect(judgedOf({ rangeIds: ['mugs'], sizes: ['M'] })).toBeNull();
  });

  it('go by the lowest of several ceilings', () => {
    const ceilings: Readonly<Record<string, number>> = { fern: 40, otter: 29, lighthouse: 35 };
    const { rows: capped } = pricesOfDay({ ...asked, ceilingOf: ({ lineId }) => ceilings[lineId] ?? null });
    expect(capped.map(({ ceiling }) => ceiling)).toEqual([29, 29, 29]);
  });

  it('have no floor where fees take all that one of the goods brings', () => {
    // 28 ÷ 1.07 = 26.17, all of it fees.
    const goods = fairAnswer.goods.map((one) =>
      one.lineId === 'otter' && one.size === 'L' ? { ...one, fees: 26.5 } : one,
    );
    const { rows: poor } = pricesOfDay({ ...asked, answer: { ...fairAnswer, goods } });
    expect(poor[0]?.floors).toEqual({ takeHome: null, making: null, withOverhead: null });
    expect(poor[1]?.floors.making).not.toBeNull();
  });

  it('say from which last-hour price on a pair saves nothing: two at 25 are the 50 of the pair', () => {
    const lateOf = (price: number) => {
      const prices = ['fern', 'lighthouse', 'otter', 'star-map'].map((lineId) => ({
        ...{ jobId: 'fair-shirts', lineId, size: null, price },
      }));
      const late = { ...stallDay.prices, lastHour: { fromMinute: 960, prices } };
      return pricesOfDay({ ...asked, stallDay: { ...stallDay, prices: late } }).sets[0]?.lateSingles;
    };
    expect([26, 25, 24].map(lateOf)).toEqual([null, 50, 48]);
    expect(sets[0]?.lateSingles).toBeNull();
  });

  it('know a ceiling of one design for all that share its price', () => {
    const { rows: capped } = pricesOfDay({
      ...asked,
      ceilingOf: ({ lineId }) => (lineId === 'otter' ? 29 : null),
    });
    expect(capped[0]).toMatchObject({ ceiling: 29, neighbours: { recommended: 'now' } });
  });

  it('have the prices of the last hour beside them', () => {
    const prices = ['fern', 'otter', 'star-map'].map((lineId) => ({
      ...{ jobId: 'fair-mugs', lineId, size: null, price: 10 },
    }));
    const late = { ...stallDay, prices: { ...stallDay.prices, lastHour: { fromMinute: 960, prices } } };
    expect(pricesOfDay({ ...asked, stallDay: late }).rows.map((row) => row.late)).toEqual([null, null, 10]);
  });

  it('of the last hour are told as different where goods of a row have different ones, one that stays among them', () => {
    // Fern goes down to 20 and all others of 28 stay.
    const prices: DayPrice[] = [{ jobId: 'fair-shirts', lineId: 'fern', size: null, price: 20 }];
    const late = { ...stallDay, prices: { ...stallDay.prices, lastHour: { fromMinute: 960, prices } } };
    const [small, large, mugs] = pricesOfDay({ ...asked, stallDay: late }).rows;
    expect([small?.late, small?.lateRange]).toEqual([null, [20, 28]]);
    expect([large?.late, large?.lateRange]).toEqual([null, [20, 31]]);
    expect([mugs?.late, mugs?.lateRange]).toEqual([null, null]);
  });
});

describe('giving goods a price', () => {
  const goods = (lineId: string, ...sizes: string[]) =>
    sizes.map((size) => ({ jobId: 'shirts', lineId, size }));
  const price = (lineId: string, size: string | null, of: number): DayPrice => ({
    ...{ jobId: 'shirts', lineId, size, price: of },
  });

  it('holds for each design as a whole where it is of all sizes', () => {
    const all = [...goods('fern', 'S', 'M'), ...goods('otter', 'S')];
    expect(withPrice([price('fern', 'M', 9), price('star', null, 7)], all, true, 30)).toEqual([
      price('star', null, 7),
      price('fern', null, 30),
      price('otter', null, 30),
    ]);
  });

  it('holds for these sizes alone where others cost something else', () => {
    const prices = withPrice([price('fern', null, 28)], goods('fern', '2XL', '3XL'), false, 31);
    expect(prices).toEqual([price('fern', null, 28), price('fern', '2XL', 31), price('fern', '3XL', 31)]);
    expect(dayPriceOf(prices, { jobId: 'shirts', lineId: 'fern', size: 'S' })).toBe(28);
    expect(dayPriceOf(prices, { jobId: 'shirts', lineId: 'fern', size: '3XL' })).toBe(31);
  });

  it('writes none for sizes that have it by their design', () => {
    expect(
      withPrice([price('fern', null, 28), price('fern', 'S', 25)], goods('fern', 'S'), false, 28),
    ).toEqual([price('fern', null, 28)]);
  });

  it('is taken away again', () => {
    expect(
      withPrice([price('fern', 'S', 25), price('fern', 'M', 26)], goods('fern', 'S'), false, null),
    ).toEqual([price('fern', 'M', 26)]);
  });
});
