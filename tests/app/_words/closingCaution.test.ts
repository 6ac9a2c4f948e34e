import { describe, expect, it } from 'vitest';
import { closingCaution } from '@/app/_words/stall/dayWords';

describe('the end of a day of selling', () => {
  it.each([
    [600, 1020, undefined],
    [1200, 90, 'After midnight, counted to this day.'],
    [
      600,
      600,
      'It ends as it begins, so the stall is open for no hour and nothing is planned by hours. Change one of them.',
    ],
  ])('after beginning at %d, of %d', (from, to, words) => {
    expect(closingCaution(from, to)).toBe(words);
  });
});
