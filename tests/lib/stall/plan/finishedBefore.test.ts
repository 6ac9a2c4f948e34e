import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type GoodsReckoned, reckonGoods } from '@/lib/stall/plan/goodsReckoned';
import { breakEvens } from '@/lib/stall/plan/outcomes/breakEvens';
import { type PlanSeen, planOutcomes, weightedOutcome } from '@/lib/stall/plan/outcomes/planOutcomes';
import { planSpread } from '@/lib/stall/plan/outcomes/planSpread';
import { fairAsked, fairWith, plannedFair } from '@/tests/fixtures/fairAsked';
import { fixedRate, typed } from '@/tests/fixtures/numbers';
import { cases } from '@/tests/tools/cases';

/*
 * Pieces that came home from an earlier day were written down then: sold they cost their leftover value, unsold nothing.
 */
const [line] = fairAsked.jobs[0]?.input.job.lines ?? [];
if (line === undefined) throw new Error('the fair has no shirt');

interface Drawn {
  readonly expected: number;
  readonly cost: number;
  readonly leftoverShare: number;
  readonly bring: number;
  readonly home: number;
}

const scenarios = [
  { name: 'dry', weatherIds: ['dry'], chance: 0.7, factor: 1 },
  { name: 'wet', weatherIds: ['wet'], chance: 0.3, factor: 0.4 },
];

/** Of a net price of 10 fees take 0.25 and packaging 0.10. */
const goodsOf = ({ expected, cost, leftoverShare, home }: Drawn, of = scenarios): GoodsReckoned =>
  reckonGoods(
    {
      ...{ jobId: 'job', lineId: 'fern', size: 'M', rangeId: 'range', design: 'Fern', line },
      ...{ leftoverShare, expected, atHome: home, finishedBefore: home, held: null },
    },
    {
      ...{ cost, costWithOverhead: cost, cash: cost / 2, packaging: 0.1 },
      ...{ feeShare: 0.02, cardFixed: 0.05 },
    },
    10.7,
    { taxMode: 'inside', tax: fixedRate(0.07, 'share') },
    of,
  );

const seenOf = (drawn: readonly Drawn[], of = scenarios): PlanSeen => ({
  goods: drawn.map((one) => goodsOf(one, of)),
  bring: drawn.map(({ bring }) => bring),
  scenarios: of,
  day: { sunk: 1, avoidable: 2, hours: 0.5, wage: 10, overheadPerHour: 0 },
  batch: { once: 2, benchHours: 0, benchPay: 0, cash: 0 },
  withTax: 1.07,
});

const drawn: fc.Arbitrary<Drawn> = fc.record({
  expected: typed(0.1, 12),
  cost: typed(1, 8),
  leftoverShare: typed(0, 1),
  bring: fc.integer({ min: 0, max: 15 }),
  home: fc.integer({ min: 0, max: 20 }),
});

describe('pieces from home', () => {
  it('leave in every weather and on every day drawn what they lost before more than pieces made for the day', () => {
    fc.assert(
      fc.property(fc.array(drawn, { minLength: 1, maxLength: 3 }), (all) => {
        const made = seenOf(all.map((one) => ({ ...one, home: 0 })));
        const seen = seenOf(all);
        const lost = all.reduce(
          (sum, { bring, home, cost, leftoverShare }) =>
            sum + Math.min(bring, home) * (cost - leftoverShare * cost),
          0,
        );
        for (const [at, outcome] of planOutcomes(seen).entries())
          expect(outcome.profit - (planOutcomes(made)[at]?.profit ?? 0)).toBeCloseTo(lost, 8);
        expect(weightedOutcome(seen).profit - weightedOutcome(made).profit).toBeCloseTo(lost, 8);
        const [one, other] = [planSpread(seen), planSpread(made)];
        expect(one.p50 - other.p50).toBeCloseTo(lost, 8);
        expect(one.sd).toBeCloseTo(other.sd, 8);
      }),
      cases(60),
    );
  });

  // Whoever brings two of fifty asked for sells both; one of them came home worth 2 of its 4.
  const two: Drawn = { expected: 50, cost: 4, leftoverShare: 0.5, bring: 2, home: 1 };
  const dry = scenarios.slice(0, 1).map((one) => ({ ...one, chance: 1 }));

  it('that are sold cost their leftover value, and break even sooner', () => {
    const seen = seenOf([two], dry);
    const [outcome] = planOutcomes(seen);
    // 2 × (10 − 0.25 − 0.10) − 2 − 4; the day and the batch take 10.
    expect(outcome?.contribution).toBeCloseTo(13.3, 6);
    expect(outcome?.profit).toBeCloseTo(3.3, 6);
    const found = breakEvens(seen);
    expect(found?.contributionPerPiece).toBeCloseTo(6.65, 6);
    expect(found?.everything).toBeCloseTo(10 / 6.65, 6);
    // Of one piece in two that is not sold 2 are lost: 6.65 x − 10 − 2 (1 − x ÷ 2) is 0.
    expect(found?.withWriteDown).toBeCloseTo(12 / 7.65, 6);
  });

  it('that stay are worth what they were, and lose nothing more', () => {
    const seen = seenOf([{ ...two, expected: 1e-9, bring: 3, home: 2 }], dry);
    const [outcome] = planOutcomes(seen);
    // Two at 2 and one at 4, of which the last loses 2.
    expect(outcome?.leftoverCost).toBeCloseTo(8, 6);
    expect(outcome?.profit).toBeCloseTo(-10 - 2, 6);
  });
});

describe('the worked fair with sixty of one shirt at home', () => {
  const otterL = { jobId: 'fair-shirts', lineId: 'otter', size: 'L' };
  const home = { atHome: [{ ...otterL, pieces: 60 }] };

  it('earns no less by bringing all of them than by bringing six', () => {
    const all = plannedFair(fairWith({ held: [] }, home));
    expect(all.advice.bring.find((one) => one.lineId === 'otter' && one.size === 'L')?.bring).toBe(60);
    const six = plannedFair(fairWith({ held: [{ ...otterL, bring: 6 }] }, home));
    expect(six.mine.weighted.profit).toBeLessThanOrEqual(all.advice.weighted.profit);
    // 60 × 40 % of 6.512 were lost before; the rest of the day is the same.
    const made = plannedFair(fairWith({ held: [] }, { ...home, madeForDay: home.atHome }));
    const once = all.mine.batch - made.mine.batch;
    expect(all.mine.weighted.profit - made.mine.weighted.profit + once).toBeCloseTo(60 * 0.4 * 6.512, 1);
  });
});
