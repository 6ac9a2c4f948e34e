import { describe, expect, it } from 'vitest';
import type { StallDay } from '@/shared/schemas/stallDay';
import { fairAsked, fairWith, type Planned, plannedFair } from '@/tests/fixtures/fairAsked';

/*
 * Preparing a design and setting a job up costs once: what brings less than that is not advised.
 */
const { ranges } = fairAsked.stallDay;
const [shirts, mugs] = ranges;
if (shirts === undefined || mugs === undefined) throw new Error('the fair has no shirts and mugs');
const starL = { jobId: 'fair-shirts', lineId: 'star-map', size: 'L' };

const withStar = (changes: Partial<StallDay['ranges'][number]['designs'][number]>): StallDay['ranges'] => [
  {
    ...shirts,
    designs: shirts.designs.map((one) => (one.lineId === 'star-map' ? { ...one, ...changes } : one)),
  },
  ...ranges.slice(1),
];
const withMugs = (changes: Partial<StallDay['ranges'][number]>): StallDay['ranges'] =>
  ranges.map((range) => (range.id === mugs.id ? { ...range, ...changes } : range));

const starShirts = ({ goods }: Planned) =>
  goods.filter(({ jobId, lineId }) => jobId === 'fair-shirts' && lineId === 'star-map');
const advised = (plan: Planned) => starShirts(plan).map((one) => one.advised);
const planned = (changed: StallDay['ranges'], more: Parameters<typeof fairWith>[1] = {}) =>
  plannedFair(fairWith({ held: [], ranges: changed }, more));
const starOf = (share: number, more: Parameters<typeof fairWith>[1] = {}) =>
  planned(withStar({ share }), more);

describe('a design that brings less than preparing it costs', () => {
  it.each([0.004, 0.008, 0.012, 0.02, 0.16])(
    'at a share of %f is worth what it is without it, or more',
    (share) => {
      const plan = starOf(share);
      const without = planned(withStar({ share, isLeftOut: true }));
      expect(plan.advice.weighted.profit).toBeGreaterThanOrEqual(without.advice.weighted.profit - 1e-9);
    },
  );

  it('stays at home whole, and says why', () => {
    // 0.76 are asked for when it is dry, so of M, L and XL hardly half a shirt sells: some 9 less the 8 that two and a half
    // unsold ones lose, and preparing the file takes more than that 1.
    const plan = starOf(0.012);
    expect(advised(plan)).toEqual([0, 0, 0, 0, 0, 0]);
    expect(new Set(starShirts(plan).map(({ advisedBy }) => advisedBy))).toEqual(new Set(['onceCost']));
  });

  it('comes along as before where it carries that', () => {
    // The worked fair.
    expect(advised(starOf(0.16))).toEqual([2, 4, 4, 3, 1, 1]);
    expect(plannedFair(fairWith({ held: [] })).goods.some(({ advisedBy }) => advisedBy === 'onceCost')).toBe(
      false,
    );
  });

  it('brings what lies finished, for that is prepared', () => {
    const plan = starOf(0.012, { atHome: [{ ...starL, pieces: 2 }] });
    expect(advised(plan)).toEqual([0, 0, 2, 0, 0, 0]);
    expect(plan.advice.made).toBe(starOf(0.012).advice.made);
  });

  it('comes along whole where some of it was pressed for the day, for then it was prepared', () => {
    const pressed = [{ ...starL, pieces: 1 }];
    const plan = starOf(0.012, { atHome: pressed, madeForDay: pressed });
    expect(advised(plan)).toEqual([0, 1, 1, 1, 0, 0]);
  });

  it('keeps the numbers its maker holds', () => {
    const plan = plannedFair(
      fairWith({ ranges: withStar({ share: 0.012 }), held: [{ ...starL, bring: 3 }] }),
    );
    expect(starShirts(plan).map(({ mine }) => mine)).toEqual([0, 0, 3, 0, 0, 0]);
    expect(advised(plan)).toEqual([0, 0, 0, 0, 0, 0]);
  });

  it('takes no place within limits', () => {
    const limits = { ...fairAsked.stallDay.limits, tablePieces: 60 };
    const plan = plannedFair(fairWith({ held: [], ranges: withStar({ share: 0.008 }), limits }));
    expect(advised(plan)).toEqual([0, 0, 0, 0, 0, 0]);
    expect(plan.advice.pieces).toBe(60);
  });
});

describe('a job that brings less than setting it up costs', () => {
  it('stays at home with all its designs', () => {
    // Two mugs leave some 17, and a session of their own takes more; no design of theirs is prepared for itself alone.
    const plan = planned(withMugs({ pieces: 2 }));
    const left = planned(withMugs({ designs: mugs.designs.map((one) => ({ ...one, isLeftOut: true })) }));
    expect(plan.advice.weighted.profit).toBeCloseTo(left.advice.weighted.profit, 9);
    const ofMugs = plan.goods.filter(({ rangeId }) => rangeId === mugs.id);
    expect(ofMugs.map((one) => [one.advised, one.advisedBy])).toEqual(ofMugs.map(() => [0, 'onceCost']));
  });
});
