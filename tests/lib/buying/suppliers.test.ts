import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chooseSuppliers } from '@/lib/buying/chooseSuppliers';
import { type BasketTerms, fillBasket } from '@/lib/buying/fillBasket';
import { bestPurchase, type Way } from '@/lib/buying/waysToBuy';
import { cases } from '@/tests/tools/cases';
import { shirt } from './asked';

const way = (supplierId: string, each: number | Way['tiers'], packSize = 1): Way => ({
  ...{ supplierId, offerId: 'offer', item: shirt('S'), articleNumber: '', packSize, priceIs: 'offered' },
  ...{ leadWorkingDays: null, orderBy: null, inTime: null },
  tiers: typeof each === 'number' ? [{ from: 1, each }] : each,
});

const free: BasketTerms = { freightMinor: 0, freeFromMinor: null, minimumMinor: null };

describe('a quantity', () => {
  const tiers = [
    { from: 1, each: 5 },
    { from: 12, each: 4 },
  ];

  it.each([
    // 9 at 5 are 45, 12 at 4 are 48; 10 at 5 are 50.
    [9, 1, 9, 4500, null],
    [10, 1, 12, 4800, 'tier'],
    [13, 1, 13, 5200, null],
    // Packs of 10: 10 at 5, or 20 at 4.
    [9, 10, 10, 5000, null],
    [11, 10, 20, 8000, null],
  ])('of %d in packs of %d is bought as %d for %d: more for %s', (wanted, pack, quantity, minor, more) => {
    expect(bestPurchase(way('a', tiers, pack), wanted, 'USD')).toMatchObject({
      ...{ quantity, amountMinor: minor, more, packs: quantity / pack },
    });
  });

  it('held by the maker is not raised for a tier', () => {
    expect(bestPurchase(way('a', tiers), 10, 'USD', true)).toMatchObject({ quantity: 10, more: null });
  });

  it('is the least that is sold', () => {
    expect(bestPurchase(way('a', [{ from: 24, each: 2 }]), 5, 'USD').quantity).toBe(24);
  });

  it('that lacks but the noise of a sum takes no further pack', () => {
    expect(bestPurchase(way('a', [{ from: 0, each: 1 }], 0.1), 0.1 + 0.2, 'USD')).toMatchObject({
      quantity: 0.3,
      packs: 3,
    });
  });
});

describe('an order', () => {
  const basket = (terms: Partial<BasketTerms>, quantity = 10) => {
    const one = way('a', 4.6);
    const things = [{ at: 0, way: one, purchase: bestPurchase(one, quantity, 'USD'), isHeld: false }];
    return fillBasket({ supplierId: 'a', things, terms: { ...free, ...terms } }, 'USD');
  };

  it.each([
    // 46.00: one more for 50.00 costs 4.60 and saves 9.50; three more for 59.00 would cost 13.80.
    [5000, 5060, 0, true],
    [5900, 4600, 950, false],
    [4600, 4600, 0, true],
  ])('whose freight is free from %d comes to %d with %d of freight', (from, goods, freight, isFree) => {
    expect(basket({ freightMinor: 950, freeFromMinor: from })).toMatchObject({
      ...{ goodsMinor: goods, freightMinor: freight, freightIsFree: isFree },
    });
  });

  it.each([null, 0])('is not filled to be freed of freight that is %s', (freightMinor) => {
    expect(basket({ freightMinor, freeFromMinor: 15_000 })).toMatchObject({
      ...{ goodsMinor: 4600, freightMinor, freightIsFree: false },
    });
  });

  it('is topped up with as few packs as do where more of it is dearer each', () => {
    const one: Way = {
      ...way('a', 1),
      tiers: [
        { from: 0, each: 1 },
        { from: 20, each: 3 },
      ],
    };
    const things = [{ at: 0, way: one, purchase: bestPurchase(one, 10, 'USD'), isHeld: false }];
    const filled = fillBasket({ supplierId: 'a', things, terms: { ...free, minimumMinor: 2000 } }, 'USD');
    // 19 are 19.00, and 20 are 60.00.
    expect(filled.things[0]?.purchase).toMatchObject({ quantity: 20, amountMinor: 6000 });
  });

  it('that lacks more than it comes to is left as it is, and says what it is short of', () => {
    // 46.00 for 92.00 is filled: 20 are 92.00. For 92.01 it is not.
    expect(basket({ minimumMinor: 9200 })).toMatchObject({ goodsMinor: 9200, shortMinor: 0 });
    expect(basket({ minimumMinor: 9201 })).toMatchObject({ goodsMinor: 4600, shortMinor: 4601 });
  });

  it('below the least is topped up, and says so', () => {
    const filled = basket({ minimumMinor: 6000 });
    // 13 are 59.80, 14 are 64.40.
    expect(filled).toMatchObject({ goodsMinor: 6440, shortMinor: 0 });
    expect(filled.things[0]?.purchase).toMatchObject({ quantity: 14, more: 'minimum' });
  });

  /** Ten of each at its price, in packs. */
  const several = (packs: readonly (readonly [each: number, packSize: number])[], minimumMinor: number) => {
    const things = packs.map(([each, packSize], at) => {
      const one = way('a', each, packSize);
      return { at, way: one, purchase: bestPurchase(one, 10, 'USD'), isHeld: false };
    });
    const filled = fillBasket({ supplierId: 'a', things, terms: { ...free, minimumMinor } }, 'USD');
    return [filled.goodsMinor, ...filled.things.map(({ purchase }) => purchase.quantity)];
  };

  it.each([
    // 60.00 and 40.00 lack 10.00: two of 6.00 or three of 4.00 are 12.00, one of each is 10.00.
    [
      'two things where that is cheaper',
      [
        [6, 1],
        [4, 1],
      ],
      11_000,
      [11_000, 11, 11],
    ],
    // Lack 12.00: two of 6.00, three of 4.00; both are 12.00, and the first is taken.
    [
      'one thing where two cost no less',
      [
        [6, 1],
        [4, 1],
      ],
      11_200,
      [11_200, 12, 10],
    ],
    // 60.00, 100.00 and 150.00 lack 31.00. Alone 36.00, 40.00, 45.00; 6 + 6 + 10 + 10 = 32.00, 6 + 10 + 15 = 31.00.
    [
      'three where two do not reach it as well',
      [
        [6, 1],
        [10, 1],
        [15, 1],
      ],
      34_100,
      [34_100, 11, 11, 11],
    ],
    // Packs of 5 at 1.70 are 8.50: 17.00 + 10.00 lack 8.00: 8.50, eight of 1.00.
    [
      'whole packs',
      [
        [1.7, 5],
        [1, 1],
      ],
      3500,
      [3500, 10, 18],
    ],
  ] as const)('is topped up by %s', (_, packs, minimum, expected) => {
    expect(several(packs, minimum)).toEqual(expected);
  });

  it('is topped up by what a tier makes cheaper', () => {
    // 10 at 5.00 lack 9.00: 12 are 60.00; at 4.00 from 14 on 14 are 56.00, which is too little, and 15 are 60.00.
    const tiers = [
      { from: 1, each: 5 },
      { from: 14, each: 4 },
    ];
    const one = way('a', tiers);
    const things = [{ at: 0, way: one, purchase: bestPurchase(one, 10, 'USD'), isHeld: false }];
    const at = (minimumMinor: number) =>
      fillBasket({ supplierId: 'a', things, terms: { ...free, minimumMinor } }, 'USD').things[0]?.purchase;
    expect(at(5900)).toMatchObject({ quantity: 12, amountMinor: 6000 });
    // 61.00: 13 at 5.00 are 65.00, 16 at 4.00 are 64.00.
    expect(at(6100)).toMatchObject({ quantity: 16, amountMinor: 6400 });
  });

  it('costs no more than any mixture of packs that reaches the least', () => {
    const prices = fc.array(fc.integer({ min: 100, max: 900 }), { minLength: 1, maxLength: 3 });
    fc.assert(
      fc.property(prices, fc.integer({ min: 1, max: 1000 }), (cents, lacking) => {
        const goods = 10 * cents.reduce((sum, one) => sum + one, 0);
        const [minor] = several(
          cents.map((one) => [one / 100, 1] as const),
          goods + lacking,
        );
        expect(minor).toBe(goods + leastMixture(cents, lacking));
      }),
      cases(100),
    );
  });

  it('of numbers that the maker holds stays short, and says by how much', () => {
    const one = way('a', 4.6);
    const things = [{ at: 0, way: one, purchase: bestPurchase(one, 10, 'USD', true), isHeld: true }];
    const terms = { ...free, minimumMinor: 6000 };
    expect(fillBasket({ supplierId: 'a', things, terms }, 'USD')).toMatchObject({
      ...{ goodsMinor: 4600, shortMinor: 1400 },
    });
  });
});

describe('the suppliers chosen', () => {
  const choose = (
    things: readonly (readonly Way[])[],
    terms: Readonly<Record<string, BasketTerms>>,
    quantity = 10,
  ) =>
    chooseSuppliers(
      things.map((ways) => ({ quantity, isHeld: false, ways })),
      (id) => terms[id ?? ''] ?? free,
      'USD',
    );
  const freightOf = (freightMinor: number): BasketTerms => ({ ...free, freightMinor });

  it('are one at a dearer price where a second freight costs more', () => {
    // Apart 40 + 40 + 2 × 8; all of the first 40 + 45 + 8.
    const found = choose(
      [
        [way('a', 4), way('b', 5)],
        [way('a', 4.5), way('b', 4)],
      ],
      {
        ...{ a: freightOf(800), b: freightOf(800) },
      },
    );
    expect(found.purchases.map(({ supplierId }) => supplierId)).toEqual(['a', 'a']);
    expect([found.totalMinor, found.dearerAtMostMinor]).toEqual([9300, 0]);
  });

  it('get a thing that is dearer there where that makes freight free', () => {
    // First 40 + 40 of b and 40 of a, freight 10 each: 140. The third of b at 42: b is 122, free, no a: 122.
    const b: BasketTerms = { ...free, freightMinor: 1000, freeFromMinor: 12_000 };
    const found = choose([[way('b', 4)], [way('b', 4)], [way('a', 4), way('b', 4.2)]], {
      ...{ a: freightOf(1000), b },
    });
    expect(found.totalMinor).toBe(12_200);
  });

  const terms = fc.record({
    freightMinor: fc.integer({ min: 0, max: 1500 }),
    freeFromMinor: fc.option(fc.integer({ min: 0, max: 20_000 })),
    minimumMinor: fc.option(fc.integer({ min: 0, max: 8000 })),
  });
  const ids = ['a', 'b', 'c'];

  it('cost what the cheapest of all sharings costs', () => {
    fc.assert(
      fc.property(
        fc.array(fc.array(fc.option(fc.integer({ min: 1, max: 900 })), { minLength: 3, maxLength: 3 }), {
          ...{ minLength: 1, maxLength: 4 },
        }),
        fc.tuple(terms, terms, terms),
        (prices, all) => {
          const termsById: Record<string, BasketTerms> = Object.fromEntries(
            ids.map((id, at) => [id, all[at] ?? free]),
          );
          const things = prices.map((row) =>
            row.flatMap((cents, at) => (cents === null ? [] : [way(ids[at] ?? '', cents / 100)])),
          );
          fc.pre(things.every((ways) => ways.length > 0));
          const found = choose(things, termsById);
          const short = found.baskets.reduce((sum, { shortMinor }) => sum + shortMinor, 0);
          const { minor, lessAtMostMinor } = cheapestSharing(things, termsById);
          expect(found.totalMinor + short).toBe(minor);
          // Told where no mixture was looked for to its end alone.
          expect(found.dearerAtMostMinor).toBeLessThanOrEqual(lessAtMostMinor);
        },
      ),
      cases(200),
    );
  });

  it('fill an order by the dearer of two offers of one supplier where its packs fit', () => {
    // 14 of packs of 12 are 24 for 24.00; of packs of 5 at 1.70 they are 15 for 25.50, which reaches 25.00.
    const [twelves, fives] = [
      { ...way('a', 1), packSize: 12 },
      { ...way('a', 1.7), packSize: 5 },
    ];
    const terms = { a: { ...free, minimumMinor: 2500 } };
    expect(choose([[twelves, fives]], terms, 14)).toMatchObject({
      totalMinor: 2550,
      purchases: [{ quantity: 15 }],
    });
  });

  it('beyond six are chosen with the gap told', () => {
    const many = Array.from({ length: 8 }, (_, at) => `s${at}`);
    const found = choose(
      many.map((_, thing) => many.map((id, at) => way(id, 4 + ((thing + at) % 8) / 10))),
      Object.fromEntries(many.map((id) => [id, freightOf(500)])),
    );
    // Two, four apart: twice 10 at 4.00 to 4.30, and two freights: 332.00 + 10.00. Each where it costs least is 320.00.
    expect(found.totalMinor).toBe(34_200);
    expect(found.dearerAtMostMinor).toBe(2200);
  });
});

/** Every thing at every supplier that has it, and by how much mixtures not looked at might be cheaper than the cheapest. */
function cheapestSharing(
  things: readonly (readonly Way[])[],
  terms: Readonly<Record<string, BasketTerms>>,
): { readonly minor: number; readonly lessAtMostMinor: number } {
  let sharings: readonly (readonly Way[])[] = [[]];
  for (const ways of things) sharings = sharings.flatMap((some) => ways.map((one) => [...some, one]));
  const costs = sharings.map((some) => {
    const filled = Object.entries(terms).flatMap(([supplierId, of]) => {
      const own = some.flatMap((one, at) =>
        one.supplierId === supplierId
          ? [{ at, way: one, purchase: bestPurchase(one, 10, 'USD'), isHeld: false }]
          : [],
      );
      return own.length === 0 ? [] : [fillBasket({ supplierId, things: own, terms: of }, 'USD')];
    });
    const minor = filled.reduce(
      (sum, { goodsMinor, freightMinor, shortMinor }) => sum + goodsMinor + (freightMinor ?? 0) + shortMinor,
      0,
    );
    return { minor, least: filled.reduce((sum, { overMinor }) => sum - overMinor, minor) };
  });
  const minor = Math.min(...costs.map((one) => one.minor));
  return { minor, lessAtMostMinor: minor - Math.min(...costs.map(({ least }) => least)) };
}

/** The cheapest of all mixtures that come to so much at least, amount by amount. */
function leastMixture(cents: readonly number[], lacking: number): number {
  const most = lacking + Math.max(...cents);
  const isReached = [true];
  for (let sum = 1; sum <= most; sum += 1)
    isReached[sum] = cents.some((one) => isReached[sum - one] === true);
  return isReached.findIndex((is, sum) => is && sum >= lacking);
}
