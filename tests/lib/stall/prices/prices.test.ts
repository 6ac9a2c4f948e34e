import { describe, expect, it } from 'vitest';
import { exampleWorkshop } from '@/lib/examples/exampleWorkshop';
import { sellingTerms } from '@/lib/stall/plan/costs/sellingTerms';
import { commonestPrice, judgeSet } from '@/lib/stall/prices/judgeSet';
import { neighbours } from '@/lib/stall/prices/neighbours';
import { pieceMoney } from '@/lib/stall/prices/pieceMoney';
import { priceFloors } from '@/lib/stall/prices/priceFloors';
import { type PricedGoods, priceRows } from '@/lib/stall/prices/priceRows';
import { pricesBeside } from '@/lib/stall/prices/pricesBeside';
import { fairAnswer } from '@/tests/fixtures/stallAnswer';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

/* Worked by hand: 1 ÷ 1.07 − 0.75 × 0.026 = 0.915079 of a price is kept, less 0.75 × 0.10 ÷ 1.35 = 0.055556 a piece. */

const channel = exampleWorkshop(TEST_DAY).channels.find(({ id }) => id === 'stall');
const stall = channel === undefined ? null : sellingTerms(channel);
const fern = fairAnswer.goods.find(({ lineId, size }) => lineId === 'fern' && size === 'L');
if (stall === null || fern === undefined) throw new Error('the example lacks them');
const money = pieceMoney(fern, stall);
/** Material, minutes and wear 6.543, bag 0.19. */
const shirt = { price: 28, sold: 10, takes: 6.733, keptOf: money.keptOf };

describe('what a price leaves of a piece', () => {
  it.each([
    // 28 ÷ 1.07 = 26.168224 less 0.601556 of fees.
    [28, 25.566669],
    [25, 22.82143],
    [31, 28.311907],
    [0, -0.055556],
  ])('of %d is %d', (price, kept) => {
    expect(money.keptOf(price)).toBeCloseTo(kept, 5);
  });

  it('is turned round: the price with which so much is kept', () => {
    expect(money.priceFor(25.566669)).toBeCloseTo(28, 5);
  });

  it('is nothing at any price where fees take all of it', () => {
    expect(pieceMoney({ price: 10, netPrice: 9, fees: 9.2 }, stall).priceFor(1)).toBeNull();
  });
});

describe('the floors of a price', () => {
  it('are what it is worth at home, what its making takes, and its overhead', () => {
    const floors = priceFloors(fern, money);
    // (0.6 × 6.543 + 0.19 + 0.055556) ÷ 0.915079, (6.543 + …) and (6.863 + …).
    expect(floors.takeHome).toBeCloseTo(4.55846, 4);
    expect(floors.making).toBeCloseTo(7.41855, 4);
    expect(floors.withOverhead).toBeCloseTo(7.76824, 4);
  });
});

describe('the neighbours of a price', () => {
  const day = { sold: 60, contributionPerPiece: 16.2814, fixed: 499.07 };

  it('tell what a piece leaves, where the day breaks even and what it earns more', () => {
    const { rows } = neighbours({ price: 28, ceiling: null, goods: [shirt] }, day, 5);
    expect(rows.map(({ which, price }) => [which, price])).toEqual([
      ['below', 25],
      ['now', 28],
      ['above', 30],
    ]);
    for (const [at, margin, breakEven, more] of [
      [0, 16.08843, 31.5391, -27.45238],
      [1, 18.83367, 30.6528, 0],
      [2, 20.66383, 30.0891, 18.30159],
    ] as const) {
      expect(rows[at]?.margin).toBeCloseTo(margin, 4);
      expect(rows[at]?.breakEvenPieces).toBeCloseTo(breakEven, 3);
      expect(rows[at]?.more).toBeCloseTo(more, 4);
    }
  });

  it.each([
    [null, 'above'],
    [30, 'above'],
    [29, 'now'],
    [27, 'below'],
    // Even the lowest is more than the market is thought to bear.
    [20, 'below'],
  ] as const)('recommend up unless that is above the ceiling of %s: %s', (ceiling, which) => {
    expect(neighbours({ price: 28, ceiling, goods: [shirt] }, day, 5).recommended).toBe(which);
  });

  it.each([
    [28, 5, 25, 30],
    [30, 5, 25, 35],
    [28, 1, 27, 29],
    [0.3, 0.1, 0.2, 0.4],
    [3, 5, 0, 5],
    [3900, 100, 3800, 4000],
  ])('of %d on steps of %d are %d and %d', (price, step, below, above) => {
    expect(pricesBeside(price, step)).toEqual({ below, above });
  });

  it('have none below where that would be for nothing', () => {
    const { rows } = neighbours({ price: 3, ceiling: null, goods: [shirt] }, day, 5);
    expect(rows.map(({ which }) => which)).toEqual(['now', 'above']);
  });

  it('have no break-even where a piece would leave nothing', () => {
    const poor = { ...day, contributionPerPiece: 0.4 };
    const [below] = neighbours({ price: 28, ceiling: null, goods: [shirt] }, poor, 5).rows;
    expect(below?.breakEvenPieces).toBeNull();
  });
});

describe('a set', () => {
  it('of two for 50 leaves 32.18 where two one by one leave 37.67, and pays while 71 of 100 would have bought both', () => {
    const judged = judgeSet({ pieces: 2, price: 50 }, [shirt]);
    expect(judged).toMatchObject({ singles: 56, saves: 6, cautions: [] });
    expect(judged?.leaves).toBeCloseTo(32.17686, 4);
    expect(judged?.singlesLeave).toBeCloseTo(37.66734, 4);
    expect(judged?.oneLeaves).toBeCloseTo(18.83367, 4);
    // 13.343191 gained by who buys a second, 5.490478 lost by who would have anyway.
    expect(judged?.mayHaveBought).toBeCloseTo(0.708475, 5);
  });

  it('is cautioned of where the same pieces cost less one by one, all of them or the cheapest', () => {
    expect(judgeSet({ pieces: 2, price: 57 }, [shirt])?.cautions).toEqual([{ kind: 'aboveSingles' }]);
    const cheap = { ...shirt, price: 24, sold: 2 };
    expect(judgeSet({ pieces: 2, price: 50 }, [shirt, cheap])?.cautions).toEqual([
      { kind: 'aboveCheapest', singles: 48 },
    ]);
  });

  it('is cautioned of below what its making takes: 14.84 for two', () => {
    const [caution] = judgeSet({ pieces: 2, price: 14 }, [shirt])?.cautions ?? [];
    // 2 × (6.733 + 0.055556) ÷ 0.915079 = 14.8371.
    expect(caution?.kind === 'belowMaking' ? caution.floor : null).toBeCloseTo(14.8371, 3);
  });

  it('never pays where it leaves no more than one piece, and always where it leaves more than all', () => {
    expect(judgeSet({ pieces: 2, price: 30 }, [shirt])?.mayHaveBought).toBe(0);
    expect(judgeSet({ pieces: 2, price: 60 }, [shirt])?.mayHaveBought).toBe(1);
  });

  it('of nothing is not judged', () => {
    expect(judgeSet({ pieces: 2, price: 50 }, [])).toBeNull();
  });

  it('is held against the price that sells most', () => {
    expect(
      commonestPrice([
        { price: 28, sold: 47 },
        { price: 31, sold: 6 },
        { price: 16, sold: 22 },
      ]),
    ).toBe(28);
  });

  it('is held against the lower of two prices that sell alike, whichever stands first', () => {
    const [low, high] = [
      { price: 25, sold: 5 },
      { price: 28, sold: 5 },
    ];
    expect([commonestPrice([high, low]), commonestPrice([low, high])]).toEqual([25, 25]);
  });

  it('always pays where each piece loses and the set loses less than its pieces, though more than one', () => {
    // Kept is the whole price and a piece takes 30: one at 25 loses 5, two lose 10, and two for 53 lose 7.
    const lossy = { price: 25, sold: 1, takes: 30, keptOf: (price: number) => price };
    expect(judgeSet({ pieces: 2, price: 53 }, [lossy])).toMatchObject({
      ...{ oneLeaves: -5, singlesLeave: -10, leaves: -7, mayHaveBought: 1 },
    });
    // For 50 they lose 10 as well: nobody is missed, and nothing is gained.
    expect(judgeSet({ pieces: 2, price: 50 }, [lossy])?.mayHaveBought).toBe(0);
  });
});

describe('the prices of a stall', () => {
  const priced = fairPlan.goods.map(({ price, ...goods }): PricedGoods => ({ ...goods, minor: price }));
  const told = (goods: readonly PricedGoods[]) =>
    priceRows(fairPlan.ranges, goods).map(({ range, designs, sizes, isFrom, minor }) => ({
      ...{ range, designs: designs.length, sizes, isFrom, minor },
    }));

  it('stand in three rows: shirts up to XL, larger ones, mugs', () => {
    expect(told(priced)).toEqual([
      { range: 'Shirts', designs: 4, sizes: ['S', 'M', 'L', 'XL'], isFrom: false, minor: 2800 },
      { range: 'Shirts', designs: 4, sizes: ['2XL', '3XL'], isFrom: true, minor: 3100 },
      { range: 'Mugs', designs: 3, sizes: null, isFrom: true, minor: 1600 },
    ]);
  });

  it('tell where sizes of one price have another between them', () => {
    const gaps = (goods: readonly PricedGoods[]) =>
      priceRows(fairPlan.ranges, goods).map(({ sizes, hasGap }) => [sizes?.join(' ') ?? 'all', hasGap]);
    expect(gaps(priced)).toEqual([
      ['S M L XL', false],
      ['2XL 3XL', false],
      ['all', false],
    ]);
    // M costs what 2XL costs: neither price holds from one size to the next any more.
    expect(gaps(priced.map((one) => (one.size === 'M' ? { ...one, minor: 3100 } : one)))).toEqual([
      ['S L XL', true],
      ['M 2XL 3XL', true],
      ['all', false],
    ]);
  });

  it('stand apart by design where one of them costs more', () => {
    const dear = priced.map((one) =>
      one.rangeId === 'shirts' && one.lineId === 'star-map' ? { ...one, minor: one.minor + 400 } : one,
    );
    expect(told(dear).map(({ designs, minor }) => [designs, minor])).toEqual([
      [3, 2800],
      [3, 3100],
      [1, 3200],
      [1, 3500],
      [3, 1600],
    ]);
  });

  it('stand together where a design has fewer sizes than the others', () => {
    const fewer = priced.filter(({ lineId, size }) => lineId !== 'star-map' || size !== '3XL');
    expect(told(fewer).map(({ designs, minor }) => [designs, minor])).toEqual([
      [4, 2800],
      [4, 3100],
      [3, 1600],
    ]);
  });
});
