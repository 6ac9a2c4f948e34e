import { describe, expect, it } from 'vitest';
import { foldTaps } from '@/lib/stall/count/foldTaps';
import type { TappedEntry } from '@/lib/stall/count/tappedEntry';
import { closeBody } from '@/lib/stall/evening/closeBody';
import { type EveningAnswers, noAnswers } from '@/lib/stall/evening/eveningAnswers';
import { lessonsOfClose } from '@/lib/stall/evening/lessonsOfClose';
import { pastDaysOf } from '@/lib/stall/evening/pastDaysOf';
import { type Evening, reconcile } from '@/lib/stall/evening/reconcile';
import { goodsKey } from '@/lib/stall/goodsKey';
import type { Tap } from '@/shared/schemas/stallEvents';
import { type DayClose, dayCloseSchema, type StallPlan } from '@/shared/schemas/stallPapers';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { goods } from '@/tests/lib/stall/stallStock';
import { TEST_DAY } from '@/tests/tools/clock/testDay';
import { fairClock } from './fairEvening';

/* Nine Fern L and two seconds of it came along; one first for 28.00 and one second for 14.00 were sold in cash. */

const planWith = (seconds: number): StallPlan => ({
  ...fairPlan,
  secondsShare: 0.5,
  goods: fairPlan.goods.map((one) =>
    goodsKey(one) === goodsKey(goods) ? { ...one, expected: 9, seconds } : one,
  ),
});
const plan = planWith(2);
const first = { what: 'sale', goods, pay: 'cash', minor: 2800 } as const;
const second = { ...first, minor: 1400, isSecond: true } as const;
const asked = { what: 'asked', goods, words: '' } as const;
const times = (pieces: number, tap: Tap): readonly Tap[] => Array.from({ length: pieces }, () => tap);
const tapsOf = (list: readonly Tap[]): readonly TappedEntry[] =>
  list.map((tap, at) => ({
    ...{ id: `phone-${at + 1}`, device: 'phonephone', count: at + 1, at: (620 + at * 10) * 60_000 },
    body: { stallDayId: fairPlan.stallDayId, planId: 'plan-1', currency: 'USD', tap },
  }));
const taps = tapsOf([first, second]);
const closed = (evening: Evening, answers: EveningAnswers) =>
  closeBody(evening, {
    ...{ number: { count: 1, letter: 'A' }, issuedOn: TEST_DAY, planId: 'plan-1', answers },
    clock: fairClock,
  });
const answers: EveningAnswers = {
  ...noAnswers,
  // The float of 120.00 and 42.00.
  cash: { ...noAnswers.cash, counted: 16_200 },
  stock: { ...noAnswers.stock, isRestAsReckoned: true },
};

it('seconds kept from before leave the firsts on the table, and cost what they were worth since they were spoiled', () => {
  const evening = reconcile(plan, foldTaps(plan, taps, fairClock), answers, fairClock);
  const row = evening.rows.find(({ key }) => key === 'fair-shirts/fern/L');
  expect(row).toMatchObject({ brought: 9, sold: 2, keptBrought: 2, keptSold: 1, left: 8, missing: 0 });
  expect(evening.unsettled).toEqual([]);
  // 42.00 with 7 % tax inside, two bags at 0.19, one first at 6.543 and one second at six tenths of that.
  expect(evening.result.contribution).toBeCloseTo(42 / 1.07 - 2 * 0.19 - 1.6 * 6.543, 2);
  const { bridge } = evening;
  expect(bridge).not.toBeNull();
  const steps = bridge?.steps.reduce((sum, { by }) => sum + by, bridge.from) ?? Number.NaN;
  expect(steps).toBeCloseTo(evening.result.profit ?? Number.NaN, 6);
  const close = dayCloseSchema.parse(closed(evening, answers));
  expect(close.goods.filter(({ keptBrought }) => keptBrought !== undefined)).toMatchObject([
    { lineId: 'fern', size: 'L', keptBrought: 2, keptSold: 1 },
  ]);
});

describe('what nine firsts and five seconds teach of firsts', () => {
  const ofFive = planWith(5);
  const papers = [{ id: 'plan-1', withdrawn: false, body: ofFive }];
  const dayOf = (list: readonly Tap[], told: EveningAnswers) => {
    const evening = reconcile(ofFive, foldTaps(ofFive, tapsOf(list), fairClock), told, fairClock);
    return { evening, close: closed(evening, told) };
  };
  const wantedOf = (close: DayClose) =>
    pastDaysOf(papers, [{ id: 'close-1', withdrawn: false, body: close }])[0]?.wanted.find(
      (one) => goodsKey(one) === goodsKey(goods),
    );

  it('is six wanted and nothing to bring more of, where four firsts and all seconds went and two asked', () => {
    const told = { ...answers, stock: { ...noAnswers.stock, isRestUnknown: true } };
    const { close } = dayOf([...times(4, first), ...times(5, second), ...times(2, asked)], told);
    expect(wantedOf(close)).toMatchObject({ sold: 4, pieces: 6 });
    // Five firsts lie there, though nobody counted them.
    expect(lessonsOfClose(close, ofFive)).toEqual([]);
  });

  it('is eleven wanted and ten next time, where all went and two asked', () => {
    // Nine were expected and 9 + 2 wanted: halfway lie ten.
    const told = { ...answers, notLost: [goodsKey(goods)] };
    const { evening, close } = dayOf([...times(9, first), ...times(5, second), ...times(2, asked)], told);
    expect(wantedOf(close)).toMatchObject({ sold: 9, pieces: 11 });
    const offered = evening.lessons.find((one) => one.kind === 'more' && one.row.key === goodsKey(goods));
    expect(offered).toMatchObject({ next: 10 });
    expect(lessonsOfClose(close, ofFive)).toMatchObject([{ goods, next: 10 }]);
  });
});
