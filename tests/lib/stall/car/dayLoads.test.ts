import { describe, expect, it } from 'vitest';
import { dayLoads, dayPresses } from '@/lib/stall/car/dayLoads';
import { addDays } from '@/shared/days';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

const days = (...weights: readonly number[]) =>
  weights.map((weight, at) => ({ day: addDays(TEST_DAY, at), weight }));

describe('what goes to the table for each day', () => {
  it.each([
    // Half of 7 is 3.5: the piece in two is there on the first day.
    [7, [1, 1], [4, 3]],
    [1, [1, 1], [1, 0]],
    [0, [1, 1], [0, 0]],
    // A third of 9, then two thirds.
    [9, [1, 2], [3, 6]],
    [10, [1, 1, 1], [4, 3, 3]],
    // 3 × 0.1 ÷ 0.3 is one piece, whatever a machine makes of it.
    [3, [0.1, 0.2], [1, 2]],
    [5, [1], [5]],
  ] as const)('of %d by weights %j is %j', (pieces, weights, loads) => {
    expect(dayLoads(pieces, days(...weights))).toEqual(loads);
  });

  it('goes by the days as they follow one another, however they were typed', () => {
    expect(dayLoads(9, days(1, 2).toReversed())).toEqual([3, 6]);
  });
});

describe('what is pressed for each day', () => {
  it('is what is short of it, the first day served first from home', () => {
    const goods = [
      // 4 and 3, of which 5 are there: 2 are short on the second day.
      { mine: 7, atHome: 5 },
      // 3 and 3, none there.
      { mine: 6, atHome: -1 },
    ];
    expect(dayPresses(goods, days(1, 1))).toEqual([3, 5]);
  });
});
