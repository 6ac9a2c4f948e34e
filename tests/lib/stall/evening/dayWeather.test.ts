import { describe, expect, it } from 'vitest';
import { foldTaps } from '@/lib/stall/count/foldTaps';
import type { WallClock } from '@/lib/stall/count/sellingTime';
import type { TappedEntry } from '@/lib/stall/count/tappedEntry';
import { answersOfClose } from '@/lib/stall/evening/answersOfClose';
import { closeBody } from '@/lib/stall/evening/closeBody';
import { weatherShares } from '@/lib/stall/evening/dayWeather';
import { noAnswers } from '@/lib/stall/evening/eveningAnswers';
import { pastDaysOf } from '@/lib/stall/evening/pastDaysOf';
import { reconcile } from '@/lib/stall/evening/reconcile';
import { addDays } from '@/shared/days';
import { type DayClose, dayCloseSchema, type StallPlan } from '@/shared/schemas/stallPapers';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { aTapLog, fairGoods, saleOf, tapOn } from '@/tests/fixtures/stallTaps';
import { TEST_DAY } from '@/tests/tools/clock/testDay';
import { fairAnswers, fairClock } from './fairEvening';

const SECOND = addDays(TEST_DAY, 1);
const DAY_MINUTES = 1440;
const MS_PER_MINUTE = 60_000;

/** Moments counted from the midnight of the first day. */
const clock: WallClock = (at) => {
  const minute = at / MS_PER_MINUTE;
  return { day: addDays(TEST_DAY, Math.floor(minute / DAY_MINUTES)), minute: minute % DAY_MINUTES };
};

/** Weathers as they were told, by the minute since the first midnight, and a piece that was sold at noon. */
function told(...weathers: readonly (readonly [string, number])[]): readonly TappedEntry[] {
  const log = aTapLog();
  for (const [weatherId, minute] of weathers)
    tapOn(log, { what: 'weather', weatherId }, { at: minute * MS_PER_MINUTE });
  tapOn(log, saleOf(fairGoods('fern', 'L')), { at: 720 * MS_PER_MINUTE });
  return log.taps;
}

const evening = (plan: StallPlan, taps: readonly TappedEntry[], answers = fairAnswers) =>
  reconcile(plan, foldTaps(plan, taps, clock), answers, clock);

const closeOf = (plan: StallPlan, taps: readonly TappedEntry[], answers = fairAnswers): DayClose =>
  closeBody(evening(plan, taps, answers), {
    ...{ number: { count: 1, letter: 'A' }, issuedOn: TEST_DAY, planId: 'plan-1' },
    ...{ answers, clock: fairClock },
  });

describe('the weather of a day', () => {
  it('is as long as it held between the taps while the stall was open', () => {
    // Open from ten to five: dry until two, then wet; what was told before the opening and after the end holds no hour.
    const { weather, weatherId } = evening(fairPlan, told(['dry', 570], ['wet', 840], ['showers', 1050]));
    expect(weather.parts).toEqual([
      { day: TEST_DAY, weatherId: 'dry', minutes: 240 },
      { day: TEST_DAY, weatherId: 'wet', minutes: 180 },
    ]);
    // 4/7 + 3/7 × 0.30 = 0.7.
    expect(weather.factor).toBeCloseTo(0.7, 12);
    expect(weatherId).toBe('dry');
  });

  it('is of a fair of one day whatever the clock of the phone says', () => {
    // A clock that is a year late by days and right by minutes: dry until two, then wet.
    const late: WallClock = (at) => ({ ...fairClock(at), day: addDays(TEST_DAY, -365) });
    const taps = told(['dry', 600], ['wet', 840]);
    const { weather } = reconcile(fairPlan, foldTaps(fairPlan, taps, late), fairAnswers, late);
    expect(weather.parts).toEqual([
      { day: TEST_DAY, weatherId: 'dry', minutes: 240 },
      { day: TEST_DAY, weatherId: 'wet', minutes: 180 },
    ]);
  });

  it('counts weathers of a day alike where nobody knows how long any of them held', () => {
    const parts = ['dry', 'wet'].map((weatherId) => ({ day: TEST_DAY, weatherId, minutes: 0 }));
    expect(weatherShares(fairPlan, parts)).toEqual([
      { weatherId: 'dry', share: 0.5 },
      { weatherId: 'wet', share: 0.5 },
    ]);
  });

  it('is one for the whole day where it was told once, however late', () => {
    expect(evening(fairPlan, told(['wet', 1100])).weather).toMatchObject({ factor: 0.3 });
  });

  it('is what the maker says, of that day alone', () => {
    const answers = { ...fairAnswers, weatherOfDays: { [TEST_DAY]: 'showers' } };
    const { weather } = evening(fairPlan, told(['dry', 600], ['wet', 840]), answers);
    expect(weather).toEqual({
      ...{ factor: 0.65, weatherIds: ['showers'] },
      parts: [{ day: TEST_DAY, weatherId: 'showers', minutes: 420 }],
    });
  });

  it('is not known where nobody told it', () => {
    expect(evening(fairPlan, told()).weather).toEqual({ parts: [], factor: null, weatherIds: null });
  });

  it('goes into the close, the next forecast and a correction as it changed', () => {
    const taps = told(['dry', 600], ['wet', 840]);
    const close = closeOf(fairPlan, taps);
    expect(dayCloseSchema.parse(close)).toEqual(close);
    expect(close.weather?.factor).toBeCloseTo(0.7, 12);
    const [past] = pastDaysOf(
      [{ id: 'plan-1', body: fairPlan, withdrawn: false }],
      [{ id: 'close-1', body: close, withdrawn: false }],
    );
    // 76 × 0.7.
    expect(past?.expected).toBeCloseTo(53.2, 8);
    expect(past?.weather?.parts.map(({ name, share }) => [name, Number(share.toFixed(9))])).toEqual([
      ['dry', 0.571428571],
      ['wet', 0.428571429],
    ]);
    expect(evening(fairPlan, taps, answersOfClose(close)).weather.parts).toEqual(close.weather?.parts);
  });
});

describe('a close that is corrected', () => {
  const one = told(['dry', 605]);
  /** A second phone comes later: wet from noon. */
  const both = [
    ...one,
    tapOn(aTapLog('phone002'), { what: 'weather', weatherId: 'wet' }, { at: 720 * MS_PER_MINUTE }),
  ];

  it('takes the weather as it was tapped, also on a phone that comes later', () => {
    const close = closeOf(fairPlan, one);
    expect(close.weather?.factor).toBe(1);
    expect(answersOfClose(close).weatherOfDays).toEqual({});
    // Two hours dry, five wet: 2/7 + 5/7 × 0.30 = 0.5.
    expect(evening(fairPlan, both, answersOfClose(close)).weather.factor).toBeCloseTo(0.5, 12);
  });

  it.each([
    ['of the day', { weatherOfDays: { [TEST_DAY]: 'showers' } }],
    ['of all days', { weatherId: 'showers' }],
  ])('keeps the weather as it was said %s, whatever is tapped', (_, said) => {
    const close = closeOf(fairPlan, one, { ...fairAnswers, ...said });
    expect(dayCloseSchema.parse(close)).toEqual(close);
    expect(answersOfClose(close).weatherOfDays).toEqual({ [TEST_DAY]: 'showers' });
    expect(evening(fairPlan, both, answersOfClose(close)).weather.factor).toBe(0.65);
  });

  it('takes a single weather of a day for said where the close is from before it kept what was', () => {
    const { weatherSaid: _, ...before } = closeOf(fairPlan, one);
    expect(answersOfClose(before).weatherOfDays).toEqual({ [TEST_DAY]: 'dry' });
  });
});

describe('the weather of two days', () => {
  const outcome = (weather: string, weatherIds: readonly string[], profit: number) => ({
    ...{ weather, weatherIds: [...weatherIds], chance: 0.2, sold: 50, netRevenue: 1000, profit },
    payPerHour: null,
  });
  const [day] = fairPlan.days;
  if (day === undefined) throw new Error('the fair has no day');
  const two: StallPlan = {
    ...fairPlan,
    days: [day, { ...day, day: SECOND, weight: 3 }],
    outcomes: [
      outcome('dry, wet', ['dry', 'wet'], 100),
      outcome('wet, dry', ['wet', 'dry'], 400),
      outcome('showers, showers', ['showers', 'showers'], 250),
    ],
  };

  it('is that of each, counted by what comes on it', () => {
    const found = evening(two, told(['wet', 600], ['dry', DAY_MINUTES + 600]));
    // A quarter wet, three quarters dry: 0.25 × 0.30 + 0.75.
    expect(found.weather.factor).toBeCloseTo(0.825, 12);
    expect(found.weatherId).toBeNull();
    expect(found.bridge).toMatchObject({ weather: 'wet, dry', from: 400 });
  });

  it('starts the bridge from the plan for it, whatever the weathers are called', () => {
    const named: StallPlan = {
      ...two,
      weathers: two.weathers.map((one) => (one.id === 'showers' ? { ...one, name: 'rain, then sun' } : one)),
    };
    const answers = { ...fairAnswers, weatherId: 'showers' };
    expect(evening(named, told(), answers).bridge).toMatchObject({ from: 250 });
  });

  it('is that of the day that was told where the other was not, and starts from no plan of its own', () => {
    const found = evening(two, told(['wet', 600]), { ...noAnswers, ...fairAnswers });
    expect(found.weather).toMatchObject({ factor: expect.closeTo(0.3, 12), weatherIds: null });
    expect(found.bridge?.weather).toBeNull();
  });
});
