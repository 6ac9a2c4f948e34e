import type { MaxRectsPacker as Packer } from 'maxrects-packer';
import { piecesPerSheet } from '@/lib/packing/equal/piecesPerSheet';
import { packRoll } from '@/lib/packing/roll/packRoll';
import { seededRandom } from '@/lib/packing/seededRandom';
import { packSheets } from '@/lib/packing/sheet/packSheets';
import {
  binInstances,
  equalPieceInstances,
  piecesOf,
  stripInstances,
} from '@/tests/outside/packingInstances';
import { type BenchRow, median, percentile, times } from './measure';

/* What layouts take and give, beside a general-purpose packing library (maxrects-packer, MIT) on the same inputs. */

const RUNS = 3;
const bare = { marginMm: 0, gutterMm: 0, rotate: true };

interface Sheet {
  readonly widthMm: number;
  readonly heightMm: number;
}

type Piece = ReturnType<typeof piecesOf>[number];

/** @returns rows of the bench; those on published instances only where their files are. */
export async function benchPacking(): Promise<readonly BenchRow[]> {
  const library = await loadLibrary();
  return [...equalRows(), ...ordinaryRows(), ...binRows(library), ...mixedRows(library), ...rollRows()];
}

function equalRows(): readonly BenchRow[] {
  return equalPieceInstances().instances.flatMap(({ id, sheet, piece, optimum }) => {
    const question = {
      ...bare,
      sheetWidthMm: sheet[0],
      sheetHeightMm: sheet[1],
      pieceWidthMm: piece[0],
      pieceHeightMm: piece[1],
    };
    const spent = times(
      RUNS,
      () => question,
      (asked) => piecesPerSheet(asked),
    );
    return [
      timeRow(`equal pieces ${id}, optimum ${optimum}`, spent),
      countRow(`equal pieces ${id}, optimum ${optimum}`, 'pieces', piecesPerSheet(question).count),
    ];
  });
}

/** Sizes and papers as at a bench, 30 to 250 mm on letter to A3+. */
function ordinaryRows(): readonly BenchRow[] {
  const random = seededRandom(1);
  const spent = times(
    300,
    () => ({
      ...bare,
      ...(random() < 0.5
        ? { sheetWidthMm: 215.9, sheetHeightMm: 279.4 }
        : { sheetWidthMm: 329, sheetHeightMm: 483 }),
      marginMm: 3.175,
      gutterMm: 6.35,
      pieceWidthMm: drawn(random, 30, 250),
      pieceHeightMm: drawn(random, 30, 250),
    }),
    (asked) => piecesPerSheet(asked),
  );
  return [timeRow('equal pieces, 300 ordinary sizes', spent)];
}

function binRows(library: Library): readonly BenchRow[] {
  const { instances } = binInstances();
  if (instances.length === 0) return [];
  const inputs = instances.map(({ binWidth, binHeight, items }) => ({
    sheet: { widthMm: binWidth, heightMm: binHeight },
    pieces: piecesOf(items),
  }));
  const spent = inputs.map(({ sheet, pieces }) =>
    median(
      times(
        RUNS,
        () => sheet,
        (paper) => sheetsFor(paper, pieces),
      ),
    ),
  );
  const sum = (count: (sheet: Sheet, pieces: readonly Piece[]) => number) =>
    inputs.reduce((total, { sheet, pieces }) => total + count(sheet, pieces), 0);
  return [
    timeRow('mixed pieces, bin classes n = 20, each of 100', spent),
    countRow('mixed pieces, bin classes n = 20, best known 491', 'bins', sum(sheetsFor)),
    countRow('  the library', 'bins', sum(library.once)),
    countRow('  the library, best of 200 orders', 'bins', sum(library.best)),
  ];
}

function mixedRows(library: Library): readonly BenchRow[] {
  const kinds: readonly (readonly [string, number, number, Sheet])[] = [
    ['100 mixed pieces of 30 to 150 mm on letter', 30, 150, { widthMm: 215.9, heightMm: 279.4 }],
    ['100 mixed pieces of 20 to 120 mm on A3+', 20, 120, { widthMm: 329, heightMm: 483 }],
    ['100 mixed pieces of 60 to 180 mm on A4', 60, 180, { widthMm: 210, heightMm: 297 }],
  ];
  return kinds.flatMap(([what, least, most, sheet]) => {
    const random = seededRandom(7);
    const pieces = piecesOf(
      Array.from({ length: 100 }, () => [drawn(random, least, most), drawn(random, least, most)] as const),
    );
    const packed = packSheets(requestOf(sheet, pieces));
    const bound = packed.ok ? packed.value.lowerBound : Number.NaN;
    const run = (count: (paper: Sheet, all: readonly Piece[]) => number) =>
      times(
        RUNS,
        () => sheet,
        (paper) => count(paper, pieces),
      );
    return [
      timeRow(`${what}, bound ${bound}`, run(sheetsFor)),
      countRow(`${what}, bound ${bound}`, 'bins', sheetsFor(sheet, pieces)),
      timeRow('  the library', run(library.once)),
      countRow('  the library', 'bins', library.once(sheet, pieces)),
      timeRow('  the library, best of 200 orders', run(library.best)),
      countRow('  the library, best of 200 orders', 'bins', library.best(sheet, pieces)),
    ];
  });
}

function rollRows(): readonly BenchRow[] {
  const { instances } = stripInstances();
  if (instances.length === 0) return [];
  const packed = instances.map(({ stripWidth, optimalHeight, items }) => {
    const request = { ...bare, rollWidthMm: stripWidth, pieces: piecesOf(items) };
    const spent = times(
      RUNS,
      () => request,
      (asked) => packRoll(asked),
    );
    const answer = packRoll(request);
    const excess = answer.ok ? (100 * answer.value.rollLengthMm) / optimalHeight - 100 : Number.NaN;
    return { spent: median(spent), excess };
  });
  const excesses = packed.map(({ excess }) => excess);
  return [
    timeRow(
      'rolls C1 to C7, each of 21',
      packed.map(({ spent }) => spent),
    ),
    countRow(
      'rolls C1 to C7, mean beyond the optimum',
      '%',
      excesses.reduce((sum, value) => sum + value, 0) / excesses.length,
    ),
    countRow('rolls C1 to C7, most beyond the optimum', '%', Math.max(...excesses)),
  ];
}

const requestOf = ({ widthMm, heightMm }: Sheet, pieces: readonly Piece[]) => ({
  ...bare,
  sheetWidthMm: widthMm,
  sheetHeightMm: heightMm,
  pieces,
});

function sheetsFor(sheet: Sheet, pieces: readonly Piece[]): number {
  const answer = packSheets(requestOf(sheet, pieces));
  return answer.ok ? answer.value.count : Number.NaN;
}

interface Library {
  readonly once: (sheet: Sheet, pieces: readonly Piece[]) => number;
  readonly best: (sheet: Sheet, pieces: readonly Piece[]) => number;
}

/** The package's main file has no names in Node; its module file has. */
async function loadLibrary(): Promise<Library> {
  const path = 'maxrects-packer/dist/maxrects-packer.mjs';
  const { MaxRectsPacker } = (await import(path)) as { readonly MaxRectsPacker: typeof Packer };
  // It wants whole numbers: lengths go in as hundredths of a millimetre.
  const pack = (sheet: Sheet, pieces: readonly Piece[]): number => {
    const packer = new MaxRectsPacker(sheet.widthMm * 100, sheet.heightMm * 100, 0, {
      smart: false,
      pot: false,
      square: false,
      allowRotation: true,
      border: 0,
    });
    for (const { id, widthMm, heightMm } of pieces) packer.add(widthMm * 100, heightMm * 100, id);
    return packer.bins.length;
  };
  const largestFirst = (pieces: readonly Piece[]) =>
    pieces.toSorted((a, b) => b.widthMm * b.heightMm - a.widthMm * a.heightMm);
  return {
    once: (sheet, pieces) => pack(sheet, largestFirst(pieces)),
    best: (sheet, pieces) => {
      const random = seededRandom(1);
      const orders = Array.from({ length: 199 }, () =>
        pieces
          .map((piece) => ({ piece, key: random() }))
          .sort((a, b) => a.key - b.key)
          .map(({ piece }) => piece),
      );
      return Math.min(pack(sheet, largestFirst(pieces)), ...orders.map((order) => pack(sheet, order)));
    },
  };
}

const timeRow = (what: string, spent: readonly number[]): BenchRow => ({
  what,
  unit: 'ms',
  median: median(spent),
  p99: percentile(spent, 0.99),
});

const countRow = (what: string, unit: 'pieces' | 'bins' | '%', value: number): BenchRow => ({
  what,
  unit,
  median: value,
  p99: null,
});

const drawn = (random: () => number, least: number, most: number): number =>
  Math.round((least + random() * (most - least)) * 10) / 10;
