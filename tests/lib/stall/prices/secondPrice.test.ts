import { describe, expect, it } from 'vitest';
import { secondPrice } from '@/lib/stall/prices/secondPrice';

describe('what a second costs', () => {
  it.each([
    // 0.6 × 28 = 16.80, and prices of a stall in dollars are whole.
    ['USD', 0.6, 2800, 1600],
    ['USD', 0.5, 2800, 1400],
    ['USD', 0.5, 3100, 1500],
    // 0.57 × 100 is 57 and not a little less.
    ['USD', 0.57, 10_000, 5700],
    // 0.6 × 280 kr = 168 kr, in tens.
    ['SEK', 0.6, 28_000, 16_000],
    // 0.5 × 2,801 yen = 1,400.5, in hundreds.
    ['JPY', 0.5, 2801, 1400],
    // 0.35 × 2.50 = 0.875: no whole dollar is left, so half a cent goes up.
    ['USD', 0.35, 250, 88],
    // Whose coins are not known: 0.35 × 15.50 = 5.425.
    ['ALL', 0.35, 1550, 543],
    ['USD', 0, 2800, 0],
    ['USD', 1, 1550, 1500],
  ])('%s: %f of %i is %i', (currency, secondsShare, minor, second) => {
    expect(secondPrice({ currency, secondsShare }, minor)).toBe(second);
  });

  it('is not known where nobody said which share', () => {
    expect(secondPrice({ currency: 'USD' }, 2800)).toBeNull();
  });
});
