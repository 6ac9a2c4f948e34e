import { describe, expect, it } from 'vitest';
import { blanksForConfidence } from '@/lib/check/quantity/blanksForConfidence';

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
  ])('%d good ones at a chance of %d need %d', (pieces, chance, blanks) => {
    expect(blanksForConfidence([{ pieces, chance }], 0.95)).toEqual([blanks]);
  });

  // S4 M9 L11 XL8 2XL4 3XL1 at p = 0.965 × 0.98 × 0.99.
  const shirts = [4, 9, 11, 8, 4, 1].map((pieces) => ({ pieces, chance: 0.965 * 0.98 * 0.99 }));

  it.each([
    [0.75, [5, 11, 13, 10, 5, 1]],
    [0.95, [6, 12, 14, 10, 6, 2]],
  ])('sizes do not pool: every size whole at %d', (confidence, blanks) => {
    expect(blanksForConfidence(shirts, confidence)).toEqual(blanks);
  });

  it('says what is expected where a blank hardly ever ends good', () => {
    expect(blanksForConfidence([{ pieces: 2, chance: 0.01 }], 0.95)).toEqual([200]);
  });

  it('answers for thousands of pieces', () => {
    const [blanks = 0] = blanksForConfidence([{ pieces: 100_000, chance: 0.9 }], 0.95);
    // Mean 111,111 and standard deviation 111: 1.645 of them above it.
    expect(blanks).toBeGreaterThan(111_111 + 160);
    expect(blanks).toBeLessThan(111_111 + 210);
  });
});
