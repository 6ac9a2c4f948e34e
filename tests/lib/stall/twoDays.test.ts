import { describe, expect, it } from 'vitest';
import { carMoves } from '@/lib/stall/car/carMoves';
import type { NotedMove } from '@/lib/stall/car/dayMoves';
import { foldTaps } from '@/lib/stall/count/foldTaps';
import type { WallClock } from '@/lib/stall/count/sellingTime';
import { closeMoves } from '@/lib/stall/evening/closeMoves';
import { noAnswers } from '@/lib/stall/evening/eveningAnswers';
import { reconcile } from '@/lib/stall/evening/reconcile';
import { planBody } from '@/lib/stall/plan/planBody';
import { foldStock } from '@/lib/stock/foldStock';
import type { StockEntry } from '@/lib/stock/stockEntry';
import { addDays } from '@/shared/days';
import type { StockMove } from '@/shared/schemas/stock';
import { fairAsked, fairWith, holding, plannedFair } from '@/tests/fixtures/fairAsked';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { aTapLog, fairGoods, goodsOf, saleOf, tapOn } from '@/tests/fixtures/stallTaps';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

/*
 * A fair of two days all the way: four Fern S and two Fern mugs are planned, loaded and sold, three more S are pressed
 * overnight and put out, and the evening of the second day is reckoned beside it by hand.
 */

const DAY_MINUTES = 1440;
const SECOND = addDays(TEST_DAY, 1);
const FERN_S = fairGoods('fern', 'S');
const MUG = fairGoods('fern');

/** Moments counted from the first midnight. */
const clock: WallClock = (at) => {
  const minute = Math.floor(at / 60_000);
  return { day: addDays(TEST_DAY, Math.floor(minute / DAY_MINUTES)), minute: minute % DAY_MINUTES };
};

const asked = fairWith({
  days: [
    { id: 'saturday', day: TEST_DAY, fromMinute: 600, toMinute: 1020, weight: 1 },
    { id: 'sunday', day: SECOND, fromMinute: 600, toMinute: 960, weight: 1 },
  ],
  held: [...holding('fair-shirts', [4]), ...holding('fair-mugs', [2])],
});

function planOfTwoDays() {
  const made = planBody({
    ...{ stallDayId: fairPlan.stallDayId, day: TEST_DAY, stallDay: asked.stallDay, float: fairPlan.float },
    ...{ workshop: fairAsked.workshop, answer: plannedFair(asked) },
  });
  if (made.kind === 'refused') throw new Error(JSON.stringify(made.obstacles));
  return made.body({ count: 1, letter: 'A' });
}

/** Saturday dry and sold out of S by noon, three put out on Sunday, which is wet. */
function tapsOfTwoDays() {
  const log = aTapLog();
  const sell = (goods: typeof MUG, pay: 'cash' | 'card', at: number) =>
    [saleOf(goods, pay), { what: 'next' } as const].map((tap) => tapOn(log, tap, { at }));
  const at = (minute: number, day = 0) => (day * DAY_MINUTES + minute) * 60_000;
  tapOn(log, { what: 'weather', weatherId: 'dry' }, { at: at(600) });
  for (const minute of [610, 640, 670, 700]) sell(FERN_S, 'cash', at(minute));
  sell(MUG, 'card', at(720));
  tapOn(log, { what: 'asked', goods: goodsOf(FERN_S), words: '' }, { at: at(730) });
  tapOn(log, { what: 'weather', weatherId: 'wet' }, { at: at(590, 1) });
  tapOn(log, { what: 'refill', goods: goodsOf(FERN_S), pieces: 3 }, { at: at(595, 1) });
  for (const minute of [620, 900]) sell(FERN_S, 'card', at(minute, 1));
  tapOn(log, { what: 'tin', cause: 'spent', minor: 500, words: 'coffee' }, { at: at(905, 1) });
  return log.taps;
}

const plan = planOfTwoDays();
const evening = () =>
  reconcile(
    plan,
    foldTaps(plan, tapsOfTwoDays(), clock),
    {
      ...noAnswers,
      cash: { ...noAnswers.cash, counted: 22_700 },
      stock: { ...noAnswers.stock, isRestAsReckoned: true },
    },
    clock,
  );

describe('a fair of two days with a refill overnight', () => {
  it('is planned for both, each pair of weathers with its chance, days of one weight in either order', () => {
    expect(plan.days.map(({ day, toMinute }) => [day, toMinute])).toEqual([
      [TEST_DAY, 1020],
      [SECOND, 960],
    ]);
    expect(
      Object.fromEntries(
        plan.outcomes.map(({ weatherIds, chance }) => [weatherIds.toSorted().join('+'), chance]),
      ),
    ).toEqual({
      // 0.65², 2 × 0.65 × 0.25, 2 × 0.65 × 0.10, 0.25², 2 × 0.25 × 0.10, 0.10².
      'dry+dry': expect.closeTo(0.4225, 12),
      'dry+showers': expect.closeTo(0.325, 12),
      'dry+wet': expect.closeTo(0.13, 12),
      'showers+showers': expect.closeTo(0.0625, 12),
      'showers+wet': expect.closeTo(0.05, 12),
      'wet+wet': expect.closeTo(0.01, 12),
    });
    const brought = plan.goods
      .filter(({ bring }) => bring > 0)
      .map(({ design, size, bring }) => [design, size, bring]);
    expect(brought).toEqual([
      ['Fern', 'S', 4],
      ['Fern', '11 oz', 2],
    ]);
  });

  it('counts what was put out, by day and hour', () => {
    const count = foldTaps(plan, tapsOfTwoDays(), clock);
    const of = ({ lineId, size }: typeof MUG) =>
      count.goods.find((one) => one.lineId === lineId && one.size === size);
    expect(of(FERN_S)).toMatchObject({ brought: 7, sold: 6, left: 1, asked: 1, revenueMinor: 16_800 });
    expect(of(MUG)).toMatchObject({ brought: 2, sold: 1, left: 1, revenueMinor: 1600 });
    expect(count.hours).toEqual([
      { day: TEST_DAY, hour: 10, pieces: 2 },
      { day: TEST_DAY, hour: 11, pieces: 2 },
      { day: TEST_DAY, hour: 12, pieces: 1 },
      { day: SECOND, hour: 10, pieces: 1 },
      { day: SECOND, hour: 15, pieces: 1 },
    ]);
  });

  it('is settled in the second evening, to the cent', () => {
    const { money, weather, bridge, result, rows } = evening();
    expect(money).toMatchObject({
      // Six shirts at 28 and a mug at 16; the tax is in it: 184.00 × 7/107 = 12.037.
      ...{ gross: 18_400, tax: 1204, net: 17_196, cash: 11_200, card: 7200 },
      // 2.6 % of 72.00 and 0.10 on each of three tickets: 1.872 + 0.30.
      ...{ cardTickets: 3, fees: 217, payoutDue: 6983 },
      // 120.00 to begin with, four shirts in cash, coffee out of it.
      ...{ float: 12_000, tinMoves: -500, spent: 500, expectedCash: 22_700, difference: 0 },
    });
    // Seven hours dry and six wet, each day counting the same: (1 + 0.30) / 2.
    expect(weather.factor).toBeCloseTo(0.65, 12);
    expect(weather.weatherIds).toEqual(['dry', 'wet']);
    const planned = plan.outcomes.find(({ weatherIds }) => weatherIds.toSorted().join('+') === 'dry+wet');
    expect(bridge?.from).toBe(planned?.profit);
    // 171.96 − 2.17 − 6 × (6.543 + 0.19) − (3.918 + 0.60) = 124.874.
    expect(result.contribution).toBeCloseTo(124.874, 2);
    // One shirt and one mug lie there still: 6.543 + 3.918, of which 40 % are written down.
    expect(result.leftoverCost).toBeCloseTo(10.461, 2);
    expect(result.spent).toBe(5);
    expect(result.profit).toBeCloseTo(124.874 - 5 - 4.184 - result.fixed, 2);
    // 145.60 of the day, 11.5 hours at 18 and 4.20 of overhead, and what the batch costs once.
    expect(result.fixed).toBeCloseTo(145.6 + 11.5 * 22.2 + plan.costs.batch, 8);
    expect(rows.reduce((sum, { left }) => sum + (left ?? 0), 0)).toBe(2);
  });

  it('leaves the stock as it should lie: the car empty, what is left at home', () => {
    const stock = aStock();
    stock.note(madeOf('S', 10));
    for (const move of carMoves(plan.stallDayId, plan.goods, stock.now())) stock.note(move);
    expect(stock.lying()).toEqual({ 'home S': 6, 'van S': 4 });
    // Three are pressed overnight and go out with the six that were at home still.
    stock.note(madeOf('S', 3));
    const rows = evening().rows.map((row) => ({ ...row, counted: row.left }));
    const booked = { stallDayId: plan.stallDayId, ...stock.now(), closes: [] };
    for (const move of closeMoves(rows, booked, 'close-1')) stock.note(move);
    // Thirteen made less six sold; of mugs nobody noted any, so what came home is what there is.
    expect(stock.lying()).toEqual({ 'home S': 7, 'van S': 0, 'home 11 oz': 1 });
  });
});

// Helpers

const madeOf = (size: string, quantity: number): StockMove => ({
  item: { kind: 'finished', jobId: FERN_S.jobId, lineId: FERN_S.lineId, size },
  place: { kind: 'home' },
  ...{ grade: 'first', quantity, cause: 'made', reference: null, unitCost: null },
});

function aStock() {
  const entries: StockEntry[] = [];
  const moves = (): readonly NotedMove[] =>
    entries.flatMap((entry) => (entry.kind === 'stockMove' ? [entry] : []));
  return {
    note(body: StockMove): void {
      const count = entries.length + 1;
      const told = { id: `devicea1-${count}`, device: 'devicea1', version: 1, count, at: count };
      entries.push({ ...told, kind: 'stockMove', body });
    },
    now: () => ({ piles: foldStock(entries), moves: moves() }),
    lying: () =>
      Object.fromEntries(
        foldStock(entries).flatMap(({ item, place, quantity }) =>
          item.kind === 'finished' ? [[`${place.kind} ${item.size}`, quantity]] : [],
        ),
      ),
  };
}
