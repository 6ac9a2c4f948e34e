import { describe, expect, it, test } from 'vitest';
import type { Effort } from '@/lib/packing/pieceRequest';
import { betterSheets } from '@/lib/packing/sheet/betterSheets';
import { type PackedSheets, packSheets, type SheetsRequest } from '@/lib/packing/sheet/packSheets';
import { type CutSheets, cutSheets } from '@/tests/lib/packing/cutSheets';
import { layoutProblems, pieceProblems } from '@/tests/lib/packing/layoutProblems';

/** About what the page spends beside the first answer; what is asked here takes a small part of it. */
const FURTHER: Effort = { steps: 12_000_000, seed: 1 };

function first(request: SheetsRequest): PackedSheets {
  const answer = packSheets(request);
  if (!answer.ok) throw new Error(JSON.stringify(answer.problem));
  return answer.value;
}

function best(request: SheetsRequest): PackedSheets {
  const search = betterSheets(request, first(request), FURTHER);
  let slice = search.next();
  while (slice.done !== true) slice = search.next();
  return slice.value;
}

function problems(request: SheetsRequest, { sheets }: PackedSheets): readonly string[] {
  const paper = { ...request, widthMm: request.sheetWidthMm, heightMm: request.sheetHeightMm };
  const placed = sheets.flatMap(({ pieces }) => pieces);
  return [
    ...sheets.flatMap(({ pieces }) => layoutProblems(pieces, paper)),
    ...pieceProblems(placed, request.pieces, request.rotate),
  ];
}

const A4 = { widthMm: 297, heightMm: 210 };
const LETTER = { widthMm: 216, heightMm: 279 };
const seeds = [1, 2, 3, 4, 5, 6];

const full: readonly (readonly [string, CutSheets])[] = [
  ['two sheets of A4', { ...A4, sheets: 2, pieces: [8, 14] }],
  ['three letter sheets', { ...LETTER, sheets: 3, pieces: [8, 14] }],
  ['two sheets, pieces shrunk to 97 %', { ...A4, sheets: 2, pieces: [8, 14], fill: 0.97 }],
  ['three sheets, pieces shrunk to 95 %', { ...LETTER, sheets: 3, pieces: [8, 14], fill: 0.95 }],
];

describe('pieces that were cut from a few full sheets', () => {
  describe.each(full)('%s', (_, cut) => {
    test.each(seeds)('seed %i fits them again', (seed) => {
      const request = cutSheets(cut, seed);
      const packed = best(request);
      expect(problems(request, packed)).toEqual([]);
      // By construction: so many sheets held the pieces before they were cut.
      expect(packed.count).toBeLessThanOrEqual(cut.sheets);
    });
  });

  it.each(seeds)('fit two sheets in the first answer, seed %i', (seed) => {
    const request = cutSheets({ ...A4, sheets: 2, pieces: [8, 14] }, seed);
    const packed = first(request);
    expect(problems(request, packed)).toEqual([]);
    expect(packed.count).toBe(2);
  });

  it.each([true, false])('fit again where several are equal, turning: %s', (rotate) => {
    // By hand: sheet one 2 × (60 × 50) over 3 × (40 × 50); sheet two 5 × (24 × 100).
    const pieces = [
      { id: 'a', widthMm: 60, heightMm: 50, count: 2 },
      { id: 'b', widthMm: 40, heightMm: 50, count: 3 },
      { id: 'c', widthMm: 24, heightMm: 100, count: 5 },
    ];
    const request = { sheetWidthMm: 120, sheetHeightMm: 100, marginMm: 0, gutterMm: 0, rotate, pieces };
    const packed = best(request);
    expect(problems(request, packed)).toEqual([]);
    expect(packed.count).toBe(2);
  });
});
