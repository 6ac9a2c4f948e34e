import { describe, expect, it } from 'vitest';
import { isLargerSize } from '@/shared/isLargerSize';
import { clubWith, told } from '@/tests/fixtures/clubJob';

const price = (value: number) => ({ value, unit: 'money/piece', date: '2026-11-25', origin: 'yours' });
const asked = (fields: Readonly<Record<string, unknown>>) =>
  told(clubWith(fields), 'RATE-03').flatMap(({ variant, where, facts }) =>
    variant === 'largerCheaper' || variant === 'largerCharge' ? [{ variant, where, facts }] : [],
  );

describe('a larger size', () => {
  it('is asked about where its blank costs less than that of a smaller one', () => {
    // S to XL cost 4.60.
    expect(asked({ 'blank:white-shirt.sizes.4.price': price(4.6) })).toEqual([]);
    expect(asked({ 'blank:white-shirt.sizes.4.price': price(4.59) })).toMatchObject([
      {
        variant: 'largerCheaper',
        where: { document: 'blank', id: 'white-shirt', path: ['sizes', 4, 'price'], size: '2XL' },
        facts: { size: '2XL', amount: 4.59, smallerAmount: 4.6 },
      },
    ]);
  });

  it('is asked about where a typed up-charge makes it cheaper', () => {
    const charges = (amount: number) => [
      { size: '2XL', amount: 1.5 },
      { size: '3XL', amount },
    ];
    expect(asked({ 'job.lines.0.upCharges': charges(1.5) })).toEqual([]);
    expect(asked({ 'job.lines.0.upCharges': charges(1.49) })).toMatchObject([
      { variant: 'largerCharge', where: { path: ['lines', 0, 'upCharges', 1, 'amount'] } },
    ]);
    // Nothing is typed for 3XL, so that it adds nothing.
    expect(asked({ 'job.lines.0.upCharges': [{ size: '2XL', amount: 1.5 }] })).toMatchObject([
      { variant: 'largerCharge', where: { path: ['lines', 0, 'upCharges', 0, 'amount'], size: '3XL' } },
    ]);
  });

  it.each([
    ['M', 'S', true],
    ['S', 'M', false],
    ['XL', 'L', true],
    ['2XL', 'XL', true],
    ['XXL', 'XL', true],
    ['3XL', 'XXL', true],
    ['XXL', '2XL', false],
    ['S', 'XS', true],
    ['XS', '2XS', true],
    ['15 oz', '11 oz', true],
    ['128', '116', true],
    ['15 oz', '330 ml', false],
    ['L', '128', false],
    ['One size', 'S', false],
    ['L women', 'S', false],
  ])('%s is larger than %s: %s', (one, other, larger) => {
    expect(isLargerSize(one, other)).toBe(larger);
  });
});
