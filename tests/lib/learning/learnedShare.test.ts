import { describe, expect, it } from 'vitest';
import { learnedShare } from '@/lib/learning/learnedShare';

// Of none in n the exact upper limit is 1 − α^(1/n) (Clopper and Pearson 1934): 0.1^(1/30) = 0.926119.
describe('a standard of 0', () => {
  it.each([
    { of: 30, upper: 0.073881 },
    { of: 60, upper: 0.037649 },
    { of: 1, upper: 0.9 },
  ])('proves nothing: none in $of may be $upper', ({ of, upper }) => {
    const { measured, upper: found } = learnedShare(0, 50, 0, of);
    expect(measured).toBe(0);
    expect(found).toBeCloseTo(upper, 6);
  });

  it('has a bound that one spoiled piece raises', () => {
    // Of one in two: no more than one is spoiled with 1 − p² = 0.1.
    expect(learnedShare(0, 50, 1, 2).upper).toBeCloseTo(Math.sqrt(0.9), 9);
    expect(learnedShare(0, 50, 1, 30).upper).toBeGreaterThan(learnedShare(0, 50, 0, 30).upper);
  });

  it('may be all where all were lost, and where nothing was seen', () => {
    expect(learnedShare(0, 50, 3, 3).upper).toBe(1);
    expect(learnedShare(0, 50, 0, 0).upper).toBe(1);
  });
});

it('a standard of 1 with all lost stays so', () => {
  expect(learnedShare(1, 50, 4, 4)).toEqual({ measured: 1, upper: 1, spread: 0 });
});
