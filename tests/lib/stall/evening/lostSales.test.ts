import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { foldTaps } from '@/lib/stall/count/foldTaps';
import type { EarlierPlan } from '@/lib/stall/count/putOutBefore';
import type { WallClock } from '@/lib/stall/count/sellingTime';
import { openHours } from '@/lib/stall/days/openHours';
import { answersOfClose } from '@/lib/stall/evening/answersOfClose';
import { closeBody } from '@/lib/stall/evening/closeBody';
import type { EveningAnswers } from '@/lib/stall/evening/eveningAnswers';
import { reconcile } from '@/lib/stall/evening/reconcile';
import { addDays } from '@/shared/days';
import type { Tap } from '@/shared/schemas/stallEvents';
import type { StallPlan } from '@/shared/schemas/stallPapers';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { aTapLog, fairGoods, goodsOf, saleOf, type TapLog, tapOn } from '@/tests/fixtures/stallTaps';
import { cases } from '@/tests/tools/cases';
import { TEST_DAY } from '@/tests/tools/clock/testDay';
import { fairAnswers } from './fairEvening';

const otter = fairGoods('otter', 'L');
const day = (days: number, fromMinute = 600, toMinute = 1020): StallPlan['days'][number] => ({
  ...{ day: addDays(TEST_DAY, days), fromMinute, toMinute, weight: 1 },
});
/** From 10 to 17: 420 minutes. */
const oneDay = [day(0)];
const twoDays = [day(0), day(1)];

const planOf = (bring: number, days: StallPlan['days'] = oneDay): StallPlan => ({
  ...fairPlan,
  days,
  goods: [{ ...otter, bring }],
});

/** Moments are minutes since the midnight before the fair. */
const clock: WallClock = (at) => {
  const minutes = Math.floor(at / 60_000);
  return { day: addDays(TEST_DAY, Math.floor(minutes / 1440)), minute: minutes % 1440 };
};

type At = readonly [minute: number, tap: Tap];

const sale = saleOf(otter);
const sold = (...minutes: readonly number[]): readonly At[] => minutes.map((minute) => [minute, sale]);
const refill = (minute: number, pieces: number): At => [
  minute,
  { what: 'refill', goods: goodsOf(otter), pieces },
];
const spoiled = (minute: number, isSecond = false): At => [
  minute,
  { what: 'damaged', goods: goodsOf(otter), isSecond },
];
const back = (minute: number): At => [
  minute,
  { what: 'refund', goods: goodsOf(otter), minor: 2800, pay: 'card' },
];

function tapped(taps: readonly At[], planId?: string, log: TapLog = aTapLog()): TapLog {
  for (const [minute, tap] of taps)
    tapOn(log, tap, { at: minute * 60_000, ...(planId === undefined ? {} : { planId }) });
  return log;
}

function closed(
  plan: StallPlan,
  taps: readonly At[] | TapLog,
  said: Partial<EveningAnswers> = {},
  {
    earlier = [],
    wall = clock,
  }: { readonly earlier?: readonly EarlierPlan[]; readonly wall?: WallClock } = {},
) {
  const log = 'taps' in taps ? taps : tapped(taps);
  const answers: EveningAnswers = { ...fairAnswers, ...said };
  const evening = reconcile(plan, foldTaps(plan, log.taps, wall, earlier), answers, wall);
  const close = closeBody(evening, {
    ...{ number: { count: 1, letter: null }, issuedOn: TEST_DAY, planId: 'plan', answers, clock: wall },
  });
  const [goods] = close.goods;
  const [lesson] = evening.lessons.flatMap((one) => (one.kind === 'more' ? [one] : []));
  if (goods === undefined) throw new Error('no goods were closed');
  return { close, goods, lesson };
}

const lostOf = (...args: Parameters<typeof closed>): number => closed(...args).goods.lost;

/** So many one after the other, the last at a minute. */
const untilLast = (pieces: number, first: number, last: number): readonly At[] =>
  sold(...Array.from({ length: pieces - 1 }, () => first), last);

describe('sales lost after the last piece', () => {
  it.each([
    // Seven until 14:10: 6 ÷ 250 a minute for the 170 that were left.
    [7, 850, 4.08],
    // One says nothing of a pace.
    [1, 660, 0],
    [3, 1020, 0],
    // Before the opening there is no pace either.
    [3, 590, 0],
  ])('%i sold, the last at minute %i: %f', (pieces, minute, lost) => {
    expect(lostOf(planOf(pieces), untilLast(pieces, 590, minute))).toBeCloseTo(lost, 8);
  });

  it('are none while some are left', () => {
    expect(lostOf(planOf(8), untilLast(7, 600, 850))).toBe(0);
  });

  it('go on over the second day: hours that are open are joined', () => {
    const days = [day(0), day(1, 540, 780)];
    expect(openHours({ days })).toBe(7 + 4);
    // The fifth of five an hour into the second day, after 420 + 60 minutes: 4 ÷ 480 × 180.
    expect(lostOf(planOf(5, days), untilLast(5, 610, 1440 + 600))).toBeCloseTo(1.5, 8);
  });

  it('are counted over the hours that a forecast counts: a day that ends as it begins has none', () => {
    // As of the first day alone: the fifth of five after 3 of 7 hours is 4 ÷ 3 × 4.
    expect(lostOf(planOf(5, [day(0), day(1, 540, 540)]), untilLast(5, 610, 600 + 180))).toBeCloseTo(
      16 / 3,
      8,
    );
  });

  it('are not reckoned where the clock stood on another day', () => {
    const wall = () => ({ day: addDays(TEST_DAY, -40), minute: 700 });
    expect(lostOf(planOf(7), untilLast(7, 610, 850), {}, { wall })).toBe(0);
  });
});

describe('sales lost until more is put out', () => {
  /** Every seven minutes one: the eighth after 56. */
  const firstDay = sold(607, 614, 621, 628, 635, 642, 649, 656);
  const secondDay = sold(...[50, 100, 150, 200, 250, 300, 350].map((minute) => 1440 + 600 + minute));

  it('are those of the first day where the table was filled overnight and some were left at the end', () => {
    const taps = [...firstDay, refill(1440 + 590, 8), ...secondDay];
    const { goods, lesson } = closed(planOf(8, twoDays), taps);
    // 7 ÷ 56 a minute for the other 364 of the first day; of the second one was left.
    expect(goods).toMatchObject({ brought: 16, sold: 15 });
    expect(goods.lost).toBeCloseTo(45.5, 8);
    expect(lesson?.stretches).toEqual([
      {
        ...{ goneAtMinute: 656, before: 7, withinMinutes: 56, isPutOutAgain: true, isThin: false },
        lost: expect.closeTo(45.5, 8),
      },
    ]);
    // Expected 4.05, wanted 15 + 45.5: halfway lies 32.3.
    expect(lesson?.next).toBe(32);
  });

  it('are the same where the plan was fixed anew with what was put out', () => {
    const log = tapped([...firstDay, refill(1440 + 590, 8)], 'first');
    tapped(secondDay, 'second', log);
    const earlier = [{ id: 'first', body: planOf(8, twoDays) }];
    expect(lostOf(planOf(16, twoDays), log, {}, { earlier })).toBeCloseTo(45.5, 8);
  });

  it('are reckoned for each time they were gone, by the pace since they were put out', () => {
    // Five in two hours and none for two more: 4 ÷ 120 × 120. Four in an hour, and two to the end: 3 ÷ 60 × 120.
    const taps = [...untilLast(5, 610, 720), refill(840, 4), ...untilLast(4, 850, 900)];
    const { goods, lesson } = closed(planOf(5), taps);
    expect(goods.lost).toBeCloseTo(4 + 6, 8);
    expect(lesson?.stretches.map(({ lost, isPutOutAgain }) => [lost, isPutOutAgain])).toEqual([
      [expect.closeTo(4, 8), true],
      [expect.closeTo(6, 8), false],
    ]);
  });

  it('are none where some still lay there', () => {
    expect(lostOf(planOf(6), [...untilLast(5, 610, 720), refill(840, 4)])).toBe(0);
  });

  it('count a refill on a day between those of selling as one before the next of them', () => {
    const days = [day(0), day(2)];
    const taps = [...firstDay, refill(1440 + 700, 8)];
    expect(lostOf(planOf(8, days), taps)).toBeCloseTo(45.5, 8);
  });

  it('begin when the last one was spoiled, for until then it could be had', () => {
    // Three in an hour, the fourth spoiled after two: 2 ÷ 60 × 300.
    expect(lostOf(planOf(4), [...untilLast(3, 610, 660), spoiled(720)])).toBeCloseTo(10, 8);
  });

  it('take a spoiled piece sold as a second for the piece that it was', () => {
    // All three are gone with the last sale, after an hour: 2 ÷ 60 × 360.
    const second: At = [660, { ...sale, isSecond: true } as Tap];
    expect(lostOf(planOf(3), [...sold(610), spoiled(615, true), ...sold(620), second])).toBeCloseTo(12, 8);
  });

  it('go on with the pace of before where one came back and went again', () => {
    // Gone at 11:00, back at 11:30, gone at noon: four in 120 minutes, 3 ÷ 120 × 300.
    expect(lostOf(planOf(4), [...untilLast(4, 610, 660), back(690), ...sold(720)])).toBeCloseTo(7.5, 8);
  });

  it('are of stretches that hold each piece once, whatever was tapped', () => {
    const taps = fc.constantFrom(
      ...(['sale', 'second', 'refund', 'spoiled', 'kept', 'given', 'refill'] as const),
    );
    const tapOf = (what: string): Tap => {
      const goods = goodsOf(otter);
      if (what === 'second') return { ...sale, isSecond: true } as Tap;
      if (what === 'refund') return { what, goods, minor: 2800, pay: 'card' };
      if (what === 'spoiled' || what === 'kept') return { what: 'damaged', goods, isSecond: what === 'kept' };
      if (what === 'given') return { what, goods };
      return what === 'refill' ? { what, goods, pieces: 2 } : sale;
    };
    fc.assert(
      fc.property(fc.array(taps, { maxLength: 40 }), fc.integer({ min: 0, max: 9 }), (all, bring) => {
        const log = tapped(all.map((what, at) => [600 + at, tapOf(what)]));
        const [goods] = foldTaps(planOf(bring), log.taps, clock).goods;
        const stretches = goods?.stretches ?? [];
        expect(stretches.reduce((sum, one) => sum + one.sold, 0)).toBe(goods?.sold);
        // What is on the table in the end is what was put out and did not go.
        if (bring > 0) expect(stretches.at(-1)?.goneAt === null).toBe((goods?.left ?? 0) > 0);
        for (const [at, one] of stretches.slice(1).entries())
          expect(one.fromAt).toBeGreaterThanOrEqual(stretches[at]?.lastSoldAt ?? 0);
      }),
      cases(200),
    );
  });
});

describe('a pace of few pieces or minutes', () => {
  it.each<[pieces: number, minute: number, atPace: number, isLearned: boolean]>([
    // Two in the first minute: one a minute for the other 419.
    [2, 601, 419, false],
    [2, 810, 1, false],
    // Two thirds of an hour after the opening, 2 ÷ 40 × 380.
    [3, 640, 19, true],
    // 2 ÷ 14 × 406 and 2 ÷ 15 × 405.
    [3, 614, 58, false],
    [3, 615, 54, true],
    [30, 614, 841, false],
  ])('%i pieces, the last at minute %i: %f reckoned, learned %s', (pieces, minute, atPace, isLearned) => {
    const { goods, lesson } = closed(planOf(pieces), untilLast(pieces, 600, minute));
    expect(lesson?.atPace).toBeCloseTo(atPace, 8);
    expect(lesson?.leftOut).toBe(isLearned ? null : 'thin');
    expect(goods.lost).toBeCloseTo(isLearned ? atPace : 0, 8);
    expect(goods).not.toHaveProperty('isLostLeftOut');
  });

  it('teaches after all where the maker says so, in a correction of the close too', () => {
    const key = 'fair-shirts/otter/L';
    const { close, goods, lesson } = closed(planOf(2), untilLast(2, 600, 601), { lostAfterAll: [key] });
    expect(goods).toMatchObject({ lost: 419, isLostTaken: true });
    expect(lesson).toMatchObject({ lost: 419, leftOut: null });
    expect(answersOfClose(close).lostAfterAll).toEqual([key]);
  });

  it('leaves what was reckoned from enough as it is', () => {
    // 4 ÷ 120 × 120 of the first five; of two put out at 14:00 both are gone in ten minutes: 1 ÷ 10 × 170 is left out.
    const taps = [...untilLast(5, 610, 720), refill(840, 2), ...sold(845, 850)];
    const { goods, lesson } = closed(planOf(5), taps);
    expect(goods.lost).toBeCloseTo(4, 8);
    expect(lesson?.atPace).toBeCloseTo(21, 8);
    expect(lesson?.leftOut).toBe('thin');
  });
});
