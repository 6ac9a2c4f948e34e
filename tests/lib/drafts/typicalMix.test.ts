import { describe, expect, it } from 'vitest';
import { typicalMix } from '@/lib/drafts/typicalMix';

const quantities = (sizes: readonly string[], pieces: number) =>
  typicalMix(sizes, pieces).map(({ quantity }) => quantity);
const adult = ['S', 'M', 'L', 'XL', '2XL', '3XL'];

describe('typicalMix', () => {
  // 12 × 11, 24.5, 30, 21.5, 9 and 4 %: 1.32, 2.94, 3.60, 2.58, 1.08, 0.48; the empty 3XL takes one from XL.
  it.each([
    [12, [1, 3, 4, 2, 1, 1]],
    // Halves of a piece go to the size named first.
    [100, [11, 25, 30, 21, 9, 4]],
    // Too few for all sizes: by the curve alone.
    [3, [0, 1, 1, 1, 0, 0]],
    [0, [0, 0, 0, 0, 0, 0]],
  ])('splits %d shirts over adult sizes', (pieces, expected) => {
    expect(quantities(adult, pieces)).toEqual(expected);
  });

  it('shares alike where a size is none of the adult curve', () => {
    expect(quantities(['5 × 7 in', '8 × 10 in'], 12)).toEqual([6, 6]);
    expect(quantities(['11 oz'], 12)).toEqual([12]);
    expect(quantities([], 12)).toEqual([]);
  });

  it('always adds up to the pieces asked for', () => {
    for (let pieces = 0; pieces <= 60; pieces += 1) {
      expect(quantities(adult, pieces).reduce((sum, one) => sum + one, 0)).toBe(pieces);
    }
  });
});
