import { describe, expect, it } from 'vitest';
import { splitWhole } from '@/shared/splitWhole';

describe('splitWhole', () => {
  it.each([
    // Worked by hand: floors first, then one each to the largest remainders.
    [40, [40 / 3, 40 / 3, 40 / 3], [14, 13, 13]],
    [10, [3.2, 3.3, 3.5], [3, 3, 4]],
    [0, [0, 0], [0, 0]],
    [-1, [-0.5, -0.5], [0, -1]],
  ])('splits %i over its exact parts', (total, exact, parts) => {
    expect(splitWhole(total, exact)).toEqual(parts);
  });
});
