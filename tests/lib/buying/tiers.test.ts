import { describe, expect, it } from 'vitest';
import { offerEach } from '@/lib/buying/received/offerEach';
import { risingTiers, tierAt } from '@/lib/buying/tierAt';
import { supplierSchema } from '@/shared/schemas/making/supply';

const falling = [
  { from: 50, each: 4.4 },
  { from: 1, each: 4.8 },
];

describe('the price of a quantity', () => {
  it.each([
    [60, 4.4],
    [50, 4.4],
    [49, 4.8],
    // Fewer than any step begins with: that of the lowest.
    [0.5, 4.8],
  ])('of %s is %s, whichever step is listed first', (quantity, each) => {
    expect(tierAt(falling, quantity)?.each).toBe(each);
    expect(tierAt(falling.toReversed(), quantity)?.each).toBe(each);
  });

  it('is one of the steps as they are kept, so that it can be written where it stands', () => {
    expect(tierAt(falling, 60)).toBe(falling[0]);
    expect(tierAt([], 60)).toBeNull();
  });

  it('is the higher of two from one quantity', () => {
    const twice = [
      { from: 10, each: 4.5 },
      { from: 10, each: 4.3 },
    ];
    expect(tierAt(twice, 12)?.each).toBe(4.5);
    expect(risingTiers(twice).map(({ each }) => each)).toEqual([4.3, 4.5]);
  });

  it('is what goods in fill in for 60 of an offer that lists its steps falling', () => {
    const item = { kind: 'blank', blankId: 'tee', size: 'M' } as const;
    const supplier = supplierSchema.parse({
      name: 'Shirts and Co',
      offers: [{ id: 'o', item, tiers: falling }],
    });
    expect(offerEach(supplier, item, 60)).toBe(4.4);
  });
});
