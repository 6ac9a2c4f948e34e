import { describe, expect, it } from 'vitest';
import { foldStock } from '@/lib/stock/foldStock';
import { openStandards } from '@/lib/stock/openStandards';
import { reserved, type StockNeed } from '@/lib/stock/reserved';
import { standardNeeds } from '@/lib/stock/standardNeeds';
import type { Entry } from '@/shared/schemas/happened';
import type { RunStep } from '@/shared/schemas/runEvents';
import { TEST_DAY } from '@/tests/tools/clock/testDay';
import { clubStandard } from './clubRunDone';
import { shirts, van, writer } from './stockEntries';

const need = (quantity: number, about: Partial<StockNeed> = {}): StockNeed => ({
  item: { kind: 'blank', blankId: 'shirt', size: 'L' },
  quantity,
  jobId: 'job',
  orderId: null,
  by: { kind: 'run', id: 'run' },
  day: null,
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

  it('knows nothing of what nobody counted', () => {
    expect(reserved([], [need(4)])).toMatchObject([{ ready: null, reserved: 4, free: null, shortOn: null }]);
  });

  it('counts a job once that a run makes for its order', () => {
    const order = need(37, { orderId: 'club', by: { kind: 'order', id: 'club' } });
    const run = need(45, { orderId: 'club' });
    expect(reserved([], [order, run])).toMatchObject([{ reserved: 45 }]);
    expect(reserved([], [order])).toMatchObject([{ reserved: 37 }]);
    // Another order of the same job is its own.
    expect(reserved([], [{ ...order, orderId: 'other' }, run])).toMatchObject([{ reserved: 82 }]);
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

  it('ends when the run is closed, and is back when it goes on', () => {
    const paper = (count: number, withdrawn: boolean) => ({
      ...{ id: `aaaaaaaa-${count}`, device: 'aaaaaaaa', count, at: count, version: 1 },
      ...{ kind: 'runStandard' as const, series: 'run', number: { count: 1, letter: 'A' } },
      ...{ about: { kind: 'run', id: 'run' }, sha256: '0'.repeat(64), file: null },
      ...{ body: { ...clubStandard, title: `standard ${count}` }, withdrawn },
    });
    const step = (count: number, what: 'closed' | 'reopened'): Entry<'runStep', RunStep> => ({
      ...{ id: `bbbbbbbb-${count}`, device: 'bbbbbbbb', count, at: 100 + count, version: 1, kind: 'runStep' },
      body: {
        ...{ runId: 'run', standardId: null, day: TEST_DAY },
        step: what === 'closed' ? { what, note: '' } : { what },
      },
    });
    const papers = [paper(1, false), paper(3, true), paper(2, false)];
    const titles = (steps: readonly Entry<'runStep', RunStep>[], isKept = true) =>
      openStandards(papers, steps, () => isKept).map(({ title }) => title);
    expect(titles([])).toEqual(['standard 2']);
    expect(titles([step(1, 'closed')])).toEqual([]);
    expect(titles([step(2, 'reopened'), step(1, 'closed')])).toEqual(['standard 2']);
    expect(titles([], false)).toEqual([]);
  });
});
