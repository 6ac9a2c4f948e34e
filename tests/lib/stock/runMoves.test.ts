import { describe, expect, it } from 'vitest';
import { type RunDone, runMoves } from '@/lib/stock/runMoves';
import { standardNeeds } from '@/lib/stock/standardNeeds';
import type { StockMove } from '@/shared/schemas/stock';
import { clubPieces, clubStandard } from './clubRunDone';

const inks = ['Cyan', 'Magenta', 'Yellow', 'Black'].map((name) => ({
  ...{ printerId: 'printer', name, share: 0.25 },
}));
const nobody = { blanks: null, sheets: null, inkMl: null };

const done = (about: Partial<RunDone> = {}): RunDone => ({
  ...{ runId: 'run', standard: clubStandard, pieces: clubPieces, told: nobody },
  ...{ blankFaults: [], sheetsPrinted: [], moves: [], inkShares: inks },
  costOf: () => null,
  ...about,
});

const short = ({ item, grade, quantity, cause }: StockMove) => [
  item.kind === 'blank' || item.kind === 'finished' ? item.size : item.kind,
  ...(grade === 'second' ? [grade] : []),
  quantity,
  cause,
];

const printed = (good: number, rejected: number, jobId = 'club-order') => ({
  body: { runId: 'run', standardId: null, jobId, placementId: null, good, rejected, fault: null },
});

/** Of one size: begun, spoiled, good and seconds. */
const pieces = (size: string, started: number, scrap: number, good: number, seconds = 0) => ({
  ...{ jobId: 'club-order', lineId: 'shirts', size, wanted: 4, started, scrap, good, seconds },
  drawn: Math.max(started, scrap + good + seconds),
});

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
    const told = { blanks: null, sheets: 58, inkMl: 44 };
    const { moves, unsaid } = runMoves(done({ pieces: [], sheetsPrinted: [printed(53, 3)], told }));
    expect(moves.map(short)).toEqual([['paper', -58, 'used'], ...inks.map(() => ['ink', -11, 'used'])]);
    expect(unsaid).toEqual([]);
    expect(runMoves(done({ pieces: [], sheetsPrinted: [printed(53, 3)] })).moves.map(short)).toEqual([
      ['paper', -56, 'used'],
    ]);
  });

  it('takes a roll out by the metre, in which it lies in stock', () => {
    // A letter sheet of its area is 0.1 m of it.
    const works = clubStandard.works.map((work) => ({
      ...work,
      sheets: { ...work.sheets, metresEach: 0.1 },
    }));
    const told = { ...nobody, sheets: 58 };
    const [roll] = runMoves(done({ standard: { works }, pieces: [], told })).moves;
    expect(roll?.quantity).toBeCloseTo(-5.8, 12);
    const needs = standardNeeds({ ...clubStandard, works });
    expect(needs.find(({ item }) => item.kind === 'paper')?.quantity).toBeCloseTo(5.29, 12);
  });

  it('says ink of which no channel is known, blanks of which no size is and sheets of which no paper is', () => {
    const [work] = clubStandard.works;
    if (work === undefined) throw new Error('no work');
    const other = { ...work, jobId: 'other', lines: [], sheets: { ...work.sheets, sheetId: 'tabloid' } };
    const told = { blanks: 43, sheets: 60, inkMl: 44 };
    const { moves, unsaid } = runMoves(
      done({
        ...{ inkShares: [], told, standard: { works: [work, other] } },
        sheetsPrinted: [printed(50, 3), printed(2, 0, 'other')],
      }),
    );
    expect(moves.map(short)).toEqual([...blanksOfClub, ['paper', -53, 'used'], ['paper', -2, 'used']]);
    expect(unsaid).toEqual([
      { what: 'blanks', pieces: 2 },
      { what: 'sheets', sheets: 5 },
      { what: 'ink', mL: 44 },
    ]);
  });

  it('takes blanks that were told from the only size there is', () => {
    const told = { ...nobody, blanks: 7 };
    expect(runMoves(done({ pieces: [pieces('S', 5, 1, 4)], told })).moves.map(short)).toEqual([
      ['S', -6, 'used'],
      ['S', -1, 'scrapped'],
    ]);
  });

  it('lays finished pieces home that nobody waits for, seconds in their grade, at what making cost', () => {
    const works = clubStandard.works.map((work) => ({ ...work, orderId: null }));
    const own = [pieces('S', 6, 0, 5, 1)];
    const made = runMoves(
      done({ pieces: own, standard: { works }, costOf: () => ({ minor: 1113, currency: 'USD' }) }),
    ).moves.filter(({ cause }) => cause === 'made');
    expect(made.map(short)).toEqual([
      ['S', 5, 'made'],
      ['S', 'second', 1, 'made'],
    ]);
    expect(made.map(({ unitCost }) => unitCost?.minor)).toEqual([1113, 1113]);
    // Four are the order's: one good piece more than that, and the second.
    expect(
      runMoves(done({ pieces: own }))
        .moves.filter(({ cause }) => cause === 'made')
        .map(short),
    ).toEqual([
      ['S', 1, 'made'],
      ['S', 'second', 1, 'made'],
    ]);
  });

  it('says pieces that were begun and neither finished nor spoiled, and more that came out than went in', () => {
    expect(runMoves(done({ pieces: [pieces('S', 4, 0, 3), pieces('M', 0, 0, 2)] })).unsaid).toEqual([
      { what: 'unfinished', size: 'S', pieces: 1 },
      { what: 'unfinished', size: 'M', pieces: -2 },
    ]);
  });

  it('takes a blank of a piece that a later press alone saw, and no second one once the first press is noted', () => {
    const late = done({ pieces: [pieces('S', 0, 1, 3)] });
    const booked = runMoves(late).moves;
    expect(booked.map(short)).toEqual([
      ['S', -3, 'used'],
      ['S', -1, 'scrapped'],
    ]);
    const whole = { pieces: [pieces('S', 4, 1, 3)], moves: booked.map((body) => ({ body })) };
    expect(runMoves(done(whole))).toEqual({ moves: [], unsaid: [] });
  });

  it('counts faulty blanks of the run as spoiled in their lot', () => {
    const body = {
      ...{ runId: 'run', blankId: 'shirt', size: 'L', lot: 'A7', pieces: 2, fault: 'hole' as const },
    };
    expect(runMoves(done({ pieces: [], blankFaults: [{ body }] })).moves).toMatchObject([
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
    // Neither of those of them that were faulty; all that were told are those that were pressed and those.
    const fault = { runId: 'run', blankId: 'shirt', size: 'L', lot: null, pieces: 2, fault: null };
    const faulty = done({
      standard: { works },
      blankFaults: [{ body: fault }],
      told: { ...nobody, blanks: 43 },
    });
    expect(runMoves(faulty)).toEqual({ moves: [], unsaid: [] });
  });

  it('books what differs from what was booked, so that a run that two devices close counts once', () => {
    const booked = runMoves(done()).moves.map((body) => ({ body }));
    expect(runMoves(done({ moves: booked })).moves).toEqual([]);
    // Of another run it knows nothing.
    const others = booked.map(({ body }) => ({ body: { ...body, reference: { kind: 'run', id: 'other' } } }));
    expect(runMoves(done({ moves: others })).moves.map(short)).toEqual(blanksOfClub);
    // The second device noted one more shirt of size S, which came out good: the order waits for four.
    const more = clubPieces.map((one) =>
      one.size === 'S' ? { ...one, started: 5, drawn: 5, good: 5 } : one,
    );
    expect(runMoves(done({ pieces: more, moves: booked })).moves.map(short)).toEqual([
      ['S', -1, 'used'],
      ['S', 1, 'made'],
    ]);
    // Presses that were taken back give their blank back.
    const fewer = clubPieces.filter(({ size }) => size !== '3XL');
    expect(runMoves(done({ pieces: fewer, moves: booked })).moves.map(short)).toEqual([['3XL', 1, 'used']]);
  });
});
