import { describe, expect, it } from 'vitest';
import { fairMugs, fairShirts } from '@/lib/examples/fairJobs';
import { springFair } from '@/lib/examples/springFair';
import { duesOf } from '@/lib/stall/days/duesOf';
import { copiedStallDay, freshStallDay } from '@/lib/stall/days/newStallDay';
import { standingAt } from '@/lib/stall/days/openHours';
import { stallCalendar } from '@/lib/stall/days/stallCalendar';
import { addDays } from '@/shared/days';
import { type StallDay, stallDaySchema } from '@/shared/schemas/stallDay';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

const noProof = { state: 'notNeeded', until: null } as const;
const stallDay = (to: Partial<StallDay> = {}): StallDay =>
  stallDaySchema.parse({ name: 'Harbour market', permit: noProof, insurance: noProof, ...to });
const open = (day: string): StallDay['days'][number] => ({
  id: day,
  day,
  fromMinute: 600,
  toMinute: 960,
  weight: 1,
});
const inDays = (count: number) => addDays(TEST_DAY, count);
const fee: StallDay['costs'][number] = {
  id: 'fee',
  what: 'Stall fee',
  amount: { of: 'typed', money: 85 },
  kind: 'sunk',
  isStallFee: true,
  paidOn: null,
};

describe('what is due for a stall day', () => {
  it.each<[string, Partial<StallDay>, readonly unknown[]]>([
    ['a day to be set', { days: [] }, [{ kind: 'day' }]],
    ['nothing, once all is settled', {}, []],
    [
      'the application, while it is an idea',
      { stage: 'idea', applyBy: inDays(9), answerBy: inDays(20) },
      [{ kind: 'apply', by: inDays(9) }],
    ],
    [
      'the answer, once it is applied for',
      { stage: 'applied', applyBy: inDays(-9), answerBy: inDays(20) },
      [{ kind: 'answer', by: inDays(20) }],
    ],
    [
      'the fee, once it is accepted',
      { stage: 'accepted', costs: [fee] },
      [{ kind: 'fee', what: 'Stall fee', costId: 'fee' }],
    ],
    ['no fee before it is accepted', { stage: 'applied', costs: [fee] }, []],
    ['no fee that is paid', { stage: 'accepted', costs: [{ ...fee, paidOn: TEST_DAY }] }, []],
    [
      'a permit nobody has spoken of',
      { permit: { state: 'unset', until: null } },
      [{ kind: 'proof', of: 'permit', state: 'unset' }],
    ],
    [
      'an insurance that ends the day before',
      { insurance: { state: 'have', until: inDays(29) } },
      [{ kind: 'proofEnds', of: 'insurance', on: inDays(29) }],
    ],
    ['none that ends with the day', { insurance: { state: 'have', until: inDays(30) } }, []],
    ['nothing of one that is refused', { stage: 'refused', days: [], costs: [fee] }, []],
  ])('is %s', (_, to, expected) => {
    expect(duesOf(stallDay({ days: [open(inDays(30))], ...to }))).toEqual(expected);
  });
});

describe('the calendar of stall days', () => {
  const days = {
    autumn: stallDay({ name: 'Autumn', days: [open(inDays(-1)), open(inDays(0))] }),
    spring: stallDay({ name: 'Spring', days: [open(inDays(60))] }),
    winter: stallDay({ name: 'Winter', days: [open(inDays(20))] }),
    someday: stallDay({ name: 'Someday', days: [] }),
    last: stallDay({ name: 'Last', days: [open(inDays(-1))] }),
    older: stallDay({ name: 'Older', days: [open(inDays(-100))] }),
    refused: stallDay({ name: 'Refused', days: [open(inDays(5))], stage: 'refused' }),
    away: stallDay({ name: 'Away', days: [open(inDays(5))], archivedOn: TEST_DAY }),
  };
  const { coming, over, putAway } = stallCalendar(days, TEST_DAY, () => false);
  const ids = (rows: readonly { readonly id: string }[]) => rows.map(({ id }) => id);

  it('has what may still be sold at first, one without a day before all', () => {
    expect(ids(coming)).toEqual(['someday', 'autumn', 'winter', 'spring']);
  });

  it('has what is over or refused with the latest first, and what is put away apart', () => {
    expect(ids(over)).toEqual(['refused', 'last', 'older']);
    expect(ids(putAway)).toEqual(['away']);
  });
});

describe('a new stall day', () => {
  const { workshop } = fairMugs(TEST_DAY);
  const fair = springFair({
    day: TEST_DAY,
    fairDay: inDays(21),
    jobs: { 'fair-shirts': fairShirts(TEST_DAY).job, 'fair-mugs': fairMugs(TEST_DAY).job },
    times: 1,
    isMetric: false,
  });
  const at = { name: 'Autumn fair', day: inDays(90), dayId: 'autumn' };

  it('from scratch says nothing nobody told: no chance, no cost, no way of selling among several', () => {
    const fresh = freshStallDay(at, workshop, TEST_DAY);
    expect(workshop.channels.length).toBeGreaterThan(1);
    expect(fresh.channelId).toBeNull();
    expect(fresh.weathers.map(({ chance }) => chance)).toEqual([null, null, null]);
    expect(fresh.weathers.map(({ factor }) => factor?.origin)).toEqual(['typical', 'typical', 'typical']);
    expect(fresh.costs).toEqual([]);
    expect(fresh.permit.state).toBe('unset');
    expect(fresh.isOutdoor).toBeNull();
    expect(fresh.days).toEqual([
      { id: 'autumn', day: inDays(90), fromMinute: 600, toMinute: 1020, weight: 1 },
    ]);
  });

  it('takes the one way of selling there is', () => {
    const channels = workshop.channels.filter(({ id }) => id === 'stall');
    expect(freshStallDay(at, { channels }, TEST_DAY).channelId).toBe('stall');
  });

  it('as an earlier one has its goods, costs, hours and list, and none of what was that day’s alone', () => {
    const packed = {
      ...fair,
      takeAlong: fair.takeAlong.map((thing) => ({ ...thing, isPacked: true })),
      made: [{ jobId: 'for-spring', of: 'fair-shirts' }],
    };
    const copy = copiedStallDay(at, { id: 'spring', stallDay: packed });
    expect(copy.ranges).toEqual(fair.ranges);
    expect(copy.hours).toEqual(fair.hours);
    expect(copy.prices).toEqual(fair.prices);
    expect(copy.costs.map(({ what, paidOn }) => [what, paidOn])).toEqual(
      fair.costs.map(({ what }) => [what, null]),
    );
    expect(copy.held).toEqual([]);
    expect(copy.made).toEqual([]);
    // What was noted for it is found by this, and not copied.
    expect(copy.likeId).toBe('spring');
    expect(copy.stage).toBe('idea');
    expect(copy.permit).toEqual({ state: 'unset', until: null });
    expect(copy.attachments).toEqual([]);
    expect(copy.takeAlong.some(({ isPacked }) => isPacked)).toBe(false);
    expect(copy.days).toEqual([
      { id: 'autumn', day: inDays(90), fromMinute: 600, toMinute: 1020, weight: 1 },
    ]);
  });

  it('copied without a day has none', () => {
    expect(copiedStallDay({ ...at, day: null }, { id: 'spring', stallDay: fair }).days).toEqual([]);
  });
});

describe('a minute of the last day', () => {
  const first = { ...open(inDays(0)), fromMinute: 480, toMinute: 1200 };
  const night = { ...open(inDays(1)), fromMinute: 1080, toMinute: 120 };

  it.each([
    // Open from 10:00 to 16:00.
    [[first, open(inDays(1))], 599, 'before'],
    [[first, open(inDays(1))], 600, 'open'],
    [[open(inDays(1)), first], 959, 'open'],
    [[first, open(inDays(1))], 960, 'after'],
    // From 18:00 to 2:00 of the night after.
    [[first, night], 1079, 'after'],
    [[first, night], 1080, 'open'],
    [[first, night], 119, 'open'],
    [[first, night], 120, 'after'],
    [[], 1110, 'open'],
  ] as const)('%j at %i is %s', (days, minute, at) => {
    expect(standingAt({ days: [...days] }, minute)).toBe(at);
  });
});
