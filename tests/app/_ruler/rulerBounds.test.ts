import { describe, expect, it } from 'vitest';
import { rulerBounds } from '@/app/_ruler/rulerBounds';

describe('rulerBounds ends on a round figure a tenth or more beyond the highest value', () => {
  it.each([
    [[6.58, 22, 19], 25],
    [[22.5], 25],
    [[50], 55],
    [[0.9], 1],
    [[95], 110],
    [[1900], 2250],
    [[0], 1],
    [[], 1],
  ])('%o to %d', (values, max) => {
    expect(rulerBounds(values)).toEqual({ min: 0, max });
  });
});
