import { describe, expect, it } from 'vitest';
import { adviseFloat, type FloatAsked } from '@/lib/stall/float/adviseFloat';
import { addDays } from '@/shared/days';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

const open = (id: string, fromMinute: number, toMinute: number, weight = 1) => ({
  ...{ id, day: TEST_DAY, fromMinute, toMinute, weight },
});
const fair: FloatAsked = {
  currency: 'USD',
  stallDay: { days: [open('saturday', 600, 1020)], float: { coins: null, firstTickets: null } },
  goods: fairPlan.goods.map(({ price, expected }) => ({ price: price / 100, expected: expected ?? 0 })),
  sets: [50],
  ...{ taxMode: 'inside', tax: 0.07 },
  cardShare: 0.75,
  piecesPerTicket: 1.35,
};
const advised = (asked: FloatAsked) => {
  const advice = adviseFloat(asked);
  if (advice.kind !== 'advised') throw new Error(advice.kind);
  return advice;
};
const asked = (firstTickets: number, more: Partial<FloatAsked> = {}): FloatAsked => ({
  ...fair,
  stallDay: { ...fair.stallDay, float: { coins: null, firstTickets } },
  ...more,
});
const one = (price: number) => [{ price, expected: 10 }];

describe('the float of the worked fair', () => {
  const advice = advised(fair);

  it('rests on twelve tickets in the first 90 minutes, of which up to five are paid in cash', () => {
    // 76 ÷ 1.35 × 1.5 ÷ 7 = 12.06; a quarter is 3.02, of which no more than 4 come on 81 and 5 on 91 of 100 days.
    expect(advice.firstTickets).toBeCloseTo(12.0635, 4);
    expect(advice.cashTickets).toBe(5);
  });

  it('gives 22 on 50 for a shirt of 28, five times, in tens, fives and ones: 115', () => {
    expect([advice.note, advice.price, advice.change]).toEqual([50, 28, 22]);
    // One five and four ones for each of the five; of 110 they leave 65, which seven tens make.
    expect(advice.coins).toEqual([
      { value: 10, count: 7 },
      { value: 5, count: 5 },
      { value: 1, count: 20 },
    ]);
    expect(advice.total).toBe(115);
  });
});

describe('a float', () => {
  it('has no coins where no price needs them', () => {
    const { coins, total } = advised(
      asked(20, { goods: [...one(25), ...one(15)], sets: [40], cardShare: 0.5 }),
    );
    // 10 expected; no more than 14 come on 92 of 100 days, each gets 35 back on 15: tens and a five.
    expect(coins).toEqual([
      { value: 10, count: 42 },
      { value: 5, count: 14 },
    ]);
    expect(total).toBe(490);
  });

  it('has them where one does, a set among them', () => {
    const { coins } = advised(asked(4, { goods: one(25), sets: [42.5], cardShare: 0 }));
    expect(coins.at(-1)).toEqual({ value: 0.25, count: 7 * 3 });
  });

  it.each([
    ['EUR', 28, 50, 22, [10, 5, 2, 1]],
    ['GBP', 18, 20, 2, [2]],
    ['JPY', 3500, 10_000, 6500, [1000, 500]],
    // A fifty and twenties make no ten.
    ['CZK', 620, 1000, 380, [100, 50, 20, 10]],
    ['CHF', 32.5, 100, 67.5, [20, 10, 5, 2, 1, 0.5]],
    ['DKK', 249, 500, 251, [100, 50, 20, 10, 5, 2, 1]],
  ] as const)('is of the money of %s: for %d on %d goes %d back', (currency, price, note, change, values) => {
    const advice = advised(asked(10, { currency, goods: one(price), sets: [], cardShare: 0.5 }));
    expect([advice.note, advice.change]).toEqual([note, change]);
    expect(advice.coins.map(({ value }) => value)).toEqual(values);
    expect(advice.total).toBeGreaterThanOrEqual(advice.cashTickets * change);
  });

  it('has the largest value for each ticket, also where smaller ones make up more than the rest', () => {
    // Seven are expected, no more than ten come on 90 of 100 days. Each gets 200 back on 500 for 300; because of the 249
    // a 50, two 20, a 10, a 5, two 2 and a 1 go along for each, 110. That leaves 90 a ticket, which nine 100 would make.
    const goods = [...one(300), { price: 249, expected: 1 }];
    const { cashTickets, change, coins, total } = advised(
      asked(7, { currency: 'DKK', goods, sets: [], cardShare: 0 }),
    );
    expect([cashTickets, change, total]).toEqual([10, 200, 2100]);
    expect(coins[0]).toEqual({ value: 100, count: 10 });
  });

  it('is change on what is paid, tax added and in coins', () => {
    // 28.00 and 7.25 % are 30.03, so 19.97 goes back on a 50; 8.1 % are 30.268, in francs 30.25 and 69.75 on a 100.
    const added = { goods: one(28), sets: [], taxMode: 'added' } as const;
    expect(advised(asked(10, { ...added, tax: 0.0725 }))).toMatchObject({ price: 30.03, change: 19.97 });
    const francs = { ...added, currency: 'CHF', tax: 0.081 };
    expect(advised(asked(10, francs))).toMatchObject({ price: 30.25, change: 69.75 });
  });

  it('takes two notes for a price above one', () => {
    expect(advised(asked(10, { goods: one(60), sets: [] }))).toMatchObject({ note: 100, change: 40 });
  });

  it('is empty where every price is one that notes pay, and where all pay by card', () => {
    expect(advised(asked(10, { goods: one(50), sets: [] })).coins).toEqual([]);
    expect(advised(asked(10, { cardShare: 1 })).coins).toEqual([]);
  });

  it('goes by the price that needs change where the one that sells most needs none', () => {
    const goods = [
      { price: 50, expected: 30 },
      { price: 16, expected: 4 },
    ];
    expect(advised(asked(10, { goods, sets: [] }))).toMatchObject({ price: 16, change: 34 });
  });

  it('is for the first day of several, by its part of the visitors and to its end after midnight', () => {
    const stallDay = {
      ...fair.stallDay,
      days: [open('friday', 1200, 120, 1), open('saturday', 600, 1020, 3)],
    };
    // A quarter of 56.296 tickets, 1.5 of 6 hours.
    expect(advised({ ...fair, stallDay }).firstTickets).toBeCloseTo(3.5185, 4);
  });

  it('is for the earliest day, whichever was typed first', () => {
    const sunday = { ...open('sunday', 600, 1020, 3), day: addDays(TEST_DAY, 1) };
    const days = [sunday, open('saturday', 600, 1020, 1)];
    // A quarter of 56.296 tickets, 1.5 of 7 hours.
    expect(advised({ ...fair, stallDay: { ...fair.stallDay, days } }).firstTickets).toBeCloseTo(3.0159, 4);
  });

  it('is for no more than all of a day that is shorter than 90 minutes', () => {
    const stallDay = { ...fair.stallDay, days: [open('hour', 600, 660)] };
    expect(advised({ ...fair, stallDay }).firstTickets).toBeCloseTo(56.2963, 4);
  });

  it('is not advised of without coins that are known, or without anything expected', () => {
    expect(adviseFloat({ ...fair, currency: 'XOF' })).toEqual({ kind: 'coinsUnknown' });
    expect(adviseFloat({ ...fair, goods: [] })).toEqual({ kind: 'nothingExpected' });
    expect(adviseFloat({ ...fair, stallDay: { ...fair.stallDay, days: [] } })).toEqual({
      kind: 'nothingExpected',
    });
  });
});
