import { describe, expect, it } from 'vitest';
import { acrossTicks, upTicks } from '@/app/_charts/stairAxes';

describe('the axes of the staircase', () => {
  it('go up in round steps from nothing, as close above the largest total as five lines come', () => {
    expect(upTicks(330)).toEqual([0, 100, 200, 300, 400]);
    expect(upTicks(500)).toEqual([0, 100, 200, 300, 400, 500]);
  });

  it('name every quantity where there is room, and fewer where there is little', () => {
    expect(acrossTicks(11, 1000, 16)).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11]);
    expect(acrossTicks(11, 160, 16)).toEqual([1, 6, 11]);
  });
});
