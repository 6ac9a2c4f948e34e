import { Decimal } from 'decimal.js';
import { describe, expect, it } from 'vitest';
import { blanksForConfidence } from '@/lib/job/blanksForConfidence';

/*
 * The chance that enough blanks end good is a tail of the binomial distribution: of `blanks`, no more than
 * `blanks − pieces` are faulty. Published values: a table of F(x) for n = 5, p = 0.10 and n = 8, p = 0.05 (M. Baron,
 * Probability and Statistics for Computer Scientists, appendix). The sums are made here from the definition, in decimals.
 */
const Exact = Decimal.clone({ precision: 50 });

function tail(pieces: number, blanks: number, chance: number): Decimal {
  let sum = new Exact(0);
  let ways = new Exact(1);
  for (let faulty = 0; faulty <= blanks - pieces; faulty += 1) {
    const good = blanks - faulty;
    sum = sum.plus(ways.times(new Exact(chance).pow(good)).times(new Exact(1).minus(chance).pow(faulty)));
    ways = ways.times(good).dividedBy(faulty + 1);
  }
  return sum;
}

const of = (pieces: number, chance: number, confidence: number) =>
  blanksForConfidence([{ pieces, chance, price: 1 }], confidence);

describe('the chance that enough blanks end good', () => {
  it.each([
    // pieces of blanks, fault 10 %: one faulty of five at most; fault 5 %: one of eight, two of eight.
    [4, 5, 0.9, '0.9185'],
    [7, 8, 0.95, '0.9428'],
    [6, 8, 0.95, '0.9942'],
  ])('%d of %d at %d each is the published %s', (pieces, blanks, chance, published) => {
    const found = of(pieces, chance, Number(published) - 0.001);
    expect(found.blanks).toEqual([blanks]);
    expect(found.covered.toFixed(4)).toBe(published);
  });

  it.each([
    [1, 0.97, 0.9],
    [20, 0.95, 0.95],
    [96, 0.9603, 0.9],
    [500, 0.93, 0.99],
    [2000, 0.9, 0.999],
  ])(
    'of %d pieces at %d is that of the definition, and no blank fewer reaches it',
    (pieces, chance, wanted) => {
      const { blanks, covered } = of(pieces, chance, wanted);
      const [count = 0] = blanks;
      expect(Math.abs(covered - tail(pieces, count, chance).toNumber())).toBeLessThan(1e-10);
      if (count > Math.floor(pieces / chance))
        expect(tail(pieces, count - 1, chance).toNumber()).toBeLessThan(wanted);
    },
  );
});
