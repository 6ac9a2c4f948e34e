import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { piecesPerSheet } from '@/lib/packing/equal/piecesPerSheet';
import { sizeSweetSpots } from '@/lib/packing/equal/sizeSweetSpots';
import { quantitySweetSpots } from '@/lib/sheets/quantitySweetSpots';
import { mmFromInches } from '@/shared/units';
import { cases } from '@/tests/tools/cases';

const letter = (width: number, height: number) => ({
  sheetWidthMm: mmFromInches(8.5),
  sheetHeightMm: mmFromInches(11),
  marginMm: mmFromInches(0.125),
  gutterMm: mmFromInches(0.25),
  pieceWidthMm: mmFromInches(width),
  pieceHeightMm: mmFromInches(height),
});

describe('sizes at which a sheet carries more', () => {
  /* (10.75 + 0.25) in / 3 − 0.25 in = 3.4167 in, 0.9762 of 3.5 in. */
  it('tell that badges of 3.5 in, four to a letter sheet, go six to one at 3.41 in', () => {
    expect(piecesPerSheet(letter(3.5, 3.5)).count).toBe(4);
    const six = sizeSweetSpots(letter(3.5, 3.5)).find(({ count }) => count === 6);
    expect(six).toMatchObject({ columns: 2, rows: 3, widthMm: 86.78, heightMm: 86.78, mostWidthMm: 101.6 });
    expect(six?.scale).toBeCloseTo((11 / 3 - 0.25) / 3.5, 12);
  });

  it('tell that mug strips of 8 × 3.5 in go three to a sheet where they are 3.41 in high', () => {
    const three = sizeSweetSpots(letter(8, 3.5)).find(({ count }) => count === 3);
    expect(three).toMatchObject({ columns: 1, rows: 3, mostWidthMm: 209.55, mostHeightMm: 86.78 });
  });

  it('tell how far a piece may grow for nothing', () => {
    const [same] = sizeSweetSpots(letter(3.4, 3.4));
    expect(same).toMatchObject({ count: 6, widthMm: 86.78 });
  });

  it('leave out what would be less than 0.93 of the size', () => {
    expect(sizeSweetSpots(letter(8, 10.5)).map(({ count }) => count)).toEqual([1]);
  });

  it('keep their word: at the size told the sheet carries that many, and more than at the size asked', () => {
    const side = fc.integer({ min: 250, max: 2000 }).map((tenths) => tenths / 10);
    fc.assert(
      fc.property(side, side, fc.boolean(), (pieceWidthMm, pieceHeightMm, rotate) => {
        const question = { ...letter(1, 1), pieceWidthMm, pieceHeightMm, rotate };
        const now = piecesPerSheet(question).count;
        for (const { widthMm, heightMm, scale, count } of sizeSweetSpots(question)) {
          const there = piecesPerSheet({ ...question, pieceWidthMm: widthMm, pieceHeightMm: heightMm });
          expect(there.count).toBe(count);
          expect(count).toBeGreaterThanOrEqual(scale > 1 ? now : now + 1);
        }
      }),
      cases(40),
    );
  });
});

describe('quantities at which sheets come out full', () => {
  it.each([
    [37, [{ perSheet: 6, others: 0 }], [42, 48, 54]],
    [36, [{ perSheet: 6, others: 0 }], [42, 48, 54]],
    [37, [{ perSheet: 6, others: 4 }], [38, 44, 50]],
    [37, [{ perSheet: 1, others: 0 }], []],
    [
      1,
      [
        { perSheet: 4, others: 0 },
        { perSheet: 6, others: 0 },
      ],
      [4, 6, 8],
    ],
  ])('after %i with %j they are %j', (quantity, prints, next) => {
    expect(quantitySweetSpots(quantity, prints).map((spot) => spot.quantity)).toEqual(next);
  });

  it('say which prints have no spare place', () => {
    const prints = [
      { perSheet: 4, others: 0 },
      { perSheet: 1, others: 0 },
      { perSheet: 6, others: 0 },
    ];
    expect(quantitySweetSpots(9, prints)).toEqual([
      { quantity: 12, more: 3, full: [0, 2] },
      { quantity: 16, more: 7, full: [0] },
      { quantity: 18, more: 9, full: [2] },
    ]);
  });
});
