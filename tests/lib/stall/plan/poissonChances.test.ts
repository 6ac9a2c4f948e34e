import { Decimal } from 'decimal.js';
import { describe, expect, it } from 'vitest';
import { demandOf, poissonDemand } from '@/lib/stall/plan/demand/demand';
import { poissonChances } from '@/lib/stall/plan/demand/poissonChances';

/** By its definition, in sixty-digit decimals: λ^k e^−λ ÷ k!. */
function byDefinition(mean: number, last: number): readonly Decimal[] {
  const Exact = Decimal.clone({ precision: 60 });
  const chances = [new Exact(-mean).exp()];
  for (let count = 1; count <= last; count += 1) {
    const before = chances[count - 1] ?? new Exact(0);
    chances.push(before.times(mean).dividedBy(count));
  }
  return chances;
}

describe('poissonChances', () => {
  it.each([0.01, 0.75, 5.184, 49.9, 50, 51, 147, 700, 746, 2000])(
    'of a mean of %d are those of the definition, each and added up',
    (mean) => {
      const last = Math.ceil(mean + 10 * Math.sqrt(mean) + 10);
      const { first, chances } = poissonChances(mean);
      let reached = new Decimal(0);
      const { chanceUpTo } = poissonDemand(mean);
      for (const [count, exact] of byDefinition(mean, last).entries()) {
        reached = reached.plus(exact);
        expect(Math.abs((chances[count - first] ?? 0) - exact.toNumber())).toBeLessThan(1e-14);
        expect(Math.abs(chanceUpTo(count) - reached.toNumber())).toBeLessThan(1e-12);
      }
    },
  );

  it('is certain of nothing where nothing is expected', () => {
    expect(poissonChances(0)).toEqual({ first: 0, chances: [1] });
  });

  it('keeps only counts that can be: of a mean of four million some 9 spreads to either side, each of 2,000', () => {
    const { first, chances } = poissonChances(4e6);
    expect(first).toBeGreaterThan(4e6 - 20_000);
    expect(chances.length).toBeLessThan(40_000);
    expect(chances.reduce((sum, chance) => sum + chance, 0)).toBeCloseTo(1, 12);
    // The middle of a Poisson count lies within one below its mean and a third above it.
    const { chanceUpTo, sold } = poissonDemand(4e6);
    expect(chanceUpTo(4e6 - 2)).toBeLessThan(0.5);
    expect(chanceUpTo(4e6 + 1)).toBeGreaterThan(0.5);
    expect(sold(1000)).toBe(1000);
    expect(sold(5e6)).toBeCloseTo(4e6, 3);
  });
});

describe('what is sold of so many', () => {
  it('is the mean of what is asked for, cut off at what there is', () => {
    // A mean of 2: chances of 0 and 1 are e^−2 and 2 e^−2, so two pieces sell 2 − 2·e^−2 − 2·e^−2 in the mean.
    const { sold } = demandOf([{ chance: 1, mean: 2 }]);
    expect(sold(0)).toBe(0);
    expect(sold(1)).toBeCloseTo(1 - Math.exp(-2), 12);
    expect(sold(2)).toBeCloseTo(2 - 4 * Math.exp(-2), 12);
    expect(sold(1000)).toBeCloseTo(2, 12);
  });

  it('is that of each weather by its chance', () => {
    const mixed = demandOf([
      { chance: 0.75, mean: 4 },
      { chance: 0.25, mean: 1 },
    ]);
    // One piece is sold unless nobody asks.
    expect(mixed.sold(1)).toBeCloseTo(0.75 * (1 - Math.exp(-4)) + 0.25 * (1 - Math.exp(-1)), 12);
    expect(mixed.chanceUpTo(0)).toBeCloseTo(0.75 * Math.exp(-4) + 0.25 * Math.exp(-1), 12);
  });
});
