import { describe, expect, it } from 'vitest';
import { englishLabels } from '@/lib/papers/words/englishLabels';
import { listedLine } from '@/lib/quotes/listedLine';
import { lineTotal } from '@/lib/quotes/soldLine';
import type { FrozenItem } from '@/shared/schemas/priceList';
import { clubWith, TODAY } from '@/tests/fixtures/clubJob';
import { frozen, plainItem } from '@/tests/lib/priceLists/plainItem';
import { ready, refused } from './quoteTools';

/** One to five at 26.00, six to eleven at 23.00, twelve and more at 20.00; L adds 1.50. */
const item = (more: Partial<FrozenItem> = {}): FrozenItem => ({
  ...frozen(plainItem()),
  name: 'Shirt',
  sizes: [
    { size: 'M', upCharge: 0 },
    { size: 'L', upCharge: 150 },
  ],
  breaks: [26, 23, 20].map((each, at) => ({
    from: [1, 6, 12][at] ?? 1,
    to: [5, 11, null][at] ?? null,
    each: each * 100,
    leastAt: 1,
    leastSize: 'M',
    leastMargin: 0.3,
  })),
  selling: 'asListed',
  setUp: null,
  ...more,
});
const paid = (rule: Partial<FrozenItem>, M: number, L = 0) => {
  const wanted = [
    { size: 'M', quantity: M },
    { size: 'L', quantity: L },
  ].filter(({ quantity }) => quantity > 0);
  const line = listedLine(item(rule), wanted, englishLabels, 'USD');
  if (!line.ok) throw new Error(JSON.stringify(line.problem));
  return { ...line.value, all: lineTotal(line.value) };
};

describe('what an order pays by an issued list', () => {
  it('is the price of its break for every piece, with what sizes add', () => {
    // Ten at 23.00 and two of them 1.50 more.
    const { sizes, all } = paid({}, 8, 2);
    expect(sizes).toEqual([
      { size: 'M', quantity: 8, each: 2300, total: 18_400 },
      { size: 'L', quantity: 2, each: 2450, total: 4900 },
    ]);
    expect(all).toBe(23_300);
  });

  it('under a cap is no more than a larger order pays', () => {
    // 11 × 23.00 are 253.00; twelve at 20.00 are 240.00.
    const { charges, all } = paid({ selling: 'capped' }, 11);
    expect(charges).toEqual([{ what: 'Shirt: costs no more than 12', amount: -1300 }]);
    expect(all).toBe(24_000);
    // Sizes add what they add on top.
    expect(paid({ selling: 'capped' }, 9, 2).all).toBe(24_300);
  });

  it('by slabs counts the first pieces at their own prices', () => {
    // 5 × 26.00, 6 × 23.00 and one at 20.00.
    const { charges, all } = paid({ selling: 'slab' }, 12);
    expect(charges).toEqual([{ what: 'Shirt: first pieces at their own price', amount: 4800 }]);
    expect(all).toBe(28_800);
  });

  it('with set-up apart is so much to start and so much a piece', () => {
    const { start, all } = paid({ selling: 'setUpApart', setUp: { start: 13_200, each: 1250 } }, 32, 5);
    // 132.00 + 37 × 12.50 + 5 × 1.50.
    expect([start, all]).toEqual([13_200, 60_200]);
  });

  it('at one price is that price, however few', () => {
    const [, second] = item().breaks;
    const one = second === undefined ? [] : [{ ...second, from: 6 }];
    expect(paid({ selling: 'onePrice', breaks: one }, 2).all).toBe(4600);
  });

  it('is unknown under its first break, and for a size that it has not', () => {
    const from6 = item({ breaks: item().breaks.slice(1) });
    expect(listedLine(from6, [{ size: 'M', quantity: 5 }], englishLabels, 'USD')).toEqual({
      ok: false,
      problem: { kind: 'underFirstBreak', from: 6 },
    });
    expect(listedLine(item(), [{ size: 'XL', quantity: 5 }], englishLabels, 'USD')).toEqual({
      ok: false,
      problem: { kind: 'sizeNotListed', size: 'XL' },
    });
  });
});

describe('a line that takes its price from a list', () => {
  const from = (upCharge = 0): FrozenItem => ({
    ...item(),
    sizes: ['S', 'M', 'L', 'XL', '2XL', '3XL'].map((size) => ({ size, upCharge })),
  });
  const version = {
    number: { count: 1, letter: 'A' as const },
    ...{ issuedOn: '2026-11-01', validUntil: TODAY, currency: 'USD', taxMode: 'added' as const },
    ...{ title: 'Shirts', from: '', notes: '', leadTime: '', items: [from()] },
  };
  const order = {
    lines: [
      { jobId: 'club-order', lineId: 'shirts', price: { from: 'list', paperId: 'list-1', itemId: 'item' } },
    ],
  };
  const held = (more: object = {}, isWithdrawn = false) => [
    { paperId: 'list-1', version: { ...version, ...more }, isWithdrawn },
  ];

  it('pays it on the last day of the list', () => {
    // 37 at 20.00.
    expect(ready({ order, versions: held() }).body.sums.subtotal).toBe(74_000);
  });

  it('pays by it for more and for fewer too', () => {
    const other = (quantity: number) =>
      ready({
        order: {
          ...order,
          alternatives: [
            { id: 'other', kind: 'pieces', jobId: 'club-order', lineId: 'shirts', quantity, size: null },
          ],
        },
        versions: held(),
      }).body.alternatives[0]?.sums.subtotal;
    expect([other(40), other(30)]).toEqual([80_000, 60_000]);
  });

  it('is refused where the list is gone, expired, withdrawn, or in other terms', () => {
    const kinds = (versions: ReturnType<typeof held>) =>
      refused({ order, versions, input: clubWith({}) }).map(({ kind }) => kind);
    expect(kinds([])).toEqual(['listGone']);
    expect(kinds(held({ validUntil: '2026-11-24' }))).toEqual(['listExpired']);
    expect(kinds(held({}, true))).toEqual(['listWithdrawn']);
    expect(kinds(held({ taxMode: 'inside' }))).toEqual(['listOtherTerms']);
    expect(kinds(held({ currency: 'EUR' }))).toEqual(['listOtherTerms']);
  });
});
