import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BoxKind, LaidBox } from '@/lib/packing/box';
import { columnSearch } from '@/lib/packing/columns/columnSearch';
import { seededRandom } from '@/lib/packing/seededRandom';
import { betterSheets } from '@/lib/packing/sheet/betterSheets';
import { type PackedSheets, packSheets, type SheetsRequest } from '@/lib/packing/sheet/packSheets';
import { guillotineCutting } from '@/tests/lib/packing/guillotine';
import { layoutProblems, pieceProblems } from '@/tests/lib/packing/layoutProblems';
import { cases } from '@/tests/tools/cases';

type Piece = readonly [width: number, height: number, count: number];

const onPaper = (
  widthMm: number,
  heightMm: number,
  pieces: readonly Piece[],
  rotate = true,
): SheetsRequest => ({
  sheetWidthMm: widthMm,
  sheetHeightMm: heightMm,
  marginMm: 3,
  gutterMm: 6,
  rotate,
  pieces: pieces.map(([width, height, count], index) => ({
    id: `piece ${index}`,
    widthMm: width,
    heightMm: height,
    count,
  })),
});

const eightKinds = onPaper(330, 483, [
  [195, 254, 25],
  [111, 153, 36],
  [166, 102, 60],
  [159, 114, 44],
  [157, 114, 23],
  [115, 125, 17],
  [98, 141, 33],
  [203, 255, 50],
]);

const threeKinds = onPaper(210, 297, [
  [41, 65, 44],
  [128, 122, 14],
  [94, 75, 52],
]);

/** @returns the layout by columns alone, after a first one made in little time. */
function laidOut(request: SheetsRequest): { readonly first: PackedSheets; readonly better: PackedSheets } {
  const first = packSheets(request, { steps: 60_000, seed: 1 });
  if (!first.ok) throw new Error(JSON.stringify(first.problem));
  const list = [{ search: columnSearch, share: 1, once: true }] as const;
  const search = betterSheets(request, first.value, { steps: 8_000_000, seed: 1 }, list);
  for (;;) {
    const { done, value } = search.next();
    if (done === true) return { first: first.value, better: value };
  }
}

const problemsOf = (request: SheetsRequest, { sheets }: PackedSheets): readonly string[] => {
  const { sheetWidthMm: widthMm, sheetHeightMm: heightMm, marginMm, gutterMm, rotate } = request;
  const paper = { widthMm, heightMm, marginMm, gutterMm };
  return [
    ...sheets.flatMap(({ pieces }) => layoutProblems(pieces, paper)),
    ...pieceProblems(
      sheets.flatMap(({ pieces }) => pieces),
      request.pieces,
      rotate,
    ),
  ];
};

describe('many copies of few sizes', () => {
  // Sheets: what the project set itself to reach; the bounds of both jobs prove that straight cuts allow no fewer.
  it.each([
    ['eight sizes on 330 × 483 mm', eightKinds, 56],
    ['three sizes on A4', threeKinds, 14],
  ])('%s take as few sheets as straight cuts allow', (_, request, sheets) => {
    const { better } = laidOut(request);
    expect(problemsOf(request, better)).toEqual([]);
    expect([better.count, better.guillotineBound]).toEqual([sheets, sheets]);
  });

  // Two ids of one size; sizes in inches; pieces that must stay upright; more sizes than copies repay.
  it.each([
    [
      'two of them of one size',
      onPaper(297, 420, [
        [120, 90, 21],
        [90, 120, 17],
        [140, 61, 30],
        [75, 55, 40],
      ]),
    ],
    [
      'in inches',
      onPaper(215.9, 279.4, [
        [101.6, 76.2, 19],
        [63.5, 88.9, 33],
        [50.8, 50.8, 41],
        [127, 152.4, 9],
      ]),
    ],
    [
      'that must stay upright',
      onPaper(
        330.2,
        482.6,
        [
          [141, 98, 33],
          [166, 102, 30],
          [115, 125, 27],
        ],
        false,
      ),
    ],
    [
      'in tenths of a millimetre',
      onPaper(210, 297, [
        [40.3, 61.7, 30],
        [88.9, 54.1, 22],
        [33.3, 47.6, 41],
      ]),
    ],
  ])('%s lie apart, each as often as asked, on no more sheets than at first', (_, request) => {
    const { first, better } = laidOut(request);
    expect(problemsOf(request, better)).toEqual([]);
    expect(better.count).toBeLessThanOrEqual(first.count);
    expect(better.count).toBeGreaterThanOrEqual(better.lowerBound);
  });

  it('come out the same for the same question', () => {
    expect(laidOut(threeKinds)).toEqual(laidOut(threeKinds));
  });

  it('come back as few different sheets, equal ones piece by piece', () => {
    const { better } = laidOut(eightKinds);
    const different = new Set(better.sheets.map(({ pieces }) => JSON.stringify(pieces)));
    expect(different.size).toBeLessThanOrEqual(3 * eightKinds.pieces.length);
  });

  it('are searched in slices of some milliseconds of work', () => {
    const work = { steps: 1_000_000 };
    const search = columnSearch(questionOf(sheetOf(477, 324), threeHundred), work, seededRandom(1));
    let before = work.steps;
    let most = 0;
    // The share of the work for patterns is set aside first, and given back.
    for (let next = search.next(); next.done !== true; next = search.next()) {
      if (work.steps < before && before - work.steps < 500_000) most = Math.max(most, before - work.steps);
      before = work.steps;
    }
    expect(most).toBeGreaterThan(0);
    expect(most).toBeLessThan(100_000);
  });
});

const sheetOf = (width: number, height: number) => ({ width, height, mayTurn: true });

/** Small pieces of many sizes: hundreds of places for cuts. */
const threeHundred: readonly BoxKind[] = [
  { width: 47, height: 71, count: 60, mayTurn: true },
  { width: 36, height: 58, count: 60, mayTurn: true },
  { width: 83, height: 41, count: 60, mayTurn: true },
  { width: 67, height: 103, count: 60, mayTurn: true },
  { width: 119, height: 55, count: 60, mayTurn: true },
];

/** Every box on a sheet of its own to begin with. */
function questionOf(bin: ReturnType<typeof sheetOf>, kinds: readonly BoxKind[]) {
  const best = kinds.flatMap(({ width, height, count }, kind) =>
    Array.from({ length: count }, (): readonly LaidBox[] => {
      const fits = width <= bin.width && height <= bin.height;
      return [
        fits ? { kind, x: 0, y: 0, width, height } : { kind, x: 0, y: 0, width: height, height: width },
      ];
    }),
  );
  return { bin, kinds, least: 1, best };
}

describe('the bound for layouts of straight cuts', () => {
  it('is the number of sheets that were cut up without a rest, never more', () => {
    fc.assert(
      fc.property(guillotineCutting, fc.integer({ min: 2, max: 4 }), ({ bin, pieces }, copies) => {
        const kinds = pieces.map((piece) => ({ ...piece, count: copies, mayTurn: true }));
        const bounds: number[] = [];
        const tellGuillotineBound = (bound: number) => bounds.push(bound);
        const question = { ...questionOf(sheetOf(bin.width, bin.height), kinds), tellGuillotineBound };
        const search = columnSearch(question, { steps: 200_000 }, seededRandom(1));
        while (search.next().done !== true);
        for (const bound of bounds) expect(bound).toBeLessThanOrEqual(copies);
      }),
      cases(25),
    );
  });

  // By hand: four of 3 × 2 turn around a hole in 5 × 5, so that three sheets hold twelve; straight cuts leave three
  // on each and need four sheets.
  it('counts what straight cuts cannot reach and area can', () => {
    const bounds: number[] = [];
    const kinds = [{ width: 3, height: 2, count: 12, mayTurn: true }];
    const question = {
      ...questionOf(sheetOf(5, 5), kinds),
      tellGuillotineBound: (bound: number) => bounds.push(bound),
    };
    const search = columnSearch(question, { steps: 400_000 }, seededRandom(1));
    while (search.next().done !== true);
    expect(bounds).toEqual([4]);
  });
});
