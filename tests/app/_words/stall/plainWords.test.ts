import { expect, it } from 'vitest';
import { overdrawnWords } from '@/app/_words/stall/evening/stockWords';
import { floorWords, neighbourWords } from '@/app/_words/stall/priceWords';
import { spreadWords } from '@/app/_words/stall/spreadWords';
import { goodsKey } from '@/lib/stall/goodsKey';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { fairAnswers, fairEvening, OTTER_L } from '@/tests/lib/stall/evening/fairEvening';

const writer = {
  price: String,
  amount: (money: number) => money.toFixed(2),
  number: (value: number) => String(value),
};

it('what a price has to pay is told by what pays it, and where a piece goes home', () => {
  expect(floorWords({ withOverhead: 7.84, making: 7.49, takeHome: 4.6 }, writer)).toBe(
    'Making and overhead are paid at 7.84, making alone at 7.49. For less than 4.60, take it home.',
  );
  expect(floorWords({ withOverhead: null, making: null, takeHome: null }, writer)).toBe(
    'Making and overhead are paid at no price, making alone at no price. Whatever the price, take it home.',
  );
});

it.each([
  [30.2, 'leaves 18.76 a piece, break-even at 31 pieces'],
  [0.4, 'leaves 18.76 a piece, break-even at 1 piece'],
  [null, 'leaves 18.76 a piece, no piece earns the day'],
])('a price whose day is even at %s pieces tells the break-even', (breakEvenPieces, told) => {
  expect(
    neighbourWords(
      { which: 'now', price: 30, margin: 18.76, more: 0, breakEvenPieces, isAboveCeiling: false },
      writer,
    ),
  ).toBe(told);
});

it('days that differ are told by what they end with, and by no measure of statistics', () => {
  const spread = {
    sd: 336.46,
    lossChance: 0.16,
    p10: -197.27,
    p50: 435.58,
    p90: 690.87,
    days: 20_000,
    seed: 1,
  };
  expect(spreadWords(spread, 132, { locale: 'en-US', currency: 'USD' })).toEqual([
    'With your 132: one day in ten ends below −197.27, half of them above 435.58, one in ten above 690.87.',
    '16 of 100 days end in a loss, after your own pay.',
    'Drawn from 20,000 days: first the weather, then how many ask for each size. The same plan draws the same days.',
  ]);
});

it.each([
  [1, '7 went, 1 was brought.'],
  [5, '7 went, 5 were brought.'],
])('of %i brought the evening tells how many went too much', (bring, told) => {
  const goods = fairPlan.goods.map((one) => (goodsKey(one) === goodsKey(OTTER_L) ? { ...one, bring } : one));
  const evening = fairEvening(fairAnswers, { ...fairPlan, goods });
  expect(evening.overdrawn.map((row) => overdrawnWords(evening, row))).toEqual([
    expect.stringContaining(`Otter L: ${told} One was tapped twice`),
  ]);
});
