import { describe, expect, it } from 'vitest';
import { breakList, breakTotal } from '@/lib/price/list/breakList';
import { exampleList, listOfPairs } from './listFixture';

const problem = (pairs: readonly (readonly [number, number])[], currency = 'USD') => {
  const list = breakList(
    pairs.map(([from, each]) => ({ from, each })),
    currency,
  );
  return list.ok ? null : list.problem;
};

describe('priceList', () => {
  it.each([
    [
      [
        [6, 20],
        [1, 26],
      ],
      'USD',
      { kind: 'outOfOrder', from: 1, after: 6 },
    ],
    [
      [
        [1, 26],
        [6, 23],
        [6, 20],
      ],
      'USD',
      { kind: 'doubled', from: 6 },
    ],
    [[[0, 26]], 'USD', { kind: 'notWhole', from: 0 }],
    [[[1.5, 26]], 'USD', { kind: 'notWhole', from: 1.5 }],
    [[[1, 0]], 'USD', { kind: 'notAPrice', from: 1, each: 0 }],
    [[[1, Number.NaN]], 'USD', { kind: 'notAPrice', from: 1, each: Number.NaN }],
    [[[1, 16.505]], 'USD', { kind: 'finerThanCurrency', from: 1, each: 16.505, digits: 2 }],
    [[[1, 16.5]], 'JPY', { kind: 'finerThanCurrency', from: 1, each: 16.5, digits: 0 }],
    [[[1, 5.0005]], 'KWD', { kind: 'finerThanCurrency', from: 1, each: 5.0005, digits: 3 }],
    [[[1, 26]], 'XAU', { kind: 'unknownCurrency', currency: 'XAU' }],
    [[], 'USD', { kind: 'noBreaks' }],
  ] as const)('refuses %j in %s and says why', (pairs, currency, why) => {
    expect(problem(pairs, currency)).toEqual(why);
  });

  it('holds whole minor units of any currency', () => {
    expect(listOfPairs([[1, 1500]], 'JPY').breaks[0].each).toBe(1500);
    expect(listOfPairs([[1, 5.125]], 'KWD').breaks[0].each).toBe(5125);
  });

  it('prices every piece at the break its order reaches, and sells nothing below the first', () => {
    const list = listOfPairs([
      [2, 26],
      [6, 23],
    ]);
    expect([1, 2, 5, 6].map((n) => breakTotal(list, n))).toEqual([null, 5200, 13_000, 13_800]);
  });

  it('may hold one break for one piece only', () => {
    expect(breakTotal(listOfPairs([[1, 26]]), 1)).toBe(2600);
  });

  it('totals the example list as by hand', () => {
    expect([11, 12, 22, 23, 24, 45, 47, 48].map((n) => breakTotal(exampleList(), n))).toEqual([
      25_300, 24_000, 44_000, 46_000, 43_200, 81_000, 84_600, 79_200,
    ]);
  });
});
