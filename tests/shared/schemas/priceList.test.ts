import { describe, expect, it } from 'vitest';
import { priceListSchema, priceListVersionSchema } from '@/shared/schemas/priceList';
import { anItem, aVersion } from '@/tests/lib/priceLists/aVersion';

const whole = priceListSchema.parse({ name: 'Shirts for clubs' });

describe('a price list', () => {
  it('begins with nothing but a name', () => {
    expect(priceListSchema.parse({ name: 'Shirts' })).toEqual({
      name: 'Shirts',
      from: '',
      notes: '',
      leadTime: '',
      validDays: 90,
      paper: 'a4',
      items: [],
    });
  });

  it('is the same once it was written and read', () => {
    expect(priceListSchema.parse(JSON.parse(JSON.stringify(whole)))).toEqual(whole);
  });

  it.each([
    ['a name of 200 letters', { name: 'n'.repeat(200) }],
    ['a validity of no days', { validDays: 0 }],
    ['a key it does not know', { discount: 0.1 }],
  ])('refuses %s', (_, fields) => {
    expect(priceListSchema.safeParse({ ...whole, ...fields }).success).toBe(false);
  });
});

describe('a version of a price list', () => {
  it('is the same once it was written and read', () => {
    expect(priceListVersionSchema.parse(JSON.parse(JSON.stringify(aVersion())))).toEqual(aVersion());
  });

  it.each([
    ['a day that is none', { validUntil: '2027-02-30' }],
    [
      'a price in parts of a minor unit',
      { items: [anItem({ breaks: [{ ...anItem().breaks[0], each: 19.5 } as never] })] },
    ],
    ['no items', { items: [] }],
    ['a letter that looks like a figure', { number: { count: 1, letter: 'O' } }],
    ['a number of before', { number: 1 }],
  ])('refuses %s', (_, fields) => {
    expect(priceListVersionSchema.safeParse({ ...aVersion(), ...fields }).success).toBe(false);
  });
});
