import { describe, expect, it } from 'vitest';
import { priceJob } from '@/lib/costing/priceJob';
import { caseValue } from '@/lib/grid/costSheet';
import { clubWith, mended } from '@/tests/fixtures/clubJob';
import { costed, grid } from '@/tests/fixtures/costed';

const found = (each: number, fields: Readonly<Record<string, unknown>> = {}) =>
  priceJob(clubWith({ 'job.lines.0.ownPrices': [{ from: 48, each }], ...fields }), grid);

const of = (answer: ReturnType<typeof found>) =>
  answer.findings.filter(({ where }) => where.path[2] === 'ownPrices');

describe('an own price of a break', () => {
  it.each([
    // With 48 shirts one costs about 10.3 in full and 0.2 of fees; 3XL about 2.7 more, of which 2.50 are asked.
    [14, []],
    [9, ['RATE-08 caution ownBelowCost']],
  ])('of %d is held against what a piece costs', (each, expected) => {
    const answer = found(each);
    expect(of(answer).map(({ id, severity, variant }) => `${id} ${severity} ${variant}`)).toEqual(expected);
    expect(answer.prices).not.toBeNull();
  });

  it('that an up-charge takes to nothing stops the prices', () => {
    const answer = found(3, { 'job.lines.0.upCharges': [{ size: 'M', amount: -3 }] });
    expect(of(answer)[0]).toMatchObject({
      id: 'RATE-03',
      severity: 'stop',
      variant: 'ownNothing',
      waivable: false,
    });
    expect(answer.prices).toBeNull();
  });

  it('of a break that is no more is told as that, and not as a loss', () => {
    expect(of(found(1, { 'workshop.policy.breaks': [1, 12] }))).toMatchObject([
      { id: 'RATE-03', severity: 'caution', variant: 'ownNoBreak', facts: { from: 48, breaks: '1, 12' } },
    ]);
  });
});

// The sums ask 144.50, 23.50 and 18.00 from 1, 12 and 24: worked by hand.
describe('an own price through which more pieces cost more each', () => {
  const asked = (ownPrices: readonly { readonly from: number; readonly each: number }[]) => {
    const input = clubWith({ 'workshop.policy.breaks': [1, 12, 24], 'job.lines.0.ownPrices': ownPrices });
    return { input, told: of(priceJob(input, grid)) };
  };

  it('is asked about with both quantities, and the button takes it out', () => {
    const { input, told } = asked([{ from: 24, each: 40 }]);
    expect(told).toMatchObject([
      {
        id: 'RATE-03',
        severity: 'caution',
        variant: 'ownDearer',
        where: { path: ['lines', 0, 'ownPrices', 0, 'each'] },
        facts: { fewer: 12, fewerPrice: 23.5, more: 24, morePrice: 40 },
      },
    ]);
    expect(mended(input, told[0]).job.lines[0]?.ownPrices).toEqual([]);
  });

  it('is asked about where it lies under the suggestion for more', () => {
    // 17.00 for twelve is above their cost of 15.92 with its fees, and below 18.00 for 24.
    expect(asked([{ from: 12, each: 17 }]).told).toMatchObject([
      { variant: 'ownDearer', facts: { fewer: 12, fewerPrice: 17, more: 24, morePrice: 18 } },
    ]);
  });

  it('is fine where it falls, or stays the same', () => {
    expect(asked([{ from: 24, each: 23.5 }]).told).toEqual([]);
    expect(asked([{ from: 24, each: 23.51 }]).told).toMatchObject([{ variant: 'ownDearer' }]);
  });
});

describe('prices with tax inside', () => {
  const input = clubWith({
    'workshop.channels.0.taxMode': 'inside',
    'job.lines.0.upCharges': [],
    'job.lines.0.askedPrice': 5.5,
    'job.lines.0.ownPrices': [{ from: 48, each: 9 }],
  });
  const answer = priceJob(input, grid);
  const told = answer.findings.filter(({ id }) => id === 'RATE-08');

  it('are said as they are written, the price and what it lacks', () => {
    const sold = told.find(({ variant }) => variant === 'belowFloor');
    if (sold?.variant !== 'belowFloor') throw new Error('the price is not below its floor');
    expect(sold.facts).toMatchObject({ price: 5.5, taxInside: true });
    expect(sold.facts.short).toBeCloseTo(sold.facts.floor - 5.5, 9);
    // With 7 % on the floor before tax, of the size that lacks most.
    const { sheet } = costed(input);
    const net = sheet.cases.map((_, index) => caseValue(sheet, 'outOfPocketFloor', index));
    expect(sold.facts.floor).toBeCloseTo(Math.max(...net) * 1.07, 9);
  });

  it('say of an own price what it lacks in the same money', () => {
    const own = told.find(({ variant }) => variant === 'ownBelowCost');
    if (own?.variant !== 'ownBelowCost') throw new Error('the own price is not below its cost');
    const cell = answer.prices?.table.find(({ size, from }) => size === own.facts.size && from === 48);
    // What a piece loses before tax, and 7 % on it.
    expect(own.facts).toMatchObject({ price: 9, at: cell?.pricedAt });
    expect(own.facts.short).toBeCloseTo(-(cell?.margin ?? 0) * (9 / 1.07) * 1.07, 9);
  });
});
