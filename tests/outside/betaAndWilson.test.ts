import { jStat } from 'jstat';
import { describe, expect, it } from 'vitest';
import { betaQuantile } from '@/lib/statistics/betaQuantile';
import { betaShare } from '@/lib/statistics/betaShare';
import { wilson } from '@/lib/statistics/wilson';

/** What a standard normal variable does not exceed with 95 and 97.5 %; common tables. */
const NORMAL_95 = 1.644854;
const NORMAL_975 = 1.959964;

/*
 * NIST/SEMATECH e-Handbook of Statistical Methods, 7.2.4 and 7.2.4.1: 26 defects in 200 have a one-sided lower limit of
 * 0.09577 at 95 %; 4 in 20 an exact 90 % interval of 0.071354 to 0.401029 (its last digit is rounded wrongly, 0.4010281).
 * 24 in 100: 0.160225 to 0.335735 exactly at 95 % (Six Sigma Demystified, p. 213).
 */
describe('published limits', () => {
  it.each([
    { name: 'lower of 4 in 20', chance: 0.05, a: 4, b: 17, share: 0.0713539 },
    { name: 'upper of 4 in 20', chance: 0.95, a: 5, b: 16, share: 0.4010281 },
    { name: 'lower of 24 in 100', chance: 0.025, a: 24, b: 77, share: 0.160225 },
    { name: 'upper of 24 in 100', chance: 0.975, a: 25, b: 76, share: 0.335735 },
  ])('betaQuantile gives the $name', ({ chance, a, b, share }) => {
    expect(betaQuantile(chance, a, b)).toBeCloseTo(share, 6);
  });

  it('wilson gives the one-sided lower limit of 26 in 200', () => {
    expect(wilson(26 / 200, 200, NORMAL_95).lower).toBeCloseTo(0.09577, 5);
  });

  it('wilson gives both limits of 26 in 200', () => {
    const { lower, upper } = wilson(26 / 200, 200, NORMAL_975);
    expect(lower).toBeCloseTo(0.090282, 6);
    expect(upper).toBeCloseTo(0.183664, 6);
  });

  // Beta(seen + ½, rest + ½) has its limits within a few thousandths of Wilson's once some hundred were seen: L. Brown,
  // T. Cai, A. DasGupta, Statistical Science 16, 101–133, 2001.
  it.each([
    { seen: 26, of: 200 },
    { seen: 24, of: 300 },
    { seen: 400, of: 1000 },
  ])('betaQuantile comes near to them for $seen in $of', ({ seen, of }) => {
    const { lower, upper } = wilson(seen / of, of, NORMAL_95);
    const beta = (chance: number) => betaQuantile(chance, seen + 0.5, of - seen + 0.5);
    expect(Math.abs(beta(0.05) - lower)).toBeLessThan(0.003);
    expect(Math.abs(beta(0.95) - upper)).toBeLessThan(0.003);
  });
});

// Its gamma function is good to about 1e-8: Beta(120, 120) at a half, which is a half, comes to 0.49999999.
describe('an independent library, where it is sound', () => {
  const shapes = [0.5, 1, 2.5, 4, 17, 50, 120];
  const pairs = shapes.flatMap((a) => shapes.map((b) => ({ a, b })));

  it.each(pairs)('agrees on the share of Beta($a, $b)', ({ a, b }) => {
    for (const x of [0.01, 0.1, 0.25, 0.5, 0.75, 0.9, 0.99]) {
      expect(betaShare(x, a, b)).toBeCloseTo(jStat.beta.cdf(x, a, b), 7);
    }
  });

  it.each(pairs)('agrees on the quantiles of Beta($a, $b)', ({ a, b }) => {
    for (const chance of [0.05, 0.1, 0.5, 0.9, 0.95]) {
      expect(betaQuantile(chance, a, b)).toBeCloseTo(jStat.beta.inv(chance, a, b), 6);
    }
  });
});
