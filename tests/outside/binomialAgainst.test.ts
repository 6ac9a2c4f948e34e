import { jStat } from 'jstat';
import { expect, test } from 'vitest';
import { atLeast, enoughGood } from '@/lib/statistics/enoughGood';

/*
 * The tail of the binomial distribution against an independent library (jStat), where both are sound: up to a few
 * hundred tries.
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

/*
 * The same tail as NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.6.18 writes it, worked by hand: of n blanks at
 * 5 % spoiled at least 20 are good where at most n − 20 are spoiled, 0.95^n × Σ C(n, k) ÷ 19^k.
 * 22: 0.323534 × (1 + 22 ÷ 19 + 231 ÷ 361) = 0.323534 × 2.797784 = 0.905177.
 * 23: 0.307357 × (1 + 23 ÷ 19 + 253 ÷ 361 + 1,771 ÷ 6,859) = 0.307357 × 3.169558 = 0.974186.
 */
test('twenty good ones at 5 % spoilage are 95 % sure from 23 tries on', () => {
  const at = enoughGood([{ pieces: 20, chance: 0.95 }]);
  expect(Math.exp(at(22))).toBeCloseTo(0.905177, 5);
  expect(Math.exp(at(23))).toBeCloseTo(0.974186, 5);
  expect(at(19)).toBe(Number.NEGATIVE_INFINITY);
});

test('none wanted are whole with none', () => {
  expect(atLeast(0, 0, 0.9)).toBe(1);
});
