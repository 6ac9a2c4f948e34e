import { describe, expect, it } from 'vitest';
import { batchForMargin } from '@/lib/studies/goalSeek/batchForMargin';
import { largestWage } from '@/lib/studies/goalSeek/largestWage';
import { priceForMargin } from '@/lib/studies/goalSeek/priceForMargin';
import { priceForPay } from '@/lib/studies/goalSeek/priceForPay';
import { club, clubWith } from '@/tests/fixtures/clubJob';
import { costed, grid } from '@/tests/fixtures/costed';

const job = costed(club());

describe('priceForMargin', () => {
  it('is the target price at the target margin', () => {
    const price = priceForMargin(job, grid, 37, 0.3);
    expect(price.ok && price.value.total).toBeCloseTo(602.05, 2);
    expect(price.ok && price.value.each).toBeCloseTo(16.27, 2);
  });

  it('at no margin pays cost and fees and says that nothing is earned', () => {
    const price = priceForMargin(job, grid, 37, 0);
    expect(price.ok && price.value.earns).toBe('nothing');
    // (411.79 + 0.30) ÷ (1 − 0.015515) ÷ 37: full cost and fees, 11.31 each.
    expect(price.ok && price.value.each).toBeCloseTo(11.31, 2);
  });

  it.each([
    [37, 1, 'nothingLeft'],
    [37, 0.99, 'nothingLeft'],
    [37, -0.1, 'notAMargin'],
    [37, 1.5, 'notAMargin'],
    [37, Number.NaN, 'notAMargin'],
    [0, 0.3, 'notABatch'],
  ])('has no price for %d shirts at a margin of %d', (n, margin, kind) => {
    const price = priceForMargin(job, grid, n, margin);
    expect(price.ok ? null : price.problem.kind).toBe(kind);
  });
});

describe('priceForPay', () => {
  it('pays exactly 18.00 an hour at 11.31 each, card fee included', () => {
    const price = priceForPay(job, grid, 37, 18);
    expect(price.ok && price.value.each).toBeCloseTo(11.31, 2);
  });

  it('writes the price with tax inside where the channel does', () => {
    const inside = costed(clubWith({ 'workshop.channels.0.taxMode': 'inside' }));
    const price = priceForPay(inside, grid, 37, 18);
    const apart = priceForPay(job, grid, 37, 18);
    if (!price.ok || !apart.ok) throw new Error('no price');
    expect(price.value.each).toBeCloseTo(1.07 * apart.value.each, 9);
    expect(price.value.total).toBeCloseTo(37 * price.value.each, 9);
    expect([price.value.taxInside, apart.value.taxInside]).toEqual([0.07, 0]);
  });

  it('takes no pay that is none', () => {
    const price = priceForPay(job, grid, 37, -1);
    expect(price.ok ? null : price.problem.kind).toBe('notAnAmount');
  });
});

describe('batchForMargin', () => {
  it('finds the first dozen and a half that leaves 30 % at a flat 20.00', () => {
    // 18 leaves 29.9 %.
    expect(batchForMargin(job, grid, 20, 0.3)).toEqual({ ok: true, value: 19 });
  });

  it('says it where no batch does, with what the largest leaves', () => {
    const batch = batchForMargin(job, grid, 20, 0.9, 100);
    expect(batch.ok ? null : batch.problem).toEqual({
      kind: 'noSuchBatch',
      upTo: 100,
      marginThere: expect.closeTo(0.505, 3),
    });
  });

  it('takes no margin of all, and no price of nothing', () => {
    expect(batchForMargin(job, grid, 20, 1)).toEqual({
      ok: false,
      problem: { kind: 'notAMargin', margin: 1 },
    });
    expect(batchForMargin(job, grid, 0, 0.3)).toEqual({
      ok: false,
      problem: { kind: 'notAPrice', price: 0 },
    });
  });
});

describe('largestWage', () => {
  it('is what the job pays when nothing else is left', () => {
    const wage = largestWage(job, grid, 37, 20);
    if (!wage.ok) throw new Error(wage.problem.kind);
    const at = costed(
      clubWith({
        'workshop.rates.wage': { value: wage.value, unit: 'money/h', date: '2026-11-25', origin: 'yours' },
        'job.lines.0.askedPrice': 20,
        'job.lines.0.upCharges': [],
      }),
    );
    expect(at.sheet.values.profit?.at(-1)).toBeCloseTo(0, 6);
    expect(at.sheet.values.payPerHour?.at(-1)).toBeCloseTo(wage.value, 6);
  });

  it('is none where the price loses money even unpaid', () => {
    const wage = largestWage(job, grid, 37, 5);
    expect(wage.ok ? null : wage.problem.kind).toBe('noWage');
    expect(wage.ok || wage.problem.kind !== 'noWage' ? 0 : wage.problem.lossUnpaid).toBeGreaterThan(0);
  });

  it('says what is wrong with a batch or a price that is none', () => {
    expect(largestWage(job, grid, 0, 20)).toEqual({ ok: false, problem: { kind: 'notABatch', n: 0 } });
    expect(largestWage(job, grid, 37, -2)).toEqual({ ok: false, problem: { kind: 'notAPrice', price: -2 } });
  });
});
