import { describe, expect, it } from 'vitest';
import { priceJob } from '@/lib/costing/priceJob';
import { clubWith } from '@/tests/fixtures/clubJob';
import { grid } from '@/tests/fixtures/costed';

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
