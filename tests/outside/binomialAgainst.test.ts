import { jStat } from 'jstat';
import { expect, test } from 'vitest';
import { atLeast, enoughGood } from '@/lib/statistics/enoughGood';

/*
 * The tail of the binomial distribution against an independent library (jStat), where both are sound: up to a few
 * hundred tries. Negative binomial distribution: blanks to press so that at least 20 are good with 95 % confidence at
 * 5 % spoilage are 23; 22 give 90.5 %, 23 give 97.4 % (recomputed in whole numbers).
 */
test('at least so many good are what an independent library says', () => {
  for (const tries of [1, 5, 12, 40, 150]) {
    for (const chance of [0.2, 0.5, 0.9, 0.936, 0.99]) {
      for (const good of [1, Math.ceil(tries / 2), Math.floor(tries * chance), tries]) {
        const told = good === 0 ? 1 : 1 - jStat.binomial.cdf(good - 1, tries, chance);
        expect(atLeast(tries, good, chance), `${good} of ${tries} at ${chance}`).toBeCloseTo(told, 9);
      }
    }
  }
});

test('twenty good ones at 5 % spoilage are 95 % sure from 23 tries on', () => {
  const at = enoughGood([{ pieces: 20, chance: 0.95 }]);
  expect(Math.exp(at(22))).toBeCloseTo(0.905, 3);
  expect(Math.exp(at(23))).toBeCloseTo(0.974, 3);
  expect(at(19)).toBe(Number.NEGATIVE_INFINITY);
});

test('none wanted are whole with none', () => {
  expect(atLeast(0, 0, 0.9)).toBe(1);
});
