import { describe, expect, it } from 'vitest';
import { foldStock } from '@/lib/stock/foldStock';
import { reserved, type StockNeed } from '@/lib/stock/reserved';
import { standardNeeds } from '@/lib/stock/standardNeeds';
import { clubStandard } from './clubRunDone';
import { shirts, van, writer } from './stockEntries';

const need = (quantity: number, about: Partial<StockNeed> = {}): StockNeed => ({
  item: { kind: 'blank', blankId: 'shirt', size: 'L' },
  quantity,
  jobId: 'job',
  orderId: null,
  by: { kind: 'run', id: 'run' },
  day: null,
  place: 1,
  ...about,
});

describe('reserved', () => {
  it('keeps what lies ready at home for work, whatever its lot, and tells what is free', () => {
    const pen = writer();
    const piles = foldStock([
      pen.move(10, { item: shirts('L', 'A') }),
      pen.move(5),
      pen.move(9, { place: van }),
      pen.move(9, { grade: 'second' }),
    ]);
    expect(reserved(piles, [need(4), need(6, { jobId: 'other' })])).toMatchObject([
      { ready: 15, reserved: 10, free: 5, shortOn: null },
    ]);
  });

  it('names the day of the first work that it does not suffice for', () => {
    const piles = foldStock([writer().move(10)]);
    const by = (id: string) => ({ by: { kind: 'run', id } as const, jobId: id });
    const needs = [
      need(5, { ...by('late'), day: '2026-12-11' }),
      need(6, { ...by('soon'), day: '2026-12-04' }),
      need(1, { ...by('some day'), day: null }),
    ];
    // 6 of 10 are used on the 4th, so that the 5 of the 11th lack one.
    expect(reserved(piles, needs)).toMatchObject([
      { ready: 10, reserved: 12, free: -2, shortOn: '2026-12-11' },
    ]);
  });

  it('tells the needs of one day in one order, whatever order they came in', () => {
    const needs = [need(3, { jobId: 'mugs' }), need(2), need(2, { orderId: 'club' }), need(1)];
    for (const all of [needs, needs.toReversed()])
      expect(
        reserved([], all)[0]?.needs.map(({ jobId, orderId, quantity }) => [jobId, orderId, quantity]),
      ).toEqual([
        ['job', null, 1],
        ['job', null, 2],
        ['job', 'club', 2],
        ['mugs', null, 3],
      ]);
  });

  it('knows nothing of what nobody counted', () => {
    expect(reserved([], [need(4)])).toMatchObject([{ ready: null, reserved: 4, free: null, shortOn: null }]);
  });

  it('knows ink by its name whatever its capitals', () => {
    const ink = (name: string) => ({ kind: 'ink', printerId: 'desk', name }) as const;
    const pen = writer();
    const piles = foldStock([pen.move(40, { item: ink('Yellow') }), pen.move(-10, { item: ink('yellow') })]);
    expect(piles).toHaveLength(1);
    expect(reserved(piles, [need(50, { item: ink('YELLOW'), day: '2026-12-04' })])).toMatchObject([
      { ready: 30, reserved: 50, free: -20, shortOn: '2026-12-04' },
    ]);
  });
});

describe('what runs that have begun reserve', () => {
  it('is every blank laid out and the sheets, none that the customer brings', () => {
    const quantities = (standard: Parameters<typeof standardNeeds>[0]) =>
      standardNeeds(standard).map(({ item, quantity }) => [
        item.kind === 'blank' ? item.size : item.kind,
        quantity,
      ]);
    expect(quantities(clubStandard)).toEqual([
      ...[
        ['S', 5],
        ['M', 11],
        ['L', 13],
        ['XL', 10],
        ['2XL', 5],
        ['3XL', 1],
      ],
      ['paper', 52.9],
    ]);
    const brought = clubStandard.works.map((work) => ({
      ...work,
      lines: work.lines.map((line) => ({ ...line, isBrought: true })),
    }));
    expect(quantities({ ...clubStandard, works: brought })).toEqual([['paper', 52.9]]);
  });
});
