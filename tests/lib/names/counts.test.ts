import { describe, expect, it } from 'vitest';
import { compareCounts } from '@/lib/names/compareCounts';
import { packingOrder } from '@/lib/names/packingOrder';

const SIZES = ['S', 'M', 'L', 'XL'];
const rows = (counts: Readonly<Record<string, number>>) =>
  Object.entries(counts).flatMap(([size, count]) => Array.from({ length: count }, () => ({ size })));

describe('compareCounts', () => {
  it('says nothing differs where it does not', () => {
    const compared = compareCounts(rows({ M: 2 }), [{ size: 'M', quantity: 2 }], SIZES);
    expect(compared).toMatchObject({ ordered: 2, named: 2, differences: [], withoutSize: 0, unknown: [] });
  });

  it('tells size by size where 11 L are ordered and 12 named, with the change either way', () => {
    const quantities = [
      { size: 'S', quantity: 4 },
      { size: 'L', quantity: 11 },
    ];
    const compared = compareCounts(rows({ S: 3, L: 12, XL: 1, '': 2, '5XL': 1 }), quantities, SIZES);
    expect(compared).toEqual({
      ordered: 15,
      named: 19,
      differences: [
        { size: 'S', ordered: 4, named: 3 },
        { size: 'L', ordered: 11, named: 12 },
        { size: 'XL', ordered: 0, named: 1 },
      ],
      withoutSize: 2,
      unknown: [{ size: '5XL', quantity: 1 }],
      byNames: [
        { size: 'S', quantity: 3 },
        { size: 'L', quantity: 12 },
        { size: 'XL', quantity: 1 },
      ],
      byQuantities: {
        missing: [{ size: 'S', rows: 1 }],
        tooMany: [
          { size: 'L', rows: 1 },
          { size: 'XL', rows: 1 },
        ],
      },
    });
  });

  it('keeps a size that is ordered though the blank is made in it no more', () => {
    const compared = compareCounts(rows({ '3XL': 1 }), [{ size: '3XL', quantity: 1 }], SIZES);
    expect(compared).toMatchObject({ differences: [], unknown: [], byNames: [{ size: '3XL', quantity: 1 }] });
  });
});

describe('packingOrder', () => {
  const people = [
    ['Örjan', 'L', '2'],
    ['Bo', 'M', '10'],
    ['Bo', 'M', '9'],
    ['Zoe', 'S', ''],
    ['Ana', 'L', ''],
    ['', 'L', ''],
    ['Cy', '', ''],
    ['Dee', '5XL', ''],
  ].map(([name = '', size = '', number = ''], at) => ({ id: `r${at}`, name, size, number }));
  const names = (by: 'size' | 'name', locale: string) =>
    packingOrder(people, { by, sizes: SIZES, locale }).map(({ name, number }) => `${name}${number}`);

  it('packs by size, then name, then number; what has no size of the blank comes last', () => {
    expect(names('size', 'en')).toEqual(['Zoe', 'Bo9', 'Bo10', 'Ana', 'Örjan2', '', 'Dee', 'Cy']);
  });

  // Swedish sorts ö behind z (CLDR), English with o.
  it('packs by name as the language sorts', () => {
    expect(names('name', 'sv')).toEqual(['Ana', 'Bo9', 'Bo10', 'Cy', 'Dee', 'Zoe', 'Örjan2', '']);
    expect(names('name', 'en')).toEqual(['Ana', 'Bo9', 'Bo10', 'Cy', 'Dee', 'Örjan2', 'Zoe', '']);
  });
});
