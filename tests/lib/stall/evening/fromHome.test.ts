import { describe, expect, it } from 'vitest';
import type { TappedEntry } from '@/lib/stall/count/tappedEntry';
import type { EveningAnswers } from '@/lib/stall/evening/eveningAnswers';
import type { Tap } from '@/shared/schemas/stallEvents';
import type { StallPlan } from '@/shared/schemas/stallPapers';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { fairAnswers, fairEvening } from './fairEvening';

const { jobId, lineId, size, ...shirt } = fairPlan.goods[0] ?? {};
if (jobId === undefined || lineId === undefined || size === undefined)
  throw new Error('the fair has no shirt');
const goods = { jobId, lineId, size };

/** A fair of one shirt that costs 6.50, of which 3.90 are left when it comes home, and that costs nothing else. */
const planOf = (bring: number, fromHome: number): StallPlan => ({
  ...fairPlan,
  ...{ taxMode: 'none', tax: 0, cardShare: 0, sets: [] },
  goods: [
    {
      ...fairPlan.goods[0],
      ...shirt,
      ...goods,
      cost: 6.5,
      packaging: 0,
      leftoverShare: 0.6,
      bring,
      fromHome,
    },
  ] as StallPlan['goods'],
  costs: { ...fairPlan.costs, ...{ cash: 0, avoidable: 0, stallFee: 0, hours: 0, batch: 0, benchHours: 0 } },
});

const tapsOf = (taps: readonly Tap[]): readonly TappedEntry[] =>
  taps.map((tap, at) => ({
    ...{ id: `phone-${at + 1}`, device: 'phonephone', count: at + 1, at: (620 + at) * 60_000 },
    body: { stallDayId: fairPlan.stallDayId, planId: 'plan-1', currency: 'USD', tap },
  }));

const sales = (pieces: number): readonly Tap[] =>
  Array.from({ length: pieces }, () => ({ what: 'sale', goods, minor: 2800, pay: 'cash' }) as const);

const answers: EveningAnswers = { ...fairAnswers, cash: { ...fairAnswers.cash, counted: null } };
const eveningOf = (plan: StallPlan, taps: readonly Tap[]) => fairEvening(answers, plan, tapsOf(taps));

describe('ten shirts made at 6.50', () => {
  it('cost 65.00 over the four fairs they are sold at, and no more', () => {
    const fairs = [
      { bring: 10, fromHome: 0, sold: 1 },
      { bring: 9, fromHome: 9, sold: 1 },
      { bring: 8, fromHome: 8, sold: 1 },
      { bring: 7, fromHome: 7, sold: 7 },
    ];
    const charged = fairs.map(({ bring, fromHome, sold }) => {
      const { profit } = eveningOf(planOf(bring, fromHome), sales(sold)).result;
      return Math.round((sold * 28 - (profit ?? Number.NaN)) * 100) / 100;
    });
    // 6.50 of the one sold and 9 × 2.60; then 3.90 of each.
    expect(charged).toEqual([29.9, 3.9, 3.9, 27.3]);
    expect(charged.reduce((sum, one) => sum + one, 0)).toBeCloseTo(65, 8);
  });
});

describe('an evening with three of ten from home', () => {
  it('sells these first, and writes down only what was made for the day', () => {
    const { result } = eveningOf(planOf(10, 3), sales(2));
    expect(result.contribution).toBeCloseTo(2 * 28 - 2 * 3.9, 8);
    // Seven at 6.50 and one at 3.90.
    expect(result.leftoverCost).toBeCloseTo(49.4, 8);
    expect(result.writtenDown).toBeCloseTo(7 * 2.6, 8);
  });

  it('takes a refill from home too, as far as pieces lay there', () => {
    const refill: Tap = { what: 'refill', goods, pieces: 4 };
    // Six lay there, four came along and two of the refill.
    const { result } = eveningOf(planOf(4, 6), [refill, ...sales(8)]);
    expect(result.contribution).toBeCloseTo(8 * 28 - 6 * 3.9 - 2 * 6.5, 8);
    expect(result.profit).toBeCloseTo(8 * 28 - 6 * 3.9 - 2 * 6.5, 8);
  });

  it('bears what was spoiled or given at its leftover value where only pieces from home were there', () => {
    const spoiled: Tap = { what: 'damaged', goods, isSecond: false };
    const second: Tap = { what: 'damaged', goods, isSecond: true };
    expect(eveningOf(planOf(3, 3), [spoiled]).result.gone).toBeCloseTo(3.9, 8);
    // A second keeps what leftovers keep, which is what it was worth.
    expect(eveningOf(planOf(3, 3), [second]).result.gone).toBeCloseTo(0, 8);
    expect(eveningOf(planOf(3, 0), [second]).result.gone).toBeCloseTo(2.6, 8);
  });

  it('adds up from the plan to the day', () => {
    const spoiled: Tap = { what: 'damaged', goods, isSecond: false };
    const { bridge, result } = eveningOf(planOf(5, 4), [spoiled, ...sales(2)]);
    const steps = (bridge?.steps ?? []).reduce((sum, { by }) => sum + by, 0);
    expect((bridge?.from ?? 0) + steps).toBeCloseTo(result.profit ?? Number.NaN, 8);
    // 2 × 28 − 2 × 3.90; two from home stay and lose nothing; the one made is what was spoiled.
    expect(result.profit).toBeCloseTo(56 - 7.8 - 6.5, 8);
  });
});
