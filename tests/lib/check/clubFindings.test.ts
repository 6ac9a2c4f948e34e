import { describe, expect, it } from 'vitest';
import { checkJob } from '@/lib/check/checkJob';
import type { CostFacts } from '@/lib/check/costFacts';
import { reviewCosts } from '@/lib/check/reviewCosts';
import { fairShirts } from '@/lib/examples/fairJobs';
import { clubWork } from '@/tests/fixtures/benchWork';
import { club, mugs, TODAY, told } from '@/tests/fixtures/clubJob';

/** Minutes of the worked job by hand: 40 + 45 + 15 + 25 + 52.9 + 98.7 + 79.3 + 44.4 + 12 + 10 + 30 = 452.3. */
const facts: CostFacts = {
  attendedMinutes: 452.3,
  benchMinutes: 452.3 - 40 - 45 - 15,
  work: clubWork,
  sheets: 0,
  cases: [{ lineId: 'shirts', size: 'L', price: 19, outOfPocketFloor: 6.33, fullCost: 11.18, fees: 0 }],
  placements: [
    { lineId: 'shirts', placementId: 'back', print: 0, perSheet: 1, pieces: 37, sheets: 37, spare: 0 },
    { lineId: 'shirts', placementId: 'badge', print: 0, perSheet: 4, pieces: 37, sheets: 10, spare: 3 },
  ],
  suggested: [],
  lying: [],
  pressOrders: [{ lineId: 'shirts', cheaperOrder: null, saving: 0 }],
  ownPrices: [],
  breakPrices: [],
};

const named = (findings: ReturnType<typeof checkJob>['findings']) =>
  findings.map(({ id, severity }) => `${id} ${severity}`);

describe('the worked example', () => {
  it('has the findings its makers expect before any sum, and no others', () => {
    expect(named(checkJob(club()).findings)).toEqual([
      'ART-14 caution',
      'REC-12 caution',
      'SUB-12 note',
      'ART-01 note',
      'ART-04 note',
      'ART-13 note',
    ]);
  });

  it('has three more once its sums are known', () => {
    const { checked } = checkJob(club());
    if (checked === null) throw new Error('the worked example is stopped');
    expect(named(reviewCosts(checked, facts))).toEqual(['LAY-08 note', 'PLC-07 note', 'TIM-02 note']);
  });

  it('is measured as a person would: 187.5 ppi inside its box, and a shape 4.2 % off', () => {
    // 1500 px over 8 in, 1800 px over 9.6 in.
    expect(told(club(), 'ART-01')[0]?.facts.ppi).toBeCloseTo(187.5, 9);
    // 1500 ÷ 1800 = 0.8333 against 8 ÷ 10 = 0.8.
    const [shape] = told(club(), 'ART-04');
    expect(shape?.facts.off).toBeCloseTo(0.0417, 4);
    expect(shape?.fix?.facts).toEqual({
      widthMm: 203.2,
      heightMm: 243.84,
    });
  });
});

it.each([
  ['shirts', fairShirts(TODAY)],
  ['mugs', mugs()],
])('the fair’s %s are held up by nothing: the recipe alone is unproven', (_, input) => {
  expect(named(checkJob(input).findings)).toEqual(['REC-12 caution']);
});
