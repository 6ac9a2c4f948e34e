import { describe, expect, it } from 'vitest';
import { foldStock } from '@/lib/stock/foldStock';
import { piecesMade } from '@/lib/stock/piecesMade';
import { type RunDone, runMoves } from '@/lib/stock/runMoves';
import type { StockMove } from '@/shared/schemas/stock';
import { clubPressings, clubStandard, noting } from './clubRunDone';

const inks = ['Cyan', 'Magenta', 'Yellow', 'Black'].map((name) => ({
  ...{ printerId: 'printer', name, share: 0.25 },
}));

const done = (about: Partial<RunDone> = {}): RunDone => ({
  runId: 'run',
  standard: clubStandard,
  pressing: clubPressings(noting()),
  ...{ blankFault: [], sheetsPrinted: [], runActual: [], stockMove: [], inkShares: inks },
  costOf: () => null,
  ...about,
});

const short = ({ item, grade, quantity, cause }: StockMove) => [
  item.kind === 'blank' || item.kind === 'finished' ? item.size : item.kind,
  ...(grade === 'second' ? [grade] : []),
  quantity,
  cause,
];

/** Of the worked order: 41 blanks used, 37 of them good and 4 scrapped. */
const blanksOfClub = [
  ['S', -4, 'used'],
  ['M', -9, 'used'],
  ['M', -1, 'scrapped'],
  ['L', -11, 'used'],
  ['L', -2, 'scrapped'],
  ['XL', -8, 'used'],
  ['XL', -1, 'scrapped'],
  ['2XL', -4, 'used'],
  ['3XL', -1, 'used'],
];

describe('runMoves', () => {
  it('takes the blanks that were begun out of stock, by size, spoiled ones apart', () => {
    const { moves, unsaid } = runMoves(done());
    expect(moves.map(short)).toEqual(blanksOfClub);
    expect(moves.every(({ reference }) => reference?.kind === 'run' && reference.id === 'run')).toBe(true);
    expect(unsaid).toEqual([]);
  });

  it('takes out sheets and ink as they were told, ink by its channels', () => {
    const pen = noting('bbbbbbbb');
    const { moves, unsaid } = runMoves(
      done({
        pressing: [],
        sheetsPrinted: [pen.sheets(53, 3)],
        runActual: [
          pen.actual({ of: 'sheets', quantity: 58, amountMinor: 870 }),
          pen.actual({ of: 'ink', mL: 44 }),
        ],
      }),
    );
    expect(moves.map(short)).toEqual([['paper', -58, 'used'], ...inks.map(() => ['ink', -11, 'used'])]);
    expect(unsaid).toEqual([]);
    expect(runMoves(done({ pressing: [], sheetsPrinted: [pen.sheets(53, 3)] })).moves.map(short)).toEqual([
      ['paper', -56, 'used'],
    ]);
  });

  it('says ink of which no channel is known, and blanks of which no size is', () => {
    const pen = noting('bbbbbbbb');
    const { moves, unsaid } = runMoves(
      done({
        inkShares: [],
        runActual: [
          pen.actual({ of: 'ink', mL: 44 }),
          pen.actual({ of: 'blanks', quantity: 43, amountMinor: null }),
        ],
      }),
    );
    expect(moves.map(short)).toEqual(blanksOfClub);
    expect(unsaid).toEqual([
      { what: 'blanks', pieces: 2 },
      { what: 'ink', mL: 44 },
    ]);
  });

  it('lays finished pieces home that nobody waits for, seconds in their grade, at what making cost', () => {
    const works = clubStandard.works.map((work) => ({ ...work, orderId: null }));
    const pen = noting();
    const pressing = [
      ...pen.pressings('back', 'S', 6),
      ...pen.pressings('badge', 'S', 5),
      ...pen.pressings('badge', 'S', 1, 'second'),
    ];
    const made = runMoves(
      done({ pressing, standard: { works }, costOf: () => ({ minor: 1113, currency: 'USD' }) }),
    ).moves.filter(({ cause }) => cause === 'made');
    expect(made.map(short)).toEqual([
      ['S', 5, 'made'],
      ['S', 'second', 1, 'made'],
    ]);
    expect(made.map(({ unitCost }) => unitCost?.minor)).toEqual([1113, 1113]);
    // Four are the order's: one good piece more than that, and the second.
    expect(
      runMoves(done({ pressing }))
        .moves.filter(({ cause }) => cause === 'made')
        .map(short),
    ).toEqual([
      ['S', 1, 'made'],
      ['S', 'second', 1, 'made'],
    ]);
  });

  it('says pieces that were begun and neither finished nor spoiled, and more that came out than went in', () => {
    const pen = noting();
    const pressing = [
      ...pen.pressings('back', 'S', 4),
      ...pen.pressings('badge', 'S', 3),
      ...pen.pressings('badge', 'M', 2),
    ];
    expect(runMoves(done({ pressing })).unsaid).toEqual([
      { what: 'unfinished', size: 'S', pieces: 1 },
      { what: 'unfinished', size: 'M', pieces: -2 },
    ]);
  });

  it('counts faulty blanks of the run as spoiled in their lot', () => {
    const fault = noting('bbbbbbbb').entry('blankFault', {
      ...{ runId: 'run', blankId: 'shirt', size: 'L', lot: 'A7', pieces: 2, fault: 'hole' as const },
    });
    const other = { ...fault, id: 'cccccccc-1', body: { ...fault.body, runId: 'other' } };
    const { moves } = runMoves(done({ pressing: [], blankFault: [fault, other] }));
    expect(moves).toMatchObject([
      {
        item: { kind: 'blank', blankId: 'shirt', size: 'L', lot: 'A7' },
        ...{ quantity: -2, cause: 'scrapped' },
      },
    ]);
  });

  it('moves nothing of blanks that the customer brings', () => {
    const works = clubStandard.works.map((work) => ({
      ...work,
      lines: work.lines.map((line) => ({ ...line, isBrought: true })),
    }));
    expect(runMoves(done({ standard: { works } })).moves).toEqual([]);
  });

  it('counts a run once that two devices note and close, in whatever order it arrives', () => {
    const [here, there] = [noting('aaaaaaaa'), noting('bbbbbbbb')];
    const half = clubPressings(here);
    const all = [...half, ...there.pressings('back', 'S', 1), ...there.pressings('badge', 'S', 1)];
    // Both hold the same entries, some of them twice over.
    const twice = [...all, ...half].toReversed();
    const first = runMoves(done({ pressing: half }));
    const noted = first.moves.map((body, at) => ({
      ...{ id: `aaaaaaaa-9${at}`, device: 'aaaaaaaa', count: 900 + at, at: 900 + at, version: 1 },
      ...{ kind: 'stockMove' as const, body },
    }));
    expect(runMoves(done({ pressing: half, stockMove: noted })).moves).toEqual([]);
    const more = runMoves(done({ pressing: twice, stockMove: noted })).moves;
    // The order waits for four of size S: a fifth stays at home.
    expect(more.map(short)).toEqual([
      ['S', -1, 'used'],
      ['S', 1, 'made'],
    ]);
    const folded = foldStock([
      ...noted,
      ...more.map((body, at) => ({
        ...{ id: `bbbbbbbb-9${at}`, device: 'bbbbbbbb', count: 900 + at, at: 950 + at, version: 1 },
        ...{ kind: 'stockMove' as const, body },
      })),
    ]).filter(({ item }) => item.kind === 'blank');
    expect(folded.reduce((sum, { quantity }) => sum + quantity, 0)).toBe(-42);
  });

  it('gives back what was booked too much once presses are taken back', () => {
    const first = runMoves(done());
    const noted = first.moves.map((body, at) => ({
      ...{ id: `aaaaaaaa-9${at}`, device: 'aaaaaaaa', count: 900 + at, at: 900 + at, version: 1 },
      ...{ kind: 'stockMove' as const, body },
    }));
    const without3Xl = clubPressings(noting()).filter(({ body }) => body.size !== '3XL');
    expect(runMoves(done({ pressing: without3Xl, stockMove: noted })).moves.map(short)).toEqual([
      ['3XL', 1, 'used'],
    ]);
  });
});

it('piecesMade counts 41 blanks begun, 37 good and 4 spoiled of the worked order', () => {
  const pieces = piecesMade(clubStandard, clubPressings(noting()));
  const sum = (of: 'begun' | 'good' | 'spoiled' | 'unfinished') =>
    pieces.reduce((all, one) => all + one[of], 0);
  expect([sum('begun'), sum('good'), sum('spoiled'), sum('unfinished')]).toEqual([41, 37, 4, 0]);
});
