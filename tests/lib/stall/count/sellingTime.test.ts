import { describe, expect, it } from 'vitest';
import { priceNow } from '@/lib/stall/count/priceNow';
import { isLastHour, sellingTime } from '@/lib/stall/count/sellingTime';
import { addDays } from '@/shared/days';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { fairGoods } from '@/tests/fixtures/stallTaps';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

const SECOND = addDays(TEST_DAY, 1);
const day = (on: string, fromMinute: number, toMinute: number) => ({
  day: on,
  fromMinute,
  toMinute,
  weight: 1,
});

describe('sellingTime', () => {
  // From six in the evening until one at night, and on the next day from ten.
  const nights = { days: [day(TEST_DAY, 1080, 60), day(SECOND, 600, 1020)] };
  it.each([
    ['before midnight', { day: TEST_DAY, minute: 1439 }, { day: TEST_DAY, minute: 1439, isOfPlan: true }],
    ['after midnight', { day: SECOND, minute: 0 }, { day: TEST_DAY, minute: 1440, isOfPlan: true }],
    ['packing up', { day: SECOND, minute: 179 }, { day: TEST_DAY, minute: 1619, isOfPlan: true }],
    ['two hours after the end', { day: SECOND, minute: 180 }, { day: SECOND, minute: 180, isOfPlan: true }],
    [
      'on the day after',
      { day: addDays(TEST_DAY, 2), minute: 5 },
      { day: addDays(TEST_DAY, 2), minute: 5, isOfPlan: false },
    ],
  ])('%s', (_when, wall, time) => {
    expect(sellingTime(nights, wall)).toEqual(time);
  });

  it('keeps what is sold while packing up after midnight with a day that ended before it', () => {
    // Until half past eleven, so until half past one.
    const evening = { days: [day(TEST_DAY, 960, 1410)] };
    const at = (minute: number) => sellingTime(evening, { day: SECOND, minute });
    expect(at(5)).toEqual({ day: TEST_DAY, minute: 1445, isOfPlan: true });
    expect(at(89)).toEqual({ day: TEST_DAY, minute: 1529, isOfPlan: true });
    expect(at(90)).toEqual({ day: SECOND, minute: 90, isOfPlan: false });
  });

  it('gives what is sold at the start of the next day to that day, however late the night was', () => {
    const close = { days: [day(TEST_DAY, 1080, 60), day(SECOND, 120, 600)] };
    expect(sellingTime(close, { day: SECOND, minute: 119 }).day).toBe(TEST_DAY);
    expect(sellingTime(close, { day: SECOND, minute: 120 }).day).toBe(SECOND);
  });
});

describe('the prices of the last hour', () => {
  const plan = {
    ...fairPlan,
    days: [day(TEST_DAY, 600, 1020), day(SECOND, 600, 1020)],
    lastHourFrom: 960,
  };
  const goods = { ...fairGoods('fern', 'L'), lastHourPrice: 2400 };
  it('hold on the last day, from their minute on', () => {
    expect(priceNow(plan, goods, { day: TEST_DAY, minute: 1000 })).toBe(2800);
    expect(priceNow(plan, goods, { day: SECOND, minute: 959 })).toBe(2800);
    expect(priceNow(plan, goods, { day: SECOND, minute: 960 })).toBe(2400);
    expect(priceNow(plan, fairGoods('otter'), { day: SECOND, minute: 960 })).toBe(1600);
  });
  it('hold on after midnight where the day ended before it', () => {
    const evening = { ...plan, days: [day(TEST_DAY, 960, 1410)], lastHourFrom: 1350 };
    expect(isLastHour(evening, { day: TEST_DAY, minute: 1400 })).toBe(true);
    expect(isLastHour(evening, { day: SECOND, minute: 5 })).toBe(true);
  });
  it('hold after midnight at a day that goes on, and never where none are set', () => {
    const night = { ...plan, days: [day(TEST_DAY, 1080, 60)], lastHourFrom: 1 };
    expect(isLastHour(night, { day: TEST_DAY, minute: 1100 })).toBe(false);
    expect(isLastHour(night, { day: SECOND, minute: 1 })).toBe(true);
    expect(isLastHour({ ...plan, lastHourFrom: null }, { day: SECOND, minute: 1000 })).toBe(false);
  });
});
