import { describe, expect, it } from 'vitest';
import { blanksToTake } from '@/lib/jobSheet/blanksToTake';

const one = (needed: number, chance: number, confidence: number) =>
  blanksToTake([{ needed, chance, price: 1 }], confidence).take[0];

/* Figures of the trade's worked example, by the binomial tail. */
describe('blanks of one size', () => {
  it.each([
    [10, 0.97, 11],
    [24, 0.97, 26],
    [50, 0.97, 54],
    [100, 0.97, 106],
    [37, 0.93, 43],
    [12, 0.95, 14],
  ])('for %d good ones at %f each are enough at 95 %% with %d', (needed, chance, expected) => {
    expect(one(needed, chance, 0.95)).toBe(expected);
  });

  it('are the needed ones where nothing is ever spoiled', () => expect(one(12, 1, 0.99)).toBe(12));
  it('are none where none is needed', () => expect(one(0, 0.9, 0.99)).toBe(0));

  it('are counted for so many that the chance of no spoiled one vanishes', () => {
    // Normal approximation: 20,000 ÷ 0.93 = 21,505, and at 95 % 1.645 times √(20,000 × 0.07) ÷ 0.93 = 66 more.
    const taken = one(20_000, 0.93, 0.95) ?? 0;
    expect(Math.abs(taken - 21_571)).toBeLessThan(10);
  });
});

/** The back spoils 3.5 % of presses, the badge 2 %, and one blank in a hundred is faulty. */
const CHANCE = 0.965 * 0.98 * 0.99;

describe('blanks of several sizes', () => {
  const shirts = [4, 9, 11, 8, 4, 1].map((needed) => ({ needed, chance: CHANCE, price: 4.6 }));

  it('cover every size at 75 % with 45 of them, which reach 78.9 %', () => {
    const { take, covered } = blanksToTake(shirts, 0.75);
    expect(take).toEqual([5, 11, 13, 10, 5, 1]);
    expect(covered).toBeCloseTo(0.789, 3);
  });

  it('cover every size at 95 % with 50 of them', () => {
    expect(blanksToTake(shirts, 0.95).take).toEqual([6, 12, 14, 10, 6, 2]);
  });
});
