import { describe, expect, it } from 'vitest';
import { blanksForConfidence } from '@/lib/job/blanksForConfidence';

const one = (pieces: number, chance: number) =>
  blanksForConfidence([{ pieces, chance, price: 1 }], 0.95).blanks[0];

describe('blanks for a confidence', () => {
  // Worked in the trade notes, at 95 %: the smallest b whose binomial tail reaches it.
  it.each([
    [10, 0.97, 11],
    [24, 0.97, 26],
    [50, 0.97, 54],
    [100, 0.97, 106],
    [37, 0.93, 43],
    [12, 0.95, 14],
    [1, 1, 1],
    [12, 1, 12],
    [0, 0.9, 0],
  ])('%d good ones at a chance of %d need %d', (pieces, chance, blanks) => {
    expect(one(pieces, chance)).toBe(blanks);
  });

  // S4 M9 L11 XL8 2XL4 3XL1 at p = 0.965 × 0.98 × 0.99.
  const shirts = [4, 9, 11, 8, 4, 1].map((pieces) => ({ pieces, chance: 0.965 * 0.98 * 0.99, price: 4.6 }));

  it.each([
    [0.75, [5, 11, 13, 10, 5, 1]],
    [0.95, [6, 12, 14, 10, 6, 2]],
  ])('sizes do not pool: every size whole at %d', (confidence, blanks) => {
    expect(blanksForConfidence(shirts, confidence).blanks).toEqual(blanks);
  });

  it('tell the chance they reach: 45 cover every size at 78.9 %', () => {
    expect(blanksForConfidence(shirts, 0.75).covered).toBeCloseTo(0.789, 3);
  });

  it('go to the cheaper of two sizes that gain as much', () => {
    const alike = [5, 4].map((price) => ({ pieces: 1, chance: 0.9, price }));
    // 0.9 × 0.9 = 0.81; one spare makes 0.99 of one of them, 0.891.
    expect(blanksForConfidence(alike, 0.85).blanks).toEqual([1, 2]);
  });

  it('says what is expected where a blank hardly ever ends good', () => {
    expect(one(2, 0.01)).toBe(200);
  });

  it('answers for thousands of pieces', () => {
    const blanks = one(100_000, 0.9) ?? 0;
    // Mean 111,111 and standard deviation 111: 1.645 of them above it.
    expect(blanks).toBeGreaterThan(111_111 + 160);
    expect(blanks).toBeLessThan(111_111 + 210);
  });
});
