import { describe, expect, it } from 'vitest';
import { saleSums, shareOf } from '@/lib/quotes/saleSums';
import { plainQuote } from './plainQuote';

const one = { quantity: 1, blank: 1 };

describe('the tax of a quote', () => {
  it('rounded once and rounded on each line may differ by a cent, and each is right by its rule', () => {
    // 10.50, 12.50 and 10.50 with 7 %: 33.50 × 0.07 is 2.345; 0.735, 0.875 and 0.735 are 0.74, 0.88 and 0.74.
    const sizes = [10.5, 12.5, 10.5].map((asked) => ({ ...one, asked }));
    const tax = { mode: 'added' as const, share: 0.07 };
    expect(plainQuote({ sizes, asked: 10.5, tax }).sums).toEqual({ subtotal: 3350, tax: 235, total: 3585 });
    expect(plainQuote({ sizes, asked: 10.5, tax: { ...tax, rounding: 'line' } }).sums).toEqual({
      subtotal: 3350,
      tax: 236,
      total: 3586,
    });
  });

  it('rounded on each line takes sizes of one price as the one line they are on the paper', () => {
    // 3 × 19.35 is 58.05, of which 7 % are 4.0635; 19.35 × 0.07 is 1.3545, three times 1.35.
    const { sums } = plainQuote({
      sizes: [one, one, one],
      asked: 19.35,
      tax: { mode: 'added', share: 0.07, rounding: 'line' },
    });
    expect(sums).toEqual({ subtotal: 5805, tax: 406, total: 6211 });
  });

  it('rounded on each line is of what each row pays, where a discount is spread over rows', () => {
    // Rows of 200 (two sizes) and 100, of which 10 are taken: 6.67 and 3.33, so 7 and 3. Half of 193 and of 97 is 96.5
    // and 48.5.
    const size = (each: number) => ({ size: `at ${each}`, quantity: 1, each, total: each });
    const sold = { lines: [{ sizes: [size(100), size(100)], start: 100 }], charges: [] };
    const tax = { mode: 'added', share: 0.5, rounding: 'line', exemption: null } as const;
    expect(saleSums(sold, 10, tax, 'USD')).toEqual({ subtotal: 290, tax: 97 + 49, total: 436 });
  });

  it('is in whole yen', () => {
    // 1,055 × 0.08 is 84.4; half of 1,139 is 569.5.
    const { sums, deposit, balance } = plainQuote({
      sizes: [one],
      asked: 1055,
      currency: 'JPY',
      tax: { mode: 'added', share: 0.08 },
    });
    expect(sums).toEqual({ subtotal: 1055, tax: 84, total: 1139 });
    expect([deposit, balance]).toEqual([570, 569]);
  });

  it('is in thousandths of a dinar', () => {
    // 2 × 4.575 is 9.150; × 0.05 is 0.4575.
    const { sums, deposit } = plainQuote({
      sizes: [{ quantity: 2, blank: 1 }],
      asked: 4.575,
      currency: 'KWD',
      tax: { mode: 'added', share: 0.05 },
    });
    expect(sums).toEqual({ subtotal: 9150, tax: 458, total: 9608 });
    expect(deposit).toBe(4804);
  });

  it('lies inside what is written where prices have it inside', () => {
    // 120.00 × 0.2 ÷ 1.2 is 20.00.
    const { sums, tax } = plainQuote({
      sizes: [{ quantity: 10, blank: 1 }],
      asked: 12,
      tax: { mode: 'inside', share: 0.2 },
    });
    expect(sums).toEqual({ subtotal: 12_000, tax: 2000, total: 12_000 });
    expect(tax).toEqual({ mode: 'inside', share: 0.2, rounding: 'document', exemption: null });
  });

  it('is none where the workshop takes none', () => {
    const { sums } = plainQuote({ sizes: [one], asked: 10, tax: { mode: 'none', share: 0.2 } });
    expect(sums).toEqual({ subtotal: 1000, tax: 0, total: 1000 });
  });

  it('is of what is left after the discount, which is spread by largest remainder', () => {
    // A third of 10 each is 4, 3 and 3: 96, 97 and 97 are left. Half of each: 48, 48.5 and 48.5; of all 145.
    const line = { sizes: [{ size: 'M', quantity: 1, each: 100, total: 100 }], start: 0 };
    const sold = { lines: [line, line, line], charges: [] };
    const tax = { mode: 'added', share: 0.5, exemption: null } as const;
    expect(saleSums(sold, 10, { ...tax, rounding: 'document' }, 'USD')).toEqual({
      subtotal: 290,
      tax: 145,
      total: 435,
    });
    expect(saleSums(sold, 10, { ...tax, rounding: 'line' }, 'USD').tax).toBe(146);
  });
});

describe('an exempt customer', () => {
  const sizes = [{ quantity: 10, blank: 1 }];

  it('of wholesale prices pays them as they are written, with the certificate on the paper', () => {
    const { sums, tax } = plainQuote({
      sizes,
      asked: 8,
      exemption: 'RS-1234',
      tax: { mode: 'added', share: 0.07 },
    });
    expect(sums).toEqual({ subtotal: 8000, tax: 0, total: 8000 });
    expect(tax).toEqual({ mode: 'none', share: 0, rounding: 'document', exemption: 'RS-1234' });
  });

  it('of prices with tax inside pays each without its tax', () => {
    // 10.99 × 0.2 ÷ 1.2 is 1.8317: 9.16 are left of each.
    const { goods, sums, owner } = plainQuote({
      sizes,
      asked: 10.99,
      exemption: 'RS-1234',
      tax: { mode: 'inside', share: 0.2 },
    });
    expect(goods[0]?.sizes).toEqual([{ size: 'size 1', quantity: 10, each: 916, total: 9160 }]);
    expect(sums).toEqual({ subtotal: 9160, tax: 0, total: 9160 });
    // Ten blanks at 1.00.
    expect([owner.fullCost, owner.profit]).toEqual([1000, 8160]);
  });

  it('pays charges and gets discounts without tax as well', () => {
    // 12.00 are 10.00 without 20 %; a charge of 6.00 is 5.00, a discount of 3.00 is 2.50.
    const { sums, charges, discount } = plainQuote({
      sizes,
      asked: 12,
      exemption: 'RS-1234',
      tax: { mode: 'inside', share: 0.2 },
      order: {
        charges: [{ id: 'rush', kind: 'rush', what: 'Rush', amount: 6 }],
        discount: { kind: 'amount', amount: 3, why: 'first order' },
      },
    });
    expect(charges).toEqual([{ what: 'Rush', amount: 500 }]);
    expect(discount).toEqual({ amount: 250, why: 'first order' });
    expect(sums.total).toBe(10_250);
  });
});

describe('a deposit', () => {
  /* M. F. Cowlishaw, General Decimal Arithmetic testcases (IBM): rounding.decTest 2.59, half_up. */
  it.each([
    [24_691, 0.5, 12_346],
    [24_693, 0.5, 12_347],
    [123_454_999, 0.0001, 12_345],
    [123_451, 0.1, 12_345],
    [123_450, 0.1, 12_345],
  ])('of %d, a share of %d, is rounded half up to %d', (total, share, deposit) => {
    expect(shareOf(total, share)).toBe(deposit);
  });

  it('of 100.01 at 35 % is 35.00, and of 100.10 is 35.04', () => {
    // 35.0035 and 35.035: binary doubles hold the second as 35.03499….
    expect([shareOf(10_001, 0.35), shareOf(10_010, 0.35)]).toEqual([3500, 3504]);
  });
});
