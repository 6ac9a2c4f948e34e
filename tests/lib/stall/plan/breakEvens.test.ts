import { describe, expect, it } from 'vitest';
import { adviseBring } from '@/lib/stall/plan/advice/adviseBring';
import { type GoodsReckoned, reckonGoods } from '@/lib/stall/plan/goodsReckoned';
import { breakEvens } from '@/lib/stall/plan/outcomes/breakEvens';
import { fairAsked } from '@/tests/fixtures/fairAsked';
import { fixedRate } from '@/tests/fixtures/numbers';

const [line] = fairAsked.jobs[0]?.input.job.lines ?? [];
if (line === undefined) throw new Error('the fair has no shirt');
const dry = [{ name: 'dry', chance: 1, factor: 1 }];

/** Of a net price of `price` ÷ 1.07 fees take 2 % and 0.05 and packaging 0.10; half its cost is left of what stays. */
const goodsOf = (
  size: string,
  price: number,
  cost: number,
  { leftoverShare = 0.5, expected = 50, atHome = 0 } = {},
): GoodsReckoned =>
  reckonGoods(
    {
      ...{ jobId: 'job', lineId: 'fern', size, rangeId: 'range', design: 'Fern', line },
      // Whoever brings a few sells them all.
      ...{ leftoverShare, expected, atHome, finishedBefore: atHome, held: null },
    },
    {
      ...{ cost, costWithOverhead: cost, cash: cost / 2, packaging: 0.1 },
      ...{ feeShare: 0.02, cardFixed: 0.05 },
    },
    price,
    { taxMode: 'inside', tax: fixedRate(0.07, 'share') },
    dry,
  );

describe('break-evens', () => {
  const day = { sunk: 4, avoidable: 6, hours: 1, wage: 10, overheadPerHour: 2 };
  const batch = { once: 8, benchHours: 0, benchPay: 0, cash: 0 };
  const seen = (goods: GoodsReckoned) => ({
    ...{
      goods: [goods],
      bring: [2],
      scenarios: dry.map((one) => ({ ...one, weatherIds: ['dry'] })),
      day,
      batch,
      withTax: 1.07,
    },
  });

  it('stand also where a piece leaves less than a unit of money', () => {
    // 4.00 − 0.13 − 0.10 − 3.37 = 0.40 of each: 10, 20 and 30 are earned with 25, 50 and 75.
    const found = breakEvens(seen(goodsOf('M', 4.28, 3.37)));
    expect(found?.contributionPerPiece).toBeCloseTo(0.4, 9);
    expect(found?.cash).toBeCloseTo(25, 6);
    expect(found?.withPay).toBeCloseTo(50, 6);
    expect(found?.everything).toBeCloseTo(75, 6);
    // More would have to be sold than the two that are brought.
    expect(found?.withWriteDown).toBeNull();
  });

  it('are none where a piece leaves nothing', () => {
    expect(breakEvens(seen(goodsOf('M', 4.28, 3.78)))).toBeNull();
  });
});

describe('pieces that lose nothing by staying', () => {
  it('are as many as serve all who ask on all but one day in ten thousand', () => {
    // Of a Poisson count of mean 2 no more than 8 are asked for with 0.999763, no more than 9 with 0.999954.
    const goods = goodsOf('S', 10.7, 4, { leftoverShare: 1, expected: 2 });
    expect(adviseBring([goods], { tablePieces: null, cash: null }).bring).toEqual([9]);
  });
});

describe('the gap that is told', () => {
  it('is what a single place could have earned where a design comes with two sizes or not at all', () => {
    // 10.00 − 0.25 − 0.10 − 4.00 = 5.65 a piece; one place holds no M and L.
    const advice = adviseBring([goodsOf('M', 10.7, 4), goodsOf('L', 10.7, 4)], {
      tablePieces: 1,
      cash: null,
    });
    expect(advice.bring).toEqual([0, 0]);
    expect(advice.trimmedFor).toBe('tablePieces');
    expect(advice.gap).toBeCloseTo(5.65, 6);
  });

  it('is the same of money', () => {
    // A piece takes 2.00 + 0.10, so money for one of them holds no M and L either.
    const advice = adviseBring([goodsOf('M', 10.7, 4), goodsOf('L', 10.7, 4)], {
      tablePieces: null,
      cash: 2.1,
    });
    expect(advice.bring).toEqual([0, 0]);
    expect(advice.trimmedFor).toBe('cash');
    expect(advice.gap).toBeCloseTo(5.65, 6);
  });
});

describe('finished pieces', () => {
  const [m, l] = [goodsOf('M', 10.7, 4, { atHome: 2 }), goodsOf('L', 10.7, 4)];

  it('come along alone where there is no money for the sizes that their design needs', () => {
    // Two packed M take 0.20, and an L would take 2.10. What is left of 0.50 is a seventh of a piece that leaves 5.65.
    const { bring, gap, nothingFits } = adviseBring([m, l], { tablePieces: null, cash: 0.5 });
    expect([bring, nothingFits]).toEqual([[2, 0], null]);
    expect(gap).toBeCloseTo(5.65 / 7, 2);
  });

  it('come along alone where there is no place for these, and with them where there is', () => {
    expect(adviseBring([m, l], { tablePieces: 1, cash: null }).bring).toEqual([1, 0]);
    expect(adviseBring([m, l], { tablePieces: null, cash: 2.3 }).bring).toEqual([2, 1]);
  });

  it('bring no pressed ones of their size without these', () => {
    // An L takes 20.00 + 0.10, and 5.00 would press two more M.
    const dear = goodsOf('L', 107, 40);
    expect(adviseBring([m, dear], { tablePieces: null, cash: 5 }).bring).toEqual([2, 0]);
    expect(adviseBring([m, dear], { tablePieces: null, cash: 20.3 }).bring).toEqual([2, 1]);
  });

  it('come along alone where their design does not pay, without limits too', () => {
    // Of an M from home 7.65 × 0.02 are earned, and an L that hardly anybody asks for loses 2.00.
    const rare = { expected: 0.02 };
    const goods = [goodsOf('M', 10.7, 4, { ...rare, atHome: 1 }), goodsOf('L', 10.7, 4, rare)];
    const { bring, why, gap } = adviseBring(goods, { tablePieces: null, cash: null });
    expect([bring, gap]).toEqual([[1, 0], 0]);
    expect(why[0]).toBe('atHome');
  });

  it('say what one of them takes where not even that fits', () => {
    expect(adviseBring([m, l], { tablePieces: null, cash: 0.05 }).nothingFits).toEqual({
      limit: 'cash',
      least: 0.1,
    });
  });
});
