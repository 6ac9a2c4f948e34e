import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { piecesPerSheet, type SheetQuestion } from '@/lib/packing/equal/piecesPerSheet';
import { layoutProblems } from '@/tests/lib/packing/layoutProblems';
import { cases } from '@/tests/tools/cases';

const question = (sheet: readonly [number, number], piece: readonly [number, number]): SheetQuestion => ({
  sheetWidthMm: sheet[0],
  sheetHeightMm: sheet[1],
  marginMm: 0,
  gutterMm: 0,
  pieceWidthMm: piece[0],
  pieceHeightMm: piece[1],
});

/* Papers and pieces as at a bench: some 1 to 150 pieces on a sheet. */
const length = (min: number, max: number) =>
  fc.integer({ min: min * 10, max: max * 10 }).map((tenths) => tenths / 10);
const anyQuestion: fc.Arbitrary<SheetQuestion> = fc.record({
  sheetWidthMm: length(150, 500),
  sheetHeightMm: length(150, 500),
  marginMm: fc.constantFrom(0, 3.175, 5, 6.35),
  gutterMm: fc.constantFrom(0, 3, 3.175, 6.35),
  pieceWidthMm: length(25, 300),
  pieceHeightMm: length(25, 300),
});

const paperOf = ({ sheetWidthMm, sheetHeightMm, marginMm, gutterMm }: SheetQuestion) => ({
  widthMm: sheetWidthMm,
  heightMm: sheetHeightMm,
  marginMm,
  gutterMm,
});

describe('equal pieces on one sheet', () => {
  /*
   * K. Dowsland, "The three-dimensional pallet chart", Journal of the Operational Research Society 35, 895-905, 1984
   * (the first seven); E. Birgin, R. Lobato, R. Morabito, ibid. 61, 306-320, 2010 (49 × 28). The area lets in no more.
   */
  test.each<[string, readonly [number, number], readonly [number, number], number]>([
    ['22 × 16', [22, 16], [5, 3], 23],
    ['30 × 22', [30, 22], [7, 4], 23],
    ['46 × 34', [46, 34], [11, 6], 23],
    ['50 × 36', [50, 36], [11, 7], 23],
    ['53 × 51', [53, 51], [9, 7], 42],
    ['63 × 60', [63, 60], [11, 8], 42],
    ['76 × 73', [76, 73], [13, 10], 42],
    ['87 × 47', [87, 47], [7, 6], 97],
    ['49 × 28, which no blocks fill', [49, 28], [8, 3], 57],
  ])('%s holds the most there can be', (_, sheet, piece, most) => {
    const answer = piecesPerSheet(question(sheet, piece));
    expect(answer.count).toBe(most);
    expect(answer.pieces).toHaveLength(most);
    expect(layoutProblems(answer.pieces, paperOf(question(sheet, piece)))).toEqual([]);
  });

  it('lays pieces upright where turning gains nothing', () => {
    const answer = piecesPerSheet({ ...question([100, 100], [50, 25]) });
    expect(answer).toMatchObject({ count: 8, turned: false });
    expect(answer.pieces.every(({ turned }) => !turned)).toBe(true);
  });

  it('keeps pieces upright where they may not turn', () => {
    expect(piecesPerSheet({ ...question([22, 16], [5, 3]), rotate: false }).count).toBe(4 * 5);
    expect(piecesPerSheet({ ...question([20, 40], [30, 10]), rotate: false }).count).toBe(0);
  });

  it('answers for a speck on a huge sheet without writing every place down', () => {
    const answer = piecesPerSheet(question([20_000, 20_000], [0.5, 0.25]));
    expect(answer.count).toBe(40_000 * 80_000);
    expect(answer.pieces).toHaveLength(10_000);
  });

  it('never lets pieces overlap or leave the margins', () => {
    fc.assert(
      fc.property(anyQuestion, (asked) => {
        const { pieces, count } = piecesPerSheet(asked);
        expect(pieces).toHaveLength(count);
        expect(layoutProblems(pieces, paperOf(asked))).toEqual([]);
        for (const { turned, widthMm, heightMm } of pieces) {
          const size = turned ? [heightMm, widthMm] : [widthMm, heightMm];
          expect(size).toEqual([asked.pieceWidthMm, asked.pieceHeightMm]);
        }
      }),
      cases(100),
    );
  });

  it('finds as many when sheet and piece are turned together, or the piece alone', () => {
    fc.assert(
      fc.property(anyQuestion, (asked) => {
        const { count } = piecesPerSheet(asked);
        const turnedPiece = {
          ...asked,
          pieceWidthMm: asked.pieceHeightMm,
          pieceHeightMm: asked.pieceWidthMm,
        };
        const turned = {
          ...turnedPiece,
          sheetWidthMm: asked.sheetHeightMm,
          sheetHeightMm: asked.sheetWidthMm,
        };
        expect(piecesPerSheet(turnedPiece).count).toBe(count);
        expect(piecesPerSheet(turned).count).toBe(count);
      }),
      cases(100),
    );
  });

  it('never finds more with a wider margin', () => {
    fc.assert(
      fc.property(anyQuestion, fc.double({ min: 0, max: 30, noNaN: true }), (asked, wider) => {
        const narrow = piecesPerSheet({ ...asked, marginMm: asked.marginMm + wider }).count;
        expect(narrow).toBeLessThanOrEqual(piecesPerSheet(asked).count);
      }),
      cases(100),
    );
  });

  it('gives the same answer twice', () => {
    fc.assert(
      fc.property(anyQuestion, (asked) => {
        expect(piecesPerSheet(asked)).toEqual(piecesPerSheet(asked));
      }),
      cases(30),
    );
  });
});
