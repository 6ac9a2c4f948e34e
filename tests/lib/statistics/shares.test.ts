import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { betaQuantile } from '@/lib/statistics/betaQuantile';
import { betaShare } from '@/lib/statistics/betaShare';
import { wilson } from '@/lib/statistics/wilson';
import { cases } from '@/tests/tools/cases';

describe('betaShare', () => {
  it('is a plain power where one shape is 1', () => {
    expect(betaShare(0.3, 4, 1)).toBeCloseTo(0.3 ** 4, 14);
    expect(betaShare(0.3, 1, 4)).toBeCloseTo(1 - 0.7 ** 4, 14);
  });

  it('is a sum of binomial chances where both shapes are whole', () => {
    // Beta(2, 3) at x is the chance of 2 or more in 4: 6x²(1−x)² + 4x³(1−x) + x⁴; at ½ (6 + 4 + 1) ÷ 16.
    expect(betaShare(0.5, 2, 3)).toBeCloseTo(11 / 16, 14);
  });

  it('is nothing at 0 and all at 1', () => {
    expect([betaShare(0, 2, 3), betaShare(1, 2, 3)]).toEqual([0, 1]);
  });

  it('refuses shapes that are none', () => {
    expect(() => betaShare(0.5, 0, 3)).toThrow(RangeError);
  });
});

describe('betaQuantile', () => {
  it('undoes betaShare', () => {
    const shape = fc.double({ min: 0.2, max: 5000, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: 0.001, max: 0.999, noNaN: true }), shape, shape, (chance, a, b) => {
        const x = betaQuantile(chance, a, b);
        const near = betaShare(Math.min(1, x + 1e-12), a, b) - betaShare(Math.max(0, x - 1e-12), a, b);
        expect(Math.abs(betaShare(x, a, b) - chance)).toBeLessThan(1e-9 + near);
      }),
      cases(300),
    );
  });

  it('stays at the ends', () => {
    expect([betaQuantile(0, 2, 3), betaQuantile(1, 2, 3)]).toEqual([0, 1]);
  });
});

describe('wilson', () => {
  it('stays between 0 and 1 and holds the share seen', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 5000 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (of, part) => {
          const share = Math.round(of * part) / of;
          const { lower, upper } = wilson(share, of, 1.644854);
          expect(lower).toBeGreaterThanOrEqual(0);
          expect(upper).toBeLessThanOrEqual(1);
          expect(lower).toBeLessThanOrEqual(share + 1e-12);
          expect(upper).toBeGreaterThanOrEqual(share - 1e-12);
        },
      ),
      cases(300),
    );
  });

  // None of n: the upper limit is z² ÷ (n + z²), 2² ÷ (12 + 2²) = ¼, and as far from 1 where all of them were.
  it('is a plain fraction where none or all were seen', () => {
    expect(wilson(0, 12, 2)).toEqual({ lower: 0, upper: expect.closeTo(0.25, 14) });
    expect(wilson(1, 12, 2)).toEqual({ lower: expect.closeTo(0.75, 14), upper: 1 });
  });
});
