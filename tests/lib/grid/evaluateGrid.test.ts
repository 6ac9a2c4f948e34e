import { describe, expect, it } from 'vitest';
import { clubOrder } from '@/lib/examples/clubOrder';
import { exampleFiles } from '@/lib/examples/exampleFiles';
import { costJob, shapeOf } from '@/lib/grid/costJob';
import { Grid, type GridFault } from '@/lib/grid/evaluateGrid';
import { fillJob } from '@/lib/grid/fillJob';
import { fillCase, fillLine } from '@/lib/grid/fillLine';
import type { GridColumn, GridFilling } from '@/lib/grid/gridInput';
import type { OwnRow } from '@/shared/schemas/ownRow';
import type { JobInput } from '@/shared/schemas/request';
import { costed, laidOut } from '@/tests/fixtures/costed';
import { PATIENCE } from '@/tests/fixtures/drawnJobs';
import { ownCost } from '@/tests/fixtures/plainJob';

const club = clubOrder('2026-11-25', '2026-12-11');

const withOwnRows = (ownRows: readonly OwnRow[]): JobInput => ({
  ...club,
  job: { ...club.job, ownRows: [...ownRows] },
});
const written = (id: string, formula: string): OwnRow => ({
  id,
  label: id,
  outOfPocket: false,
  cost: { kind: 'formula', formula },
});

/** The filling of the club order, its columns as they are or changed. */
function filling(change: (column: GridColumn) => GridColumn = (column) => column): GridFilling {
  const { job, prints } = laidOut(club);
  return {
    job: fillJob(job),
    lines: job.lines.map((line) => ({
      lineId: line.line.id,
      inputs: fillLine(line, 2),
      cases: line.sizes.map((size) => ({
        size: size.size,
        inputs: change(fillCase(job, prints, line, size, 37, size.quantity, 2)),
      })),
    })),
  };
}

describe('a workbook that is refilled', () => {
  it('gives every value that a fresh one gives, to the last digit', PATIENCE, () => {
    const inputs = Object.values(exampleFiles());
    const kept = new Grid();
    // Each job comes after the others and before them: what they left in a workbook must not show.
    const refilled = [...inputs, ...inputs].map((input) => costed(input, kept).sheet).slice(inputs.length);
    const fresh = inputs.map((input) => costed(input, new Grid()).sheet);
    expect(refilled).toEqual(fresh);
  });

  it('forgets what more sizes or a size of more pieces left in it', () => {
    const kept = new Grid();
    const fewer: JobInput = {
      ...club,
      job: {
        ...club.job,
        lines: club.job.lines.map((line) => ({ ...line, quantities: line.quantities.slice(0, 2) })),
      },
    };
    costed(club, kept);
    expect(costed(fewer, kept).sheet).toEqual(costed(fewer, new Grid()).sheet);
  });

  it('is found again after more shapes than are kept', PATIENCE, () => {
    const kept = new Grid();
    const before = costed(club, kept).sheet;
    const rows = Array.from({ length: 14 }, (_, index) =>
      ownCost(`row_${'abcdefghijklmn'[index]}`, 'piece', 0),
    );
    for (const row of rows) costed(withOwnRows([row]), kept);
    expect(costed(club, kept).sheet).toEqual(before);
  });

  it('gives the same in wider workbooks', () => {
    const { job } = laidOut(club);
    const grid = new Grid();
    const narrow = grid.evaluate(shapeOf(job), filling());
    const wide = grid.evaluate(shapeOf(job), filling(), 40);
    expect(wide.cases).toEqual(narrow.cases);
    expect(wide.whole.fullCost).toBeCloseTo(narrow.whole.fullCost ?? 0, 9);
  });
});

describe('an own row that comes out as an error', () => {
  const result = costJob(
    laidOut(withOwnRows([written('own_even', '1 / (blankPrice - blankPrice)')])),
    new Grid(),
  );
  const faults: readonly GridFault[] = result.kind === 'faulty' ? result.faults : [];

  it('keeps the job from being costed', () => expect(result.kind).toBe('faulty'));

  it('is named with its place and error', () => {
    expect(faults).toContainEqual({ rowId: 'own_even', table: 'case', line: 0, case: 0, error: '#DIV/0!' });
  });

  it('is named in every size', () => {
    const places = faults.filter(({ rowId, line }) => rowId === 'own_even' && line === 0);
    expect(places.map((fault) => fault.case)).toEqual([0, 1, 2, 3, 4, 5]);
  });

  it('leaves the rows that do not hang on it without a fault', () => {
    expect(faults.filter(({ rowId }) => rowId === 'blanks' || rowId === 'labour')).toEqual([]);
  });

  it('is named in the one size it goes wrong in', () => {
    // A root of less than nothing for the one size that costs 7.10.
    const one = costJob(laidOut(withOwnRows([written('own_root', 'SQRT(7 - blankPrice)')])), new Grid());
    const where = one.kind === 'faulty' ? one.faults.filter(({ rowId }) => rowId === 'own_root') : [];
    expect(where.map(({ case: at, error }) => [at, error])).toEqual([
      [5, '#NUM!'],
      [undefined, '#NUM!'],
    ]);
  });
});

describe('an input that is not a finite number', () => {
  const { job } = laidOut(club);
  const evaluate = (change: (column: GridColumn) => GridColumn) => () =>
    new Grid().evaluate(shapeOf(job), filling(change));

  it('is refused by name where it is missing', () => {
    expect(evaluate(({ blankPrice: _, ...rest }) => rest)).toThrow(/blankPrice and was given undefined/);
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY])(
    'is refused by name: %d',
    (value) => {
      expect(evaluate((column) => ({ ...column, pieces: { value, origin: 'typed' } }))).toThrow(/pieces/);
    },
  );

  it.each<[string, GridFilling]>([
    ['a grid without a line', { job: fillJob(job), lines: [] }],
    ['a line without a size', { job: fillJob(job), lines: [{ lineId: 'empty', inputs: {}, cases: [] }] }],
  ])('%s is refused', (_, empty) => {
    expect(() => new Grid().evaluate(shapeOf(job), empty)).toThrow(RangeError);
  });
});

describe('own rows', () => {
  it.each([
    ['order', 1],
    ['design', 2],
    ['session', 1],
    ['piece', 37],
    // As expected: replacements, rejects and tests too.
    ['sheet', 52.8975],
    ['press', 78.8796],
  ] as const)('of 1.00 each %s cost %d in the whole job', (driver, cost) => {
    const { sheet } = costed(withOwnRows([ownCost('one', driver, 1)]));
    expect(sheet.values.own_one?.[sheet.cases.length]).toBeCloseTo(cost, 4);
    expect(sheet.fullCost - 411.79305).toBeCloseTo(cost, 4);
  });

  it('paid out of the pocket raise the floor, and others do not', () => {
    const floor = (outOfPocket: boolean) => {
      const { sheet } = costed(withOwnRows([{ ...ownCost('one', 'order', 10), outOfPocket }]));
      return sheet.values.outOfPocketFloor?.[sheet.cases.length] ?? Number.NaN;
    };
    expect(floor(true) - floor(false)).toBeCloseTo(10 / 0.984485, 9);
  });

  it('of the job take the place of the workshop’s with the same name', () => {
    const input = withOwnRows([ownCost('tag', 'order', 5)]);
    const workshop = { ...club.workshop, ownRows: [ownCost('tag', 'piece', 1)] };
    const { sheet } = costed({ ...input, workshop });
    expect(sheet.values.own_tag?.[sheet.cases.length]).toBeCloseTo(5, 9);
  });

  it('may read one another', () => {
    const rows = [ownCost('one', 'piece', 2), written('own_two', 'own_one * 3')];
    const { sheet } = costed(withOwnRows(rows));
    expect(sheet.values.own_two?.[0]).toBeCloseTo(6, 9);
    expect(sheet.values.ownCosts?.[0]).toBeCloseTo(8, 9);
  });
});
