import { describe, expect, it } from 'vitest';
import { wholeJob } from '@/lib/grid/costSheet';
import { breakList } from '@/lib/price/list/breakList';
import { inversions } from '@/lib/price/list/inversions';
import { sellingTotal } from '@/lib/price/list/selling';
import { documentTax } from '@/lib/price/tax/documentTax';
import { taxAdded, taxInside } from '@/lib/price/tax/taxOf';
import { batchCurve } from '@/lib/studies/curve/batchCurve';
import { batchEvaluator } from '@/lib/studies/curve/batchEvaluator';
import { breakEven } from '@/lib/studies/curve/breakEven';
import { batchForMargin } from '@/lib/studies/goalSeek/batchForMargin';
import { type MinorUnits, splitMinor, toMinor } from '@/shared/money';
import { roundCash } from '@/shared/roundCash';
import { grid } from '@/tests/fixtures/costed';
import { business } from './pricingFixture';

const usd = (amount: number): MinorUnits => toMinor(amount, 'USD');

/*
 * M. Franklin, P. Graybeal, D. Cooper, Principles of Accounting 2 (Managerial), OpenStax 2019, chapter 3. Figures
 * that the book misprints (36,000 and 28,500 in 3.1 and 3.2, 170,000 in 3.5) are taken as its own sums give them.
 */
describe('cost, volume and profit', () => {
  describe('of one product at 100 with 20 variable and 18,000 fixed (3.2)', () => {
    const job = business(18_000, [{ variable: 20, price: 100, perSet: 1 }]);
    const points = batchCurve(job, grid, { from: 1, to: 800, priceEach: 100 });
    const profitAt = (n: number) => (points.ok ? points.value[n - 1]?.profit : undefined);

    it('breaks even at 225 units, which sell for 22,500', () => {
      expect(points.ok && breakEven(points.value)?.first).toBe(225);
      expect(points.ok && points.value[224]?.price).toBeCloseTo(22_500, 6);
    });

    it.each([
      [175, -4000],
      [225, 0],
      [300, 6000],
      [425, 16_000],
      // 24,000 after tax on income of 40 % is 40,000 before it.
      [725, 40_000],
    ])('earns at %i units %d', (n, profit) => {
      expect(profitAt(n)).toBeCloseTo(profit, 6);
    });

    it('leaves four fifths of each price towards the fixed cost', () => {
      // One more piece at 100 with 20 variable.
      expect((profitAt(425) ?? 0) - (profitAt(424) ?? 0)).toBeCloseTo(80, 6);
    });
  });

  it('breaks a haircut even at 200: 3,000 over 35 less 20 (3.2)', () => {
    const salon = business(3000, [{ variable: 20, price: 35, perSet: 1 }]);
    expect(batchForMargin(salon, grid, 35, 0)).toEqual({ ok: true, value: 200 });
  });

  it('leaves 250 of a hundred shirts at a kiosk and 1,200 of two hundred (3.1)', () => {
    const kiosk = business(700, [{ variable: 15.5, price: 25, perSet: 1 }]);
    const profits = batchEvaluator(kiosk.laidOut, grid)([100, 200].map((n) => ({ n, priceEach: 25 })));
    expect(profits.map((point) => Number(point?.profit.toFixed(6)))).toEqual([250, 1200]);
  });

  // Price, variable, fixed; break-even in units, and income at 1,500 sold (3.3).
  it.each([
    [3.75, 1.5, 2475, 1100, 900],
    [4.25, 1.5, 2475, 900, 1650],
    [3.75, 1.55, 2475, 1125, 825],
    [3.75, 1.5, 2700, 1200, 675],
  ])('moves with price %f, variable %f and fixed %d', (price, variable, fixed, units, income) => {
    const job = business(fixed, [{ variable, price, perSet: 1 }]);
    expect(batchForMargin(job, grid, price, 0, 1500)).toEqual({ ok: true, value: units });
    const [sold] = batchEvaluator(job.laidOut, grid)([{ n: 1500, priceEach: price }]);
    expect(sold?.profit).toBeCloseTo(income, 6);
  });

  describe('of three products in a mix of 5 : 3 : 2 with 145,000 fixed (3.4)', () => {
    const things = [
      { perSet: 5, price: 6.25, variable: 3.25 },
      { perSet: 3, price: 7.75, variable: 4.5 },
      { perSet: 2, price: 9.25, variable: 6.25 },
    ];
    const job = business(145_000, things);

    it('has a composite of 73 that leaves 30.75', () => {
      const [one] = batchEvaluator(job.laidOut, grid)([{ n: 10, priceEach: 'asked' }]);
      expect(one?.price).toBeCloseTo(73, 9);
      expect(one?.profit).toBeCloseTo(30.75 - 145_000, 6);
    });

    it('breaks even at 4,715.45 composites of ten pieces: a piece less loses, a piece more earns', () => {
      const [under, over] = batchEvaluator(
        job.laidOut,
        grid,
      )([47_154, 47_155].map((n) => ({ n, priceEach: 'asked' as const })));
      expect(under?.profit).toBeLessThan(0);
      expect(over?.profit).toBeGreaterThan(0);
      expect(over?.price).toBeCloseTo(4715.5 * 73, 4);
    });
  });

  it('keeps 72,000, or 32 %, of sales safe at 2,500 units of 90 with 40 variable and 85,000 fixed (3.5)', () => {
    const job = business(85_000, [{ variable: 40, price: 90, perSet: 1 }]);
    expect(batchForMargin(job, grid, 90, 0, 2500)).toEqual({ ok: true, value: 1700 });
    const points = batchEvaluator(job.laidOut, grid)([1700, 1900, 2500].map((n) => ({ n, priceEach: 90 })));
    expect(points.map((point) => Number(point?.profit.toFixed(6)))).toEqual([0, 10_000, 40_000]);
    const [even = Number.NaN, , sold = Number.NaN] = points.map((point) => point?.price);
    expect(sold - even).toBeCloseTo(72_000, 6);
    expect((sold - even) / sold).toBeCloseTo(0.32, 9);
  });

  it('never breaks even where a piece leaves nothing', () => {
    const job = business(100, [{ variable: 5, price: 5, perSet: 1 }]);
    expect(batchForMargin(job, grid, 5, 0)).toMatchObject({ ok: false, problem: { kind: 'noSuchBatch' } });
  });
});

/*
 * All-units and incremental quantity discounts as S. Nahmias, Production and Operations Analysis, names them; the
 * schedule is that of K. K. Aggarwal's lectures (University of Delhi): 5.00 to 999, 4.80 to 1,999, 4.75 beyond.
 */
describe('quantity discounts', () => {
  const read = breakList(
    [
      { from: 1, each: 5 },
      { from: 1000, each: 4.8 },
      { from: 2000, each: 4.75 },
    ],
    'USD',
  );
  if (!read.ok) throw new Error(read.problem.kind);
  const list = read.value;

  it('on all units make 999 dearer than 1,000, and every order from 961 on', () => {
    expect(sellingTotal({ kind: 'asListed', list }, 999)).toBe(499_500);
    expect(sellingTotal({ kind: 'asListed', list }, 1000)).toBe(480_000);
    expect(inversions(list, 1000)).toEqual([{ from: 961, to: 999, cheaperAt: 1000, cheaperTotal: 480_000 }]);
    // 9,500 ÷ 4.80 = 1,979.2: the second break has its own stretch.
    expect(inversions(list)[1]).toMatchObject({ from: 1980, to: 1999, cheaperAt: 2000 });
  });

  it('on the increment ask 4,999.80 for 1,000, and never less for more', () => {
    expect(sellingTotal({ kind: 'slab', list }, 1000)).toBe(499_980);
  });
});

/* Rules of VAT as HMRC states its fractions (1/6 at 20 %, 1/21 at 5 %, 7/47 at 17.5 %). */
describe('tax inside a price', () => {
  it.each([
    [60, 0.2, 10],
    [80, 0.05, 3.81],
    [47, 0.175, 7],
  ])('of %d at %f is %f', (total, share, tax) => {
    expect(taxInside(usd(total), share).tax).toBe(usd(tax));
  });
});

/* OpenStax, Contemporary Mathematics (2023), 6.2; its total of 464.87 for the first is misprinted. */
describe('tax on a price', () => {
  it.each([
    [428.99, 0.0825, 35.39, 464.38],
    [34.88, 0.0825, 2.88, 37.76],
  ])('of %f at %f is %f', (net, share, tax, total) => {
    expect(taxAdded(usd(net), share)).toEqual({ without: usd(net), tax: usd(tax), with: usd(total) });
  });

  it.each([
    [36.56, 0.0575, 34.57],
    [97.17, 0.0425, 93.21],
  ])('out of %f at %f leaves %f', (total, share, net) => {
    expect(taxInside(usd(total), share).without).toBe(usd(net));
  });

  it('is the same line by line and by document where there is one line', () => {
    for (const rounding of ['line', 'document'] as const) {
      const answer = documentTax([{ amount: usd(428.99), tax: 0.0825 }], {
        currency: 'USD',
        mode: 'added',
        rounding,
      });
      expect(answer.total.with).toBe(usd(464.38));
    }
  });
});

describe('margin and markup', () => {
  // Markup and margin in percent: m ÷ (1 + m).
  it.each([
    [10, 9.0909],
    [20, 16.6667],
    [25, 20],
    [33.3333, 25],
    [40, 28.5714],
    [50, 33.3333],
    [60, 37.5],
    [75, 42.8571],
    [100, 50],
    [150, 60],
    [200, 66.6667],
    [300, 75],
  ])('a markup of %f %% is a margin of %f %%', (markup, margin) => {
    // One piece that costs 100, at that and the markup on it.
    const { sheet } = business(0, [{ variable: 100, price: 100 + markup, perSet: 1 }]);
    expect(wholeJob(sheet, 'markup') * 100).toBeCloseTo(markup, 9);
    expect(wholeJob(sheet, 'margin') * 100).toBeCloseTo(margin, 3);
  });
});

/* OpenStax, Contemporary Mathematics (2023), 11.4: Hamilton's method. */
describe('largest remainder', () => {
  it.each([
    [70, [15, 9, 10], [31, 18, 21]],
    [27, [13, 12, 5, 16, 7, 9], [6, 5, 2, 7, 3, 4]],
    [100, [1, 1, 1], [34, 33, 33]],
  ])('splits %i over %j', (total, shares, parts) => {
    expect(splitMinor(total as MinorUnits, shares)).toEqual(parts);
  });
});

/*
 * Canada: Budget 2012, rounding of cash after tax (final cents 1, 2, 6, 7 down; 3, 4, 8, 9 up). Sweden: whole krona
 * since 2010, from 50 öre on the next one. Australia: five cents. Steps of CLDR 48.2. New Zealand: ten cents since 2006; its
 * Retailers Association has 1 to 5 cents go down and 6 to 9 up (leaflet of its Reserve Bank, Change for the Better).
 * Hungary: five forints since 2008, by law 0.01 to 2.49 down, 2.50 to 4.99 up, 5.01 to 7.49 down and 7.50 to 9.99 up.
 * Whole rappen never lie halfway between two coins of five. Sweden and Hungary from memory.
 */
describe('cash', () => {
  it('rounds 1.83 and 2.86 with 5 % tax, 4.92, to 4.90 in Canada', () => {
    const total = documentTax(
      [183, 286].map((amount) => ({ amount: amount as MinorUnits, tax: 0.05 })),
      { currency: 'CAD', mode: 'added', rounding: 'document' },
    ).total.with;
    expect(total).toBe(492);
    expect(roundCash(total, 'CAD')).toBe(490);
  });

  it.each([
    [0, 0],
    [1, 0],
    [2, 0],
    [3, 5],
    [4, 5],
    [5, 5],
    [6, 5],
    [7, 5],
    [8, 10],
    [9, 10],
  ])('takes a last cent of %i as %i', (cents, cash) => {
    expect(roundCash((1000 + cents) as MinorUnits, 'CAD')).toBe(1000 + cash);
  });

  it.each([
    ['CHF', 1002, 1000],
    ['CHF', 1003, 1005],
    ['SEK', 1049, 1000],
    ['SEK', 1050, 1100],
    ['NZD', 1005, 1000],
    ['NZD', 1006, 1010],
    ['NZD', 1015, 1010],
    ['HUF', 1_000_249, 1_000_000],
    ['HUF', 1_000_250, 1_000_500],
    ['HUF', 1_000_749, 1_000_500],
    ['HUF', 1_000_750, 1_001_000],
  ])('in %s goes from %i to %i', (currency, minor, paid) => {
    expect(roundCash(minor as MinorUnits, currency)).toBe(paid);
  });
});
