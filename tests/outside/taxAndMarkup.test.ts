import { describe, expect, it } from 'vitest';
import { wholeJob } from '@/lib/grid/costSheet';
import { toMinor } from '@/shared/money';
import { costed } from '@/tests/fixtures/costed';
import { fixedRate } from '@/tests/fixtures/numbers';
import { plainJob } from '@/tests/fixtures/plainJob';

const soldAt = (asked: number, cost: number, tax = 0) =>
  costed(
    plainJob({
      sizes: [{ quantity: 1, blank: cost }],
      asked,
      channel: { taxMode: tax > 0 ? 'inside' : 'none', tax: fixedRate(tax, 'share') },
    }),
  ).sheet;

/*
 * The part of a price that is tax: 1/6 at 20 %, 1/21 at 5 %, 7/47 at 17.5 % (the VAT fraction of HMRC); and
 * Contemporary Mathematics (OpenStax, Rice University, 2023), section 6.2.
 */
describe('a price with tax inside', () => {
  it.each([
    // price, tax, tax in it
    [60, 0.2, 10],
    [80, 0.05, 3.81],
    [47, 0.175, 7],
    [36.56, 0.0575, 36.56 - 34.57],
    [97.17, 0.0425, 97.17 - 93.21],
  ])('%d at a rate of %d has %d of tax in it', (asked, rate, tax) => {
    const inside = asked - wholeJob(soldAt(asked, 1, rate), 'price');
    expect(toMinor(inside, 'USD')).toBe(toMinor(tax, 'USD'));
  });
});

describe('tax on a price', () => {
  it.each([
    // 428.99 × 0.0825 = 35.391675; 34.88 × 1.0825 = 37.7576. (The book prints 464.87 for the sum of the first.)
    [428.99, 0.0825, 3539, 46_438],
    [34.88, 0.0825, 288, 3776],
  ])('%d at a rate of %d: %d and with it %d', (price, rate, tax, total) => {
    expect(toMinor(price * rate, 'USD')).toBe(tax);
    expect(toMinor(price * (1 + rate), 'USD')).toBe(total);
  });
});

describe('markup', () => {
  it.each([
    // cost, price, markup: 15 % on 62.00, 45 % on 750, a shirt of 25.00 at 29.50, 480 sold at 840.
    [62, 71.3, 0.15],
    [750, 1087.5, 0.45],
    [25, 29.5, 0.18],
    [480, 840, 0.75],
  ])('%d sold at %d is a markup of %d', (cost, asked, markup) => {
    expect(wholeJob(soldAt(asked, cost), 'markup')).toBeCloseTo(markup, 12);
  });

  // Margin = markup ÷ (1 + markup), worked by hand.
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
  ])('of %d %% is a margin of %d %%', (markup, margin) => {
    expect(wholeJob(soldAt(100 * (1 + markup / 100), 100), 'margin') * 100).toBeCloseTo(margin, 4);
  });

  it.each([
    // Keystone and its neighbours: the target price for a margin has the markup margin ÷ (1 − margin).
    [0.2, 0.25],
    [0.3, 3 / 7],
    [0.4, 2 / 3],
    [0.5, 1],
    [0.6, 1.5],
  ])('for a target margin of %d is %d', (margin, markup) => {
    const { sheet } = costed(
      plainJob({ sizes: [{ quantity: 7, blank: 3 }], rates: { targetMargin: margin } }),
    );
    expect(wholeJob(sheet, 'markup')).toBeCloseTo(markup, 12);
  });
});
