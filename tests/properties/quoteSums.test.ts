import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { beforeDiscount, saleSums, shareOf } from '@/lib/quotes/saleSums';
import { plainQuote } from '@/tests/lib/quotes/plainQuote';
import { oracleSums } from '@/tests/oracle/quoteSums';
import { cases, patience } from '@/tests/tools/cases';

const amounts = fc.array(
  fc.oneof(
    { weight: 8, arbitrary: fc.integer({ min: 0, max: 5_000_000 }) },
    // Of one price, so that they stand in one row.
    { weight: 2, arbitrary: fc.constantFrom(1935, 2050) },
    { weight: 1, arbitrary: fc.integer({ min: -20_000, max: -1 }) },
    { weight: 1, arbitrary: fc.integer({ min: 0, max: 9 }) },
  ),
  { minLength: 1, maxLength: 40 },
);
const drawn = fc.record({
  amounts,
  charges: amounts,
  off: fc.oneof(
    fc.constant(null),
    fc.record({ share: fc.integer({ min: 0, max: 10_000 }) }),
    fc.record({ part: fc.double({ min: 0, max: 1, noNaN: true }) }),
  ),
  mode: fc.constantFrom('added' as const, 'inside' as const, 'none' as const),
  share: fc.oneof(fc.integer({ min: 0, max: 10_000 }), fc.constantFrom(700, 1900, 2000, 500, 825)),
  by: fc.constantFrom('line' as const, 'document' as const),
  currency: fc.constantFrom('USD', 'JPY', 'KWD'),
  deposit: fc.oneof(fc.integer({ min: 0, max: 10_000 }), fc.constant(5000)),
});

const asSize = (each: number) => ({ size: `at ${each}`, quantity: 1, each, total: each });

/** What stands in the rows of a paper: neighbouring sizes of one price are one. */
const rowsOf = (sizes: readonly { readonly each: number; readonly quantity: number }[]): readonly bigint[] =>
  sizes.flatMap(({ each }, at) => {
    if (sizes[at - 1]?.each === each) return [];
    const other = sizes.findIndex((next, place) => place > at && next.each !== each);
    const alike = sizes.slice(at, other === -1 ? sizes.length : other);
    return [alike.reduce((sum, { quantity }) => sum + BigInt(each * quantity), 0n)];
  });

/** What is drawn, through the product and through the oracle. */
function both({
  amounts: sizes,
  charges,
  off,
  mode,
  share,
  by,
  currency,
  deposit,
}: typeof drawn extends fc.Arbitrary<infer One> ? One : never) {
  const sold = {
    lines: [{ sizes: sizes.map(asSize), start: 0 }],
    charges: charges.map((amount) => ({ amount })),
  };
  const before = beforeDiscount(sold);
  fc.pre(before > 0);
  const amount =
    off === null ? 0 : 'share' in off ? shareOf(before, off.share / 10_000) : Math.floor(before * off.part);
  const tax = { mode, share: share / 10_000, rounding: by, exemption: null };
  const sums = saleSums(sold, amount, tax, currency);
  const taken = shareOf(sums.total, deposit / 10_000);
  const expected = oracleSums({
    amounts: [...rowsOf(sizes.map(asSize)), ...charges.map(BigInt)],
    discount:
      off === null ? null : 'share' in off ? { share: BigInt(off.share) } : { amount: BigInt(amount) },
    tax: { mode, share: BigInt(share), by },
    depositShare: BigInt(deposit),
  });
  return { before, amount, sums, deposit: taken, expected };
}

/** Prices and amounts in cents, shares in ten-thousandths. */
const order = fc.record({
  sizes: fc.array(
    fc.record({
      quantity: fc.integer({ min: 1, max: 60 }),
      cents: fc.oneof(fc.integer({ min: 300, max: 9000 }), fc.constantFrom(1935, 2050)),
    }),
    { minLength: 1, maxLength: 5 },
  ),
  charges: fc.array(fc.integer({ min: -200, max: 9000 }), { maxLength: 3 }),
  off: fc.option(fc.integer({ min: 0, max: 9000 })),
  mode: fc.constantFrom('added' as const, 'inside' as const),
  share: fc.integer({ min: 0, max: 2500 }),
  by: fc.constantFrom('line' as const, 'document' as const),
  deposit: fc.integer({ min: 0, max: 10_000 }),
});

describe('a whole quote', () => {
  it('comes to the sums of whole numbers from what the maker typed', { timeout: patience(60_000) }, () => {
    fc.assert(
      fc.property(order, ({ sizes, charges, off, mode, share, by, deposit }) => {
        const [first] = sizes;
        const quote = plainQuote({
          sizes: sizes.map(({ quantity, cents }) => ({ quantity, blank: 1, asked: cents / 100 })),
          asked: (first?.cents ?? 0) / 100,
          tax: { mode, share: share / 10_000, ...(by === 'line' ? { rounding: by } : {}) },
          order: {
            charges: charges.map((cents, at) => ({
              ...{ id: `charge-${at}`, kind: 'own', what: `Charge ${at}` },
              amount: cents / 100,
            })),
            discount: off === null ? null : { kind: 'share', share: off / 10_000, why: '' },
            depositShare: deposit / 10_000,
            underCostWhy: 'drawn at random',
          },
        });
        const expected = oracleSums({
          amounts: [
            ...rowsOf(sizes.map(({ quantity, cents }) => ({ quantity, each: cents }))),
            ...charges.map(BigInt),
          ],
          discount: off === null ? null : { share: BigInt(off) },
          tax: { mode, share: BigInt(share), by },
          depositShare: BigInt(deposit),
        });
        const { sums, discount, deposit: asked, balance } = quote;
        expect({ ...sums, discount: discount?.amount ?? 0, deposit: asked, balance }).toEqual({
          subtotal: Number(expected.subtotal),
          tax: Number(expected.tax),
          total: Number(expected.total),
          discount: Number(expected.discount),
          deposit: Number(expected.deposit),
          balance: Number(expected.balance),
        });
      }),
      cases(40),
    );
  });
});

describe('the sums of an order', () => {
  it('are those of whole numbers, whatever is taken off and however it is taxed', () => {
    fc.assert(
      fc.property(drawn, (one) => {
        const { before, amount, sums, deposit, expected } = both(one);
        expect({ before, discount: amount, ...sums, deposit, balance: sums.total - deposit }).toEqual(
          Object.fromEntries(Object.entries(expected).map(([name, value]) => [name, Number(value)])),
        );
      }),
      cases(3000),
    );
  });

  it('add up: all less the discount is the subtotal, and with tax on top it is the total', () => {
    fc.assert(
      fc.property(drawn, (one) => {
        const { before, amount, sums } = both(one);
        expect(before - amount).toBe(sums.subtotal);
        expect(sums.total).toBe(one.mode === 'added' ? sums.subtotal + sums.tax : sums.subtotal);
      }),
      cases(500),
    );
  });
});
