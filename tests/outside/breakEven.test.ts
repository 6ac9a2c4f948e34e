import { describe, expect, it } from 'vitest';
import { type CostSheet, wholeJob } from '@/lib/grid/costSheet';
import { costed } from '@/tests/fixtures/costed';
import { fixedRate } from '@/tests/fixtures/numbers';
import { ownCost, plainJob } from '@/tests/fixtures/plainJob';

/*
 * Principles of Accounting, vol. 2: Managerial Accounting (OpenStax, Rice University, 2019), sections 3.1 to 3.5.
 * A period's sales are a job: fixed cost is an own row of the order, variable cost the blank, and the profit row at
 * a quantity is the book's income. Break-even is where it is 0; target profit where it is the target.
 */
function sales(units: number, price: number, variable: number, fixed: number, commission = 0): CostSheet {
  return costed(
    plainJob({
      sizes: [{ quantity: units, blank: variable }],
      ownRows: [ownCost('fixed', 'order', fixed)],
      asked: price,
      channel: { commission: fixedRate(commission, 'share') },
    }),
  ).sheet;
}

describe('a kiosk that sells shirts at 25, for 15 and half a unit of commission, at 700 fixed', () => {
  it.each([
    // shirts, contribution, income
    [1, 9.5, 9.5 - 700],
    [100, 950, 250],
    [200, 1900, 1200],
  ])('%d shirts: contribution %d, income %d', (shirts, contribution, income) => {
    // A fiftieth of 25 is the half.
    const sheet = sales(shirts, 25, 15, 700, 0.02);
    expect(wholeJob(sheet, 'profit')).toBeCloseTo(income, 9);
    expect(wholeJob(sheet, 'profit') + wholeJob(sheet, 'ownCosts')).toBeCloseTo(contribution, 9);
  });
});

describe('a product at 100, 20 variable, 18,000 fixed', () => {
  it.each([
    [225, 22_500, 0],
    [175, 17_500, -4000],
    [300, 30_000, 6000],
    [425, 42_500, 16_000],
    // 24,000 after tax of 40 % are 40,000 before it.
    [725, 72_500, 40_000],
  ])('%d units bring %d and an income of %d', (units, revenue, income) => {
    const sheet = sales(units, 100, 20, 18_000);
    expect(wholeJob(sheet, 'price')).toBeCloseTo(revenue, 6);
    expect(wholeJob(sheet, 'profit')).toBeCloseTo(income, 6);
  });

  it('asks 100 of 225 pieces as target where nothing is to be earned', () => {
    const { sheet } = costed(
      plainJob({ sizes: [{ quantity: 225, blank: 20 }], ownRows: [ownCost('fixed', 'order', 18_000)] }),
    );
    expect(sheet.values.target?.[0]).toBeCloseTo(100, 9);
  });
});

describe('sensitivity to price, variable and fixed cost', () => {
  it.each([
    // price, variable, fixed, break-even units and revenue, income at 1,500
    [3.75, 1.5, 2475, 1100, 4125, 900],
    [4.25, 1.5, 2475, 900, 3825, 1650],
    [3.75, 1.55, 2475, 1125, 4218.75, 825],
    [3.75, 1.5, 2700, 1200, 4500, 675],
  ])(
    '%d, %d, %d: even at %d units and %d, %d earned on 1,500',
    (price, variable, fixed, even, revenue, income) => {
      const atBreakEven = sales(even, price, variable, fixed);
      expect(wholeJob(atBreakEven, 'profit')).toBeCloseTo(0, 9);
      expect(wholeJob(atBreakEven, 'price')).toBeCloseTo(revenue, 9);
      expect(wholeJob(sales(1500, price, variable, fixed), 'profit')).toBeCloseTo(income, 9);
    },
  );

  it('a haircut at 35 for 20 against 3,000 a month is even at 200', () => {
    expect(wholeJob(sales(200, 35, 20, 3000), 'profit')).toBeCloseTo(0, 9);
  });
});

describe('three products in a mix of 5 : 3 : 2 and 145,000 fixed', () => {
  const mixed = (composites: number) =>
    costed(
      plainJob({
        sizes: [
          { quantity: 5 * composites, blank: 3.25 },
          { quantity: 3 * composites, blank: 4.5, asked: 7.75 },
          { quantity: 2 * composites, blank: 6.25, asked: 9.25 },
        ],
        asked: 6.25,
        ownRows: [ownCost('fixed', 'order', 145_000)],
      }),
    ).sheet;

  it('a composite of ten sells at 73 for 42.25 and contributes 30.75', () => {
    const one = mixed(1);
    expect(wholeJob(one, 'price')).toBeCloseTo(73, 9);
    expect(wholeJob(one, 'blanks')).toBeCloseTo(42.25, 9);
    expect(wholeJob(one, 'profit') + 145_000).toBeCloseTo(30.75, 6);
  });

  it('is even between 4,715 and 4,716 composites', () => {
    expect(wholeJob(mixed(4715), 'profit')).toBeLessThan(0);
    expect(wholeJob(mixed(4716), 'profit')).toBeGreaterThan(0);
  });
});

describe('margin of safety at 90, 40 variable, 85,000 fixed', () => {
  it.each([
    [1700, 153_000, 0],
    // With 10,000 of safety.
    [1900, 171_000, 10_000],
    [2500, 225_000, 40_000],
  ])('%d units bring %d and an income of %d', (units, revenue, income) => {
    const sheet = sales(units, 90, 40, 85_000);
    expect(wholeJob(sheet, 'price')).toBeCloseTo(revenue, 6);
    expect(wholeJob(sheet, 'profit')).toBeCloseTo(income, 6);
  });

  it('is 72,000 at 2,500 units, which is 32 % of their revenue', () => {
    const revenue = wholeJob(sales(2500, 90, 40, 85_000), 'price');
    const even = wholeJob(sales(1700, 90, 40, 85_000), 'price');
    expect(revenue - even).toBeCloseTo(72_000, 6);
    expect((revenue - even) / revenue).toBeCloseTo(0.32, 9);
  });
});
