import { describe, expect, it } from 'vitest';
import { dearestAtShops } from '@/lib/stall/shops/toldPrices';
import { addDays } from '@/shared/days';
import type { Entry } from '@/shared/schemas/happened';
import { type Shop, shopSchema } from '@/shared/schemas/shop';
import type { ShopStatement } from '@/shared/schemas/stallEvents';
import { TEST_DAY } from '@/tests/tools/clock/testDay';

const fern = { jobId: 'fair-shirts', lineId: 'fern', size: 'M' };
const shopOf = (name: string, more: Partial<Shop> = {}): Shop => shopSchema.parse({ name, ...more });
const shops = { corner: shopOf('Corner shop'), quay: shopOf('Quay gallery') };

let noted = 0;
function statement(
  shopId: string,
  day: string,
  eachMinor: number,
  more: { readonly grade?: 'first' | 'second'; readonly currency?: string } = {},
): Entry<'shopStatement', ShopStatement> {
  noted += 1;
  const { grade = 'first', currency = 'USD' } = more;
  return {
    ...{ id: `here-${noted}`, kind: 'shopStatement', version: 1, device: 'here', count: noted, at: noted },
    body: {
      ...{ shopId, day, currency, dueMinor: 0, commissionShare: 0.4, commissionBase: 'withTax' },
      rows: [{ goods: fern, grade, sold: 1, missing: 0, eachMinor }],
    },
  };
}
const earlier = addDays(TEST_DAY, -30);

describe('the dearest price at a shop', () => {
  it('is the last one each shop told, and of these the highest', () => {
    const statements = [
      statement('corner', TEST_DAY, 3000),
      statement('corner', earlier, 3600),
      statement('quay', earlier, 3200),
    ];
    expect(dearestAtShops(shops, statements, 'USD')(fern)).toEqual({ shop: 'Quay gallery', price: 32 });
  });

  it.each([
    ['of seconds', [statement('corner', TEST_DAY, 3200, { grade: 'second' })], shops],
    ['in another currency', [statement('corner', TEST_DAY, 3200, { currency: 'EUR' })], shops],
    ['that was not told', [statement('corner', TEST_DAY, 0)], shops],
    [
      'of a shop put away',
      [statement('corner', TEST_DAY, 3200)],
      { corner: shopOf('Old', { archivedOn: earlier }) },
    ],
    ['of a shop that is not here', [statement('gone', TEST_DAY, 3200)], shops],
  ] as const)('is none %s', (_, statements, of) => {
    expect(dearestAtShops(of, statements, 'USD')(fern)).toBeNull();
  });

  it('is the same on every device where two told it in one moment', () => {
    const told = (id: string, eachMinor: number) => ({
      ...statement('corner', TEST_DAY, eachMinor),
      ...{ id, at: 7, count: 7 },
    });
    const [a, b] = [told('device-a-7', 3000), told('device-b-7', 3200)];
    for (const arrived of [
      [a, b],
      [b, a],
    ]) {
      expect(dearestAtShops(shops, arrived, 'USD')(fern)).toEqual({ shop: 'Corner shop', price: 32 });
    }
  });

  it('is of these goods alone', () => {
    const priceOf = dearestAtShops(shops, [statement('corner', TEST_DAY, 3200)], 'USD');
    expect(priceOf({ ...fern, size: 'L' })).toBeNull();
    expect(priceOf(fern)).toEqual({ shop: 'Corner shop', price: 32 });
  });
});
