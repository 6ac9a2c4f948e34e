import { describe, expect, it } from 'vitest';
import { priceElsewhere } from '@/lib/stall/shops/priceElsewhere';
import type { PriceListVersion } from '@/shared/schemas/priceList';
import type { StallPlan } from '@/shared/schemas/stallPapers';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { anItem, aVersion } from '@/tests/lib/priceLists/aVersion';

const fernM = { jobId: 'fair-shirts', lineId: 'fern', size: 'M' };
const usd = { currency: 'USD', taxMode: 'inside' } as const;

const plan = (at: number, price: number, more: Partial<StallPlan> = {}, withdrawn = false) => ({
  ...{ id: `plan-${price}`, at, withdrawn },
  body: { ...fairPlan, goods: fairPlan.goods.map((one) => ({ ...one, price })), ...more },
});

/** From one piece on at 30.00, 2XL 1.50 more. */
const [wide, open] = anItem().breaks;
const list = (at: number, more: Partial<PriceListVersion> = {}) => ({
  ...{ id: `list-${at}`, at, withdrawn: false },
  body: aVersion({
    taxMode: 'inside',
    items: [
      anItem({
        ...{ jobId: 'fair-shirts', lineId: 'fern' },
        breaks: wide && open ? [{ ...wide, from: 1, each: 3000 }, open] : [],
      }),
    ],
    ...more,
  }),
});

describe('the price to begin with at a shop', () => {
  it('is that of the newest plan in force that prices the goods', () => {
    const stallPlan = [plan(2, 2800), plan(1, 2500), plan(3, 9900, {}, true), plan(4, 0)];
    expect(priceElsewhere(fernM, usd, { stallPlan, priceListVersion: [list(9)] })).toEqual({
      ...{ on: 'plan', title: 'Exampleton Spring Fair', minor: 2800 },
    });
  });

  it('is of the same paper on every device where two are of one moment', () => {
    const [a, b] = [plan(5, 2500), plan(5, 2800)];
    for (const stallPlan of [
      [a, b],
      [b, a],
    ]) {
      // By id plan-2800 is the later one.
      expect(priceElsewhere(fernM, usd, { stallPlan, priceListVersion: [] })?.minor).toBe(2800);
    }
  });

  it('is that of a list for one piece of the size where no plan has it', () => {
    const papers = { stallPlan: [], priceListVersion: [list(1)] };
    const of = (size: string) => priceElsewhere({ ...fernM, size }, usd, papers);
    expect(of('M')).toEqual({ on: 'list', title: 'Shirts for clubs', minor: 3000 });
    expect(of('2XL')?.minor).toBe(3150);
    expect(of('5XL')).toBeNull();
  });

  it('is not the price of a dozen, of other goods, of another currency or with the tax otherwise', () => {
    const dozen = list(1, { items: [anItem({ jobId: 'fair-shirts', lineId: 'fern' })] });
    expect(priceElsewhere(fernM, usd, { stallPlan: [], priceListVersion: [dozen] })).toBeNull();
    const papers = { stallPlan: [plan(1, 2800)], priceListVersion: [list(1)] };
    expect(priceElsewhere({ ...fernM, lineId: 'heron' }, usd, papers)).toBeNull();
    expect(priceElsewhere(fernM, { ...usd, currency: 'EUR' }, papers)).toBeNull();
    expect(priceElsewhere(fernM, { ...usd, taxMode: 'added' }, papers)).toBeNull();
    expect(priceElsewhere(fernM, { ...usd, taxMode: null }, papers)?.minor).toBe(2800);
  });
});
