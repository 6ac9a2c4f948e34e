import { describe, expect, it } from 'vitest';
import { jobsOfOtherDays } from '@/lib/stall/making/jobsOfOtherDays';
import { addDays } from '@/shared/days';
import type { StallDay } from '@/shared/schemas/stallDay';
import { fairAsked } from '@/tests/fixtures/fairAsked';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

const { stallDay } = fairAsked;

const on = (day: string, changes: Partial<StallDay> = {}): StallDay => ({
  ...stallDay,
  days: stallDay.days.map((one) => ({ ...one, day })),
  ...changes,
});
const jobs = (other: StallDay) => [...jobsOfOtherDays({ own: stallDay, other }, 'own', TEST_DAY)].sort();

describe('jobs of other stall days', () => {
  it('are those of one that is today or later, not of yesterday', () => {
    expect(jobs(on(TEST_DAY))).toEqual(['fair-mugs', 'fair-shirts']);
    expect(jobs(on(addDays(TEST_DAY, 1)))).toEqual(['fair-mugs', 'fair-shirts']);
    expect(jobs(on(addDays(TEST_DAY, -1)))).toEqual([]);
  });

  it('are those of one that has no day yet', () => {
    expect(jobs({ ...stallDay, days: [] })).toEqual(['fair-mugs', 'fair-shirts']);
  });

  it.each([{ stage: 'refused' }, { stage: 'calledOff' }, { archivedOn: TEST_DAY }] as const)(
    'are none of one that nobody goes to: %o',
    (changes) => {
      expect(jobs(on(TEST_DAY, changes))).toEqual([]);
    },
  );

  it('leave out designs that stay at home, and the day itself', () => {
    const [shirts, mugs] = stallDay.ranges;
    if (shirts === undefined || mugs === undefined) throw new RangeError('the fair has two ranges');
    const noMugs = { ...mugs, designs: mugs.designs.map((design) => ({ ...design, isLeftOut: true })) };
    expect(jobs(on(TEST_DAY, { ranges: [shirts, noMugs] }))).toEqual(['fair-shirts']);
    expect([...jobsOfOtherDays({ own: on(TEST_DAY) }, 'own', TEST_DAY)]).toEqual([]);
  });
});
