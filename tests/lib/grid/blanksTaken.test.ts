import { describe, expect, it } from 'vitest';
import { blanksTaken } from '@/lib/grid/blanksTaken';
import { clubWith } from '@/tests/fixtures/clubJob';
import { costed } from '@/tests/fixtures/costed';

/** The worked club order: S 4, M 9, L 11, XL 8, 2XL 4, 3XL 1; a blank ends good with 0.93624. */
const { sheet } = costed(clubWith({}));
const ofShirts = () => 'white-shirt';

describe('blanksTaken', () => {
  // The three choices of the worked order, reckoned by hand from binomial tails of each size.
  it.each([
    ['expected', [4, 10, 12, 9, 4, 1], 0.353],
    ['usual', [5, 11, 13, 10, 5, 1], 0.789],
    ['sure', [6, 12, 14, 10, 6, 2], 0.9505],
  ] as const)('takes as many for the cover %s as the worked order does', (cover, blanks, covered) => {
    const taken = blanksTaken(sheet, ofShirts, cover);
    expect(taken.take).toEqual(blanks);
    expect(taken.covered).toBeCloseTo(covered, 3);
  });

  it('covers what a customer brings for sure, whatever cover is asked for', () => {
    const { take } = blanksTaken(sheet, () => null, 'expected');
    expect(take).toEqual(blanksTaken(sheet, () => null, 'sure').take);
  });
});
