import { describe, expect, it } from 'vitest';
import { taxTerms } from '@/lib/price/taxTerms';

describe('taxTerms', () => {
  it.each([
    ['inside', { taxInside: 1, tax: 0.07 }, 0.07, 28, 26.168224299],
    ['added later', { taxInside: 0, tax: 0.07 }, 0, 19, 19],
    ['none', { taxInside: 0, tax: 0 }, 0, 19, 19],
  ])('takes out tax that is %s', (_, jobValues, inside, written, without) => {
    const terms = taxTerms({ jobValues });
    expect(terms.inside).toBe(inside);
    expect(terms.withoutTax(written)).toBeCloseTo(without, 9);
  });

  it('comes back to the written price', () => {
    const terms = taxTerms({ jobValues: { taxInside: 1, tax: 0.2 } });
    for (const price of [0.01, 16.5, 19.99, 1e6]) {
      expect(terms.written(terms.withoutTax(price))).toBeCloseTo(price, 9);
    }
  });
});
