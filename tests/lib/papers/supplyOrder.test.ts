import { describe, expect, it } from 'vitest';
import {
  type SupplyOrderLine,
  supplyOrderBody,
  supplyOrderSeries,
} from '@/lib/buying/ordering/supplyOrderBody';
import { supplyOrderSchema } from '@/shared/schemas/making/runPapers';
import { supplierSchema } from '@/shared/schemas/making/supply';
import { club } from '@/tests/fixtures/clubJob';
import { writtenPaper } from '@/tests/fixtures/orderPapers';
import { readPages } from '@/tests/fixtures/readPages';

const supplier = supplierSchema.parse({
  name: 'Sample Mill',
  contact: 'orders@mill.example',
  customerNumber: 'K 4711',
  freight: 9.5,
  freeFreightFrom: 250,
});
const shirts = (size: string, quantity: number, each: number | null): SupplyOrderLine => ({
  item: { kind: 'blank', blankId: 'white-shirt', size },
  ...{ name: 'White shirt', size, unit: 'pieces', articleNumber: `WS-${size}`, quantity, each, packSize: 6 },
});
const { workshop } = club();
const issued = { number: { count: 3, letter: 'A' }, day: '2026-11-28' };
const bodyOf = (
  lines: readonly SupplyOrderLine[],
  more: Partial<Parameters<typeof supplyOrderBody>[0]> = {},
) =>
  supplyOrderBody(
    {
      ...{ supplierId: 'mill', supplier, workshop, lines },
      ...{ wantedBy: '2026-12-04', note: 'Leave at the back door.', buyingListId: 'club-list' },
      ...more,
    },
    issued,
  );
const read = async (lines: readonly SupplyOrderLine[]) => {
  const { supplierId: _, buyingListId: __, ...body } = bodyOf(lines);
  const pages = await readPages((await writtenPaper({ kind: 'supplyOrder', body })).bytes);
  return JSON.stringify(pages);
};

describe('an order to a supplier', () => {
  it('adds goods and freight, which comes free from where the supplier says', () => {
    // 12 × 4.83 = 57.96; 45 × 4.83 = 217.35 < 250; 54 × 4.83 = 260.82.
    expect(bodyOf([shirts('M', 12, 4.83)])).toMatchObject({
      ...{ goodsMinor: 5796, freightMinor: 950, totalMinor: 6746 },
      rows: [{ packs: 2, packSize: 6, amountMinor: 5796 }],
    });
    expect(bodyOf([shirts('M', 54, 4.83)])).toMatchObject({ freightMinor: 0, totalMinor: 26_082 });
    expect(supplyOrderSchema.safeParse(bodyOf([shirts('M', 45, 4.83)])).success).toBe(true);
  });

  it('bears no sum that rests on a price nobody told', () => {
    expect(bodyOf([shirts('M', 12, 4.83), shirts('L', 6, null)])).toMatchObject({
      ...{ goodsMinor: null, freightMinor: null, totalMinor: null },
      rows: [{ amountMinor: 5796 }, { amountMinor: null }],
    });
  });

  it('tells packs only where they are whole, and leaves out what is not bought', () => {
    const rows = bodyOf([shirts('M', 45, 4.83), shirts('L', 0, 4.83)]).rows;
    expect(rows.map(({ size, packs }) => [size, packs])).toEqual([['M', null]]);
  });

  it('is numbered by year and device', () => {
    expect(bodyOf([shirts('M', 6, null)]).number).toEqual({ year: 2026, count: 3, letter: 'A' });
    expect(supplyOrderSeries('2026-11-28')).toBe('supplyOrder 26');
  });

  it('says on paper what the supplier needs, and nothing of what it is for', async () => {
    const text = await read([shirts('M', 12, 4.83), shirts('L', 6, 4.83)]);
    for (const said of [
      '26-003A',
      'Sample Mill',
      'K 4711',
      'WS-M',
      '12 pieces',
      '2 × 6',
      '4.83',
      '57.96',
      '96.44',
    ])
      expect(text).toContain(said);
    expect(text).not.toContain('club-list');
  });

  it('asks for prices where none is known', async () => {
    const text = await read([shirts('M', 12, null)]);
    expect(text).toContain('Please tell us your prices');
    expect(text).not.toContain('Total');
  });
});
