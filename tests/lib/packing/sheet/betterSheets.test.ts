import { describe, expect, it } from 'vitest';
import { betterSheets, type ListedSearch } from '@/lib/packing/sheet/betterSheets';
import { type PackedSheets, packSheets, type SheetsRequest } from '@/lib/packing/sheet/packSheets';
import type { SheetSearch } from '@/lib/packing/sheet/sheetSearch';
import { layoutProblems, pieceProblems } from '@/tests/lib/packing/layoutProblems';

/** Letter paper; the printed area alone takes more than two sheets, and the first layout has four. */
const letter: SheetsRequest = {
  sheetWidthMm: 216,
  sheetHeightMm: 279,
  marginMm: 3,
  gutterMm: 6,
  rotate: true,
  pieces: [
    { id: 'wide', widthMm: 111, heightMm: 69, count: 6 },
    { id: 'high', widthMm: 90, heightMm: 120, count: 9 },
  ],
};

/** Four squares on one sheet, and laid on four to begin with. */
const squares: SheetsRequest = {
  sheetWidthMm: 100,
  sheetHeightMm: 100,
  marginMm: 0,
  gutterMm: 0,
  rotate: true,
  pieces: [{ id: 'square', widthMm: 50, heightMm: 50, count: 4 }],
};

const oneEach: PackedSheets = {
  sheets: Array.from({ length: 4 }, () => ({
    pieces: [{ id: 'square', xMm: 0, yMm: 0, widthMm: 50, heightMm: 50, turned: false }],
  })),
  count: 4,
  lowerBound: 1,
  guillotineBound: null,
};

function firstOf(request: SheetsRequest): PackedSheets {
  const packed = packSheets(request, { steps: 200_000, seed: 1 });
  if (!packed.ok) throw new Error(JSON.stringify(packed.problem));
  return packed.value;
}

/** @returns all that is yielded, and what is returned. */
function all(search: Generator<PackedSheets | null, PackedSheets>) {
  const yielded: (PackedSheets | null)[] = [];
  for (;;) {
    const { done, value } = search.next();
    if (done === true) return { yielded, best: value };
    yielded.push(value);
  }
}

const looked = (request: SheetsRequest, first: PackedSheets, list?: readonly ListedSearch[]) =>
  all(betterSheets(request, first, { steps: 4_000_000, seed: 2 }, list));

/** Puts the boxes of the last sheet beside those of the first, a slice of work each. */
const besideTheFirst: SheetSearch = function* ({ best }, work) {
  work.steps -= 1;
  yield;
  const [first = [], ...others] = best;
  const last = others.at(-1) ?? [];
  const places = [
    { x: 50e5, y: 0 },
    { x: 0, y: 50e5 },
    { x: 50e5, y: 50e5 },
  ];
  const place = places[first.length - 1];
  if (place === undefined) return null;
  return [[...first, ...last.map((box) => ({ ...box, ...place }))], ...others.slice(0, -1)];
};

describe('a search for fewer sheets that goes on', () => {
  it('finds a layout of all pieces with a sheet fewer, and stops at the bound', () => {
    const first = firstOf(letter);
    expect(first.count).toBe(4);
    const { yielded, best } = looked(letter, first);
    expect(best.count).toBe(3);
    expect(best.lowerBound).toBe(3);
    expect(yielded.at(-1)).toEqual(best);
    const paper = { widthMm: 216, heightMm: 279, marginMm: 3, gutterMm: 6 };
    expect(best.sheets.flatMap(({ pieces }) => layoutProblems(pieces, paper))).toEqual([]);
    expect(
      pieceProblems(
        best.sheets.flatMap(({ pieces }) => pieces),
        letter.pieces,
        true,
      ),
    ).toEqual([]);
  });

  it('finds the same again', () => {
    expect(looked(letter, firstOf(letter))).toEqual(looked(letter, firstOf(letter)));
  });

  it('does nothing where the first layout is as good as any', () => {
    const first = firstOf(squares);
    expect(looked(squares, first)).toEqual({ yielded: [], best: first });
  });

  it('hands every better layout out as it comes, and nothing between', () => {
    const { yielded, best } = looked(squares, oneEach, [{ search: besideTheFirst, share: 1 }]);
    expect(yielded.map((found) => found?.count ?? null)).toEqual([null, 3, null, 2, null, 1]);
    expect(best.sheets.map(({ pieces }) => pieces.map(({ xMm, yMm }) => [xMm, yMm]))).toEqual([
      [
        [0, 0],
        [50, 0],
        [0, 50],
        [50, 50],
      ],
    ]);
  });

  it('asks a search that goes as far as it can by itself only once', () => {
    const { best } = looked(squares, oneEach, [{ search: besideTheFirst, share: 1, once: true }]);
    expect(best.count).toBe(3);
  });

  it('asks the next search where one gives up, with the steps that are left', () => {
    const given: number[] = [];
    const givesUp: SheetSearch = function* (_, work) {
      given.push(work.steps);
      work.steps -= 100;
      yield;
      return null;
    };
    const list = [
      { search: givesUp, share: 1 },
      { search: givesUp, share: 3 },
    ];
    all(betterSheets(squares, oneEach, { steps: 1_000, seed: 1 }, list));
    expect(given).toEqual([250, 900]);
  });

  it('tells the bound of straight cuts that a search worked out', () => {
    const bounds: SheetSearch = function* ({ tellGuillotineBound }, work) {
      work.steps -= 1;
      yield;
      tellGuillotineBound?.(1);
      return null;
    };
    expect(looked(squares, oneEach, [{ search: bounds, share: 1 }]).best).toEqual({
      ...oneEach,
      guillotineBound: 1,
    });
  });

  it('does not go on long where straight cuts cannot do better', () => {
    const given: number[] = [];
    const bounds: SheetSearch = function* ({ tellGuillotineBound }, work) {
      given.push(work.steps);
      yield;
      tellGuillotineBound?.(4);
      return null;
    };
    const list = [
      { search: bounds, share: 1 },
      { search: bounds, share: 1 },
    ];
    all(betterSheets(squares, oneEach, { steps: 1_000, seed: 1 }, list));
    // Nothing was used: half of all that was left.
    expect(given).toEqual([500, 500]);
  });

  it('keeps equal sheets beside each other, their pieces in one order', () => {
    const { best } = looked(letter, firstOf(letter));
    const kinds = best.sheets.map(({ pieces }) => JSON.stringify(pieces));
    const changes = kinds.filter((kind, index) => kind !== kinds[index - 1]).length;
    expect(changes).toBe(new Set(kinds).size);
  });
});
