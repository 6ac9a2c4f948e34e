import { describe, expect, it } from 'vitest';
import { type MinorUnits, splitMinor } from '@/shared/money';

/*
 * Hamilton's method, Contemporary Mathematics (OpenStax, Rice University, 2023), section 11.4, and splits that
 * libraries in public use got wrong.
 */
describe('splitMinor', () => {
  it.each([
    ['70 lights over 15, 9 and 10 acres', 70, [15, 9, 10], [31, 18, 21]],
    ['27 aircraft over six fields', 27, [13, 12, 5, 16, 7, 9], [6, 5, 2, 7, 3, 4]],
    ['1.00 over three', 100, [1, 1, 1], [34, 33, 33]],
    ['−1.00 over three', -100, [1, 1, 1], [-34, -33, -33]],
    // scurker/currency.js pull request 99.
    ['−0.01 in two parts', -1, [1, 1], [-1, 0]],
    // RubyMoney/money issue 652.
    ['1000 by two thirds and one', 1000, [0.6667, 0.3333], [667, 333]],
    ['−1000 by two thirds and one', -1000, [0.6667, 0.3333], [-667, -333]],
    ['nothing', 0, [1, 2], [0, 0]],
    ['a part of nothing', 10, [0, 1], [0, 10]],
  ])('splits %s', (_, total, shares, parts) => {
    expect(splitMinor(total as MinorUnits, shares)).toEqual(parts);
  });
});
