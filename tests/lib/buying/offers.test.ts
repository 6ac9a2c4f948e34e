import { describe, expect, it } from 'vitest';
import type { BuyingAsked } from '@/lib/buying/buyingAsked';
import { planBuying } from '@/lib/buying/planBuying';
import { stockKey } from '@/lib/stock/stockKey';
import type { SupplyItem } from '@/shared/schemas/making/supply';
import { grid } from '@/tests/fixtures/costed';
import { asked, shirt, supplier, work } from './asked';

describe('offers in a list', () => {
  const plan = (of: BuyingAsked) => planBuying(of, grid);
  const rowOf = (of: BuyingAsked, item: SupplyItem) =>
    plan(of).rows.find((row) => stockKey(row.item) === stockKey(item));
  const mill = (more: Partial<Parameters<typeof supplier>[1]> = {}) =>
    supplier('mill', {
      ...{ name: 'Mill', freight: 7 },
      offers: [{ id: 's', item: shirt('S'), articleNumber: 'W-S', tiers: [{ from: 1, each: 4 }] }],
      ...more,
    });

  it('take the place of the job’s own price', () => {
    const { rows, suppliers } = plan(asked({ suppliers: [mill()] }));
    expect(rows[0]?.purchase).toMatchObject({
      ...{ supplierId: 'mill', offerId: 's', articleNumber: 'W-S', each: 4, amountMinor: 2000 },
    });
    expect(rows[1]?.purchase).toMatchObject({ supplierId: null, each: 4.6, priceIs: 'own' });
    expect(suppliers.map(({ supplierId, freightMinor }) => [supplierId, freightMinor])).toEqual([
      ['mill', 700],
      [null, 950],
    ]);
  });

  it('of an archived supplier count no more', () => {
    const suppliers = [mill({ archivedOn: '2026-01-01' })];
    expect(rowOf(asked({ suppliers }), shirt('S'))?.purchase?.supplierId).toBeNull();
  });

  // Asked on Wednesday, 25 November. Blanks take four working days, and are in the working day before the press.
  it.each([
    // In on 2 December, ordered 26 November.
    ['2026-12-03', '2026-11-26', true],
    // In on Monday, 30 November: four working days before are the 24th.
    ['2026-12-01', '2026-11-24', false],
    // Pressed on a Saturday: in on Friday, 4 December, ordered on Monday, 30 November.
    ['2026-12-05', '2026-11-30', true],
  ])('for a press on %s are ordered by %s', (pressOn, orderBy, inTime) => {
    const of = asked({ suppliers: [mill()], works: [work(undefined, { pressOn })] });
    expect(rowOf(of, shirt('S'))?.purchase).toMatchObject({ orderBy, inTime, leadWorkingDays: 4 });
    expect(plan(of).suppliers[0]?.orderBy).toBe(orderBy);
  });

  it('that come in time go before cheaper ones', () => {
    const fast = supplier('fast', {
      ...{ name: 'Fast', leadWorkingDays: 1, freight: 0 },
      offers: [{ id: 's', item: shirt('S'), tiers: [{ from: 1, each: 6 }] }],
    });
    const of = asked({ suppliers: [mill(), fast], works: [work(undefined, { pressOn: '2026-12-01' })] });
    const row = rowOf(of, shirt('S'));
    expect(row?.purchase).toMatchObject({ supplierId: 'fast', inTime: true });
    expect(row?.offers.map(({ supplierId }) => supplierId)).toEqual(['fast', 'mill']);
  });

  const instead = supplier('other', {
    ...{ name: 'Other', leadWorkingDays: 1, freight: 0 },
    offers: [
      {
        ...{
          id: 'cream',
          item: { kind: 'blank', blankId: 'cream-shirt', size: 'S' },
          standsInFor: shirt('S'),
        },
        tiers: [{ from: 1, each: 5 }],
      },
    ],
  });

  it('of something else are shown where a thing comes too late, and taken only where the maker chose them', () => {
    const works = [work(undefined, { pressOn: '2026-12-01' })];
    const late = rowOf(asked({ suppliers: [mill(), instead], works }), shirt('S'));
    expect(late?.purchase).toMatchObject({ supplierId: 'mill', inTime: false });
    expect(late?.substitutes).toMatchObject([{ supplierId: 'other', inTime: true, amountMinor: 2500 }]);
    const calm = rowOf(asked({ suppliers: [mill(), instead] }), shirt('S'));
    expect(calm?.substitutes).toEqual([]);
    const chosen = [{ item: shirt('S'), supplierId: 'other', offerId: 'cream' }];
    const taken = rowOf(asked({ suppliers: [mill(), instead], works, list: { chosen } }), shirt('S'));
    expect(taken?.purchase).toMatchObject({ supplierId: 'other', item: { blankId: 'cream-shirt' } });
  });

  it('that are wrong are told, and nothing is changed', () => {
    const suppliers = [
      mill({
        minimumOrder: 5000,
        freight: null,
        offers: [
          {
            ...{ id: 's', item: shirt('S') },
            tiers: [
              { from: 10, each: 4 },
              { from: 1, each: 3 },
              { from: 10, each: 4.5 },
            ],
          },
          { id: 'x', item: shirt('5XL'), tiers: [{ from: 1, each: 9 }] },
        ],
      }),
    ];
    const chosen = [{ item: shirt('M'), supplierId: 'gone', offerId: 'm' }];
    const held = [{ item: shirt('S'), quantity: 5 }];
    expect(plan(asked({ suppliers, list: { chosen, held } })).troubles).toEqual([
      { what: 'chosenGone', item: shirt('M'), supplierId: 'gone' },
      { what: 'freightUnknown', supplierId: 'mill' },
      // Five at 3 are 15.00.
      { what: 'belowMinimum', supplierId: 'mill', shortMinor: 498_500 },
      { what: 'tiersNotRising', supplierId: 'mill', offerId: 's' },
      { what: 'tierDearer', supplierId: 'mill', offerId: 's', from: 10 },
      { what: 'tierTwice', supplierId: 'mill', offerId: 's', from: 10 },
      { what: 'offerUnknownSize', supplierId: 'mill', offerId: 'x', size: '5XL' },
    ]);
  });
});
