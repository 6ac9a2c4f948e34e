import { describe, expect, it } from 'vitest';
import { foldTaps } from '@/lib/stall/count/foldTaps';
import type { TappedEntry } from '@/lib/stall/count/tappedEntry';
import { closeBody } from '@/lib/stall/evening/closeBody';
import { closeMoves } from '@/lib/stall/evening/closeMoves';
import { type EveningAnswers, noAnswers } from '@/lib/stall/evening/eveningAnswers';
import { reconcile } from '@/lib/stall/evening/reconcile';
import { goodsKey } from '@/lib/stall/goodsKey';
import { addDays } from '@/shared/days';
import type { Tap } from '@/shared/schemas/stallEvents';
import {
  dayCloseSchema,
  type PlannedGoods,
  type StallPlan,
  stallPlanSchema,
} from '@/shared/schemas/stallPapers';
import { stockMoveSchema } from '@/shared/schemas/stock';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { goodsOf } from '@/tests/fixtures/stallTaps';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

/* Two days of a large fair: 300 goods, seven of each brought, 2,000 sales a minute apart, and what else is tapped. */

const GOODS = 300;
const SALES = 2000;
const MS_PER_MINUTE = 60_000;
const [model] = fairPlan.goods;
if (model === undefined) throw new Error('the fair has no goods');

const goods: readonly PlannedGoods[] = Array.from({ length: GOODS }, (_, at) => ({
  ...model,
  lineId: `design-${Math.floor(at / 6)}`,
  size: `size ${at % 6}`,
  bring: 7,
}));

const plan: StallPlan = {
  ...fairPlan,
  goods: [...goods],
  days: [0, 1].map((later) => ({
    ...{ day: addDays(TEST_DAY, later), fromMinute: 0, toMinute: 1439, weight: 1 },
  })),
};

/** A moment counted from the first minute of the first day. */
const clock = (at: number) => {
  const minutes = Math.floor(at / MS_PER_MINUTE);
  return { day: addDays(TEST_DAY, Math.floor(minutes / 1440)), minute: minutes % 1440 };
};

const tapped = (taps: readonly Tap[], minutesApart = 1): readonly TappedEntry[] =>
  taps.map((tap, at) => ({
    ...{ id: `phone-${at + 1}`, device: 'phonephone', count: at + 1, at: at * minutesApart * MS_PER_MINUTE },
    body: { stallDayId: plan.stallDayId, planId: 'plan-1', currency: plan.currency, tap },
  }));

const sales: readonly Tap[] = Array.from({ length: SALES }, (_, at) => {
  const sold = goods[at % GOODS] ?? model;
  return { what: 'sale', goods: goodsOf(sold), minor: sold.price, pay: at % 4 === 0 ? 'cash' : 'card' };
});

const wishes = (many: number): readonly Tap[] =>
  Array.from({ length: many }, (_, at) => ({ what: 'asked', goods: null, words: `wish ${at}` }));

function closed(
  taps: readonly TappedEntry[],
  by: StallPlan = plan,
  said: Pick<EveningAnswers, 'lostAfterAll'> = noAnswers,
) {
  const count = foldTaps(by, taps, clock);
  const answers: EveningAnswers = {
    ...noAnswers,
    cash: { ...noAnswers.cash, reason: 'notKnown' },
    stock: { ...noAnswers.stock, isRestAsReckoned: true },
    lostAfterAll: said.lostAfterAll,
  };
  const evening = reconcile(by, count, answers, clock);
  const close = closeBody(evening, {
    ...{ number: { count: 1, letter: 'A' }, issuedOn: TEST_DAY, planId: 'plan-1', answers, clock },
  });
  return { evening, close };
}

describe('a busy fair of two days', () => {
  it('of 300 goods and 2,000 sales is fixed and closed whole', () => {
    expect(stallPlanSchema.safeParse(plan).error).toBeUndefined();
    const { evening, close } = closed(tapped(sales));
    expect(dayCloseSchema.safeParse(close).error).toBeUndefined();
    expect(evening.unsettled).toEqual([]);
    // 2,000 of 2,100 pieces; a quarter of the sales in cash.
    expect(evening.pieces).toBe(SALES);
    expect(close.money).toMatchObject({ gross: 5_600_000, cash: 1_400_000, card: 4_200_000 });
    expect(close.hours.reduce((sum, { pieces }) => sum + pieces, 0)).toBe(SALES);
    const stock = { stallDayId: plan.stallDayId, moves: [], piles: [], closes: [] };
    const moves = closeMoves(evening.rows, stock, 'close-1');
    expect(moves.filter((move) => !stockMoveSchema.safeParse(move).success)).toEqual([]);
    expect(moves.reduce((sum, { quantity }) => sum + quantity, 0)).toBe(100);
  });

  it('is fixed with all that its day may say: 20 rows of 200 hours, 100,000 pieces at an event twenty times as special', () => {
    const large = { ...model, expected: 100_000 * 20 };
    // 1,500 goods, 1,000 pieces of each, six minutes a piece.
    const costs = { ...plan.costs, hours: 20 * 200, benchHours: 150_000 };
    expect(stallPlanSchema.safeParse({ ...plan, goods: [large], costs }).error).toBeUndefined();
  });

  it('is closed though the clock of a phone jumped to another hour with every sale', () => {
    const { close } = closed(tapped(sales, 61));
    expect(dayCloseSchema.safeParse(close).error).toBeUndefined();
    expect(close.hours).toHaveLength(SALES);
  });

  it('is closed though 2,000 of a size were tapped in the second minute of a week', () => {
    const days = Array.from({ length: 7 }, (_, later) => ({
      ...{ day: addDays(TEST_DAY, later), fromMinute: 0, toMinute: 1439, weight: 1 },
    }));
    const one = { ...model, bring: SALES };
    const sale = (): Tap => ({ what: 'sale', goods: goodsOf(one), minor: one.price, pay: 'card' });
    const taps = tapped(Array.from({ length: SALES }, sale)).map((tap) => ({ ...tap, at: MS_PER_MINUTE }));
    const { close } = closed(taps, { ...plan, days, goods: [one] }, { lostAfterAll: [goodsKey(one)] });
    expect(dayCloseSchema.safeParse(close).error).toBeUndefined();
    // 1,999 a minute for 7 × 1,439 − 1 more.
    expect(close.goods[0]?.lost).toBe(1999 * 10_072);
  });

  it('keeps 250 different wishes in their words', () => {
    const { close } = closed(tapped(wishes(250)));
    expect(dayCloseSchema.safeParse(close).error).toBeUndefined();
    expect(close.askedFor).toHaveLength(250);
  });

  it('keeps the 999 wishes that came most often in their words, and counts the others without', () => {
    const often: Tap = { what: 'asked', goods: null, words: 'wish 1199' };
    const { close } = closed(tapped([...wishes(1200), often]));
    expect(dayCloseSchema.safeParse(close).error).toBeUndefined();
    expect(close.askedFor).toHaveLength(1000);
    expect(close.askedFor.find(({ words }) => words === 'wish 1199')).toEqual({
      words: 'wish 1199',
      count: 2,
    });
    // 1,201 taps less 998 wishes of one and one of two.
    expect(close.askedFor.at(-1)).toEqual({ words: '', count: 201 });
  });
});
