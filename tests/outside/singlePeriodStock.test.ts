import { describe, expect, it } from 'vitest';
import { stockFor } from '@/lib/stall/plan/advice/stockFor';
import { demandOf } from '@/lib/stall/plan/demand/demand';
import { poissonChances } from '@/lib/stall/plan/demand/poissonChances';

/*
 * A published stock for a single period: price 7, cost 5, nothing left of what stays, demand normal with mean 50 and
 * standard deviation 20: 39 pieces earn 52.40715617998893, 3.656120545715868 of them stay (documentation of a package
 * for that problem, F. Huettner). Its sums are made here by integrals, the number is ours.
 *
 * Of q pieces (q − D)⁺ stay in the mean: for a normal demand D of mean μ and deviation σ, and z = (q − μ) ÷ σ, that is the
 * integral of Φ up to q, which by parts is σ × (z Φ(z) + φ(z)). Sold is q less what stays, so 7 (q − stays) − 5 q is
 * earned; it grows by 7 (1 − Φ) − 5 a piece, until Φ reaches 2 ÷ 7.
 */
const PRICE = 7;
const COST = 5;

/** Simpson's rule over the density, from twelve deviations below. */
function normalUpTo(z: number): number {
  const from = -12;
  const steps = 4000;
  const width = (z - from) / steps;
  const density = (at: number) => Math.exp((-at * at) / 2) / Math.sqrt(2 * Math.PI);
  let sum = density(from) + density(z);
  for (let step = 1; step < steps; step += 1) sum += (step % 2 === 1 ? 4 : 2) * density(from + step * width);
  return (sum * width) / 3;
}

/** What stays of so many: the mean of what is not asked for. */
function left(brought: number): number {
  const z = (brought - 50) / 20;
  return 20 * (z * normalUpTo(z) + Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI));
}

const earned = (brought: number) => PRICE * (brought - left(brought)) - COST * brought;

describe('the published example with normal demand', () => {
  const brought = stockFor((PRICE - COST) / PRICE, (pieces) => normalUpTo((pieces - 50) / 20), 1000);

  it('brings 39 pieces', () => {
    expect(brought).toBe(39);
  });

  it('earns 52.407, more than a piece fewer or more, and 3.656 stay', () => {
    expect(earned(brought)).toBeCloseTo(52.407_156_179_988_93, 8);
    expect(left(brought)).toBeCloseTo(3.656_120_545_715_868, 8);
    expect(earned(brought)).toBeGreaterThan(earned(brought - 1));
    expect(earned(brought)).toBeGreaterThan(earned(brought + 1));
  });
});

/*
 * Introductory Statistics 2e and Introductory Business Statistics 2e (OpenStax, Rice University), sections on the
 * Poisson distribution. The last is printed as 0.1733, from a chance that was rounded before: its terms give 0.17336.
 */
describe('published Poisson chances', () => {
  it('of a mean of 147: exactly 160, 0.0180; up to 160, 0.8666', () => {
    const { first, chances } = poissonChances(147);
    expect(chances[160 - first]?.toFixed(4)).toBe('0.0180');
    expect(
      demandOf([{ chance: 1, mean: 147 }])
        .chanceUpTo(160)
        .toFixed(4),
    ).toBe('0.8666');
  });

  it('of a mean of 0.75: more than one, 0.17336', () => {
    expect((1 - demandOf([{ chance: 1, mean: 0.75 }]).chanceUpTo(1)).toFixed(5)).toBe('0.17336');
  });
});
