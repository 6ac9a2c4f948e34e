import { describe, expect, it } from 'vitest';
import type { PieceKind } from '@/lib/packing/pieceRequest';
import { betterRoll } from '@/lib/packing/roll/betterRoll';
import { seededRandom } from '@/lib/packing/seededRandom';
import { type PackedSheets, packSheets, type SheetsRequest } from '@/lib/packing/sheet/packSheets';
import { layoutProblems, pieceProblems } from '@/tests/lib/packing/layoutProblems';

const EFFORT = { steps: 400_000, seed: 2 };

describe('a roll that is looked at longer', () => {
  it('lays what fills section after section without a gap on exactly that length', () => {
    // By hand: 60 × 40 beside 40 × 40 fill the roll of 100; ten such sections, four to a print of 160, are 400.
    const request = onRoll(100, 160, [
      { id: 'wide', widthMm: 60, heightMm: 40, count: 10 },
      { id: 'square', widthMm: 40, heightMm: 40, count: 10 },
    ]);
    const oneEach = {
      ...firstOf(request),
      sheets: Array.from({ length: 10 }, () => ({
        pieces: [placed('wide', 0, 0, 60, 40), placed('square', 0, 40, 40, 40)],
      })),
      count: 10,
    };
    const better = lookedOn(request, oneEach);
    expect(lengthOf(better, request)).toBe(400);
    expect(faultsOf(better, request)).toEqual([]);
  });

  it('is never longer, holds every piece once, and is the same each time', () => {
    const random = seededRandom(11);
    for (let job = 0; job < 2; job += 1) {
      const pieces = Array.from({ length: 3 + job }, (_, index) => ({
        id: String(index),
        widthMm: 40 + Math.floor(random() * 170),
        heightMm: 40 + Math.floor(random() * 170),
        count: 5 + Math.floor(random() * 25),
      }));
      const request = { ...onRoll(330, 900, pieces), marginMm: 3, gutterMm: 6 };
      const first = firstOf(request);
      const better = lookedOn(request, first);
      expect(lengthOf(better, request)).toBeLessThanOrEqual(lengthOf(first, request));
      expect(faultsOf(better, request)).toEqual([]);
      expect(lookedOn(request, first)).toEqual(better);
    }
  });

  it('turns no piece so that it is longer than the longest print', () => {
    // 350 × 200 goes on prints of 330 one way round only; by hand: one beside another needs 700, so each takes 200.
    const request = onRoll(610, 330, [
      { id: 'a', widthMm: 350, heightMm: 200, count: 4 },
      { id: 'b', widthMm: 340, heightMm: 205, count: 6 },
    ]);
    const better = lookedOn(request, firstOf(request));
    expect(better.sheets).toHaveLength(10);
    expect(lengthOf(better, request)).toBe(4 * 200 + 6 * 205);
    expect(faultsOf(better, request)).toEqual([]);
  });

  it('has less than two parts in a hundred beyond the printed area where few sizes come many times', () => {
    // The area alone bounds it: no layout of 288 pieces is shorter than their area over the width of the roll.
    const pieces = [
      { id: 'a', widthMm: 195, heightMm: 254, count: 25 },
      { id: 'b', widthMm: 111, heightMm: 153, count: 36 },
      { id: 'c', widthMm: 166, heightMm: 102, count: 60 },
      { id: 'd', widthMm: 98, heightMm: 141, count: 33 },
    ];
    const request = onRoll(610, 1400, pieces);
    const better = lookedOn(request, firstOf(request), 2_000_000);
    const area = pieces.reduce((sum, { widthMm, heightMm, count }) => sum + widthMm * heightMm * count, 0);
    expect(lengthOf(better, request) / (area / 610)).toBeLessThan(1.02);
    expect(faultsOf(better, request)).toEqual([]);
  });
});

const onRoll = (
  sheetWidthMm: number,
  sheetHeightMm: number,
  pieces: readonly PieceKind[],
): SheetsRequest => ({ sheetWidthMm, sheetHeightMm, marginMm: 0, gutterMm: 0, rotate: true, pieces });

const placed = (id: string, yMm: number, xMm: number, widthMm: number, heightMm: number) => ({
  id,
  xMm: id === 'square' ? 60 : xMm,
  yMm: id === 'square' ? 0 : yMm,
  widthMm,
  heightMm,
  turned: false,
});

function firstOf(request: SheetsRequest): PackedSheets {
  const packed = packSheets(request, { steps: 20_000, seed: 1 });
  if (!packed.ok) throw new Error('a piece does not fit');
  return packed.value;
}

function lookedOn(request: SheetsRequest, first: PackedSheets, steps = EFFORT.steps): PackedSheets {
  const search = betterRoll(request, first, { ...EFFORT, steps });
  for (;;) {
    const { done, value } = search.next();
    if (done === true) return value;
  }
}

const lengthOf = ({ sheets }: PackedSheets, { marginMm }: SheetsRequest): number =>
  sheets.reduce(
    (sum, { pieces }) => sum + Math.max(...pieces.map(({ yMm, heightMm }) => yMm + heightMm)) + marginMm,
    0,
  );

function faultsOf({ sheets }: PackedSheets, request: SheetsRequest): readonly unknown[] {
  const { sheetWidthMm: widthMm, sheetHeightMm: heightMm, marginMm, gutterMm, pieces } = request;
  return [
    ...sheets.flatMap((sheet) => layoutProblems(sheet.pieces, { widthMm, heightMm, marginMm, gutterMm })),
    ...pieceProblems(
      sheets.flatMap((sheet) => sheet.pieces),
      pieces,
      true,
    ),
  ];
}
