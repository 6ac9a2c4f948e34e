import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Effort } from '@/lib/packing/pieceRequest';
import { packSheets, type SheetsRequest } from '@/lib/packing/sheet/packSheets';
import { guillotineCutting } from '@/tests/lib/packing/guillotine';
import { layoutProblems, pieceProblems } from '@/tests/lib/packing/layoutProblems';
import { cases } from '@/tests/tools/cases';

const sheet = (widthMm: number, heightMm: number, more: Partial<SheetsRequest> = {}): SheetsRequest => ({
  sheetWidthMm: widthMm,
  sheetHeightMm: heightMm,
  marginMm: 0,
  gutterMm: 0,
  rotate: true,
  pieces: [],
  ...more,
});

const length = (min: number, max: number) =>
  fc.integer({ min: min * 10, max: max * 10 }).map((tenths) => tenths / 10);

/** Every piece goes on a sheet of 300 × 200 mm with 10 mm margins, either way up. */
const anyRequest: fc.Arbitrary<SheetsRequest> = fc.record({
  sheetWidthMm: length(300, 400),
  sheetHeightMm: length(200, 290),
  marginMm: fc.constantFrom(0, 3.175, 10),
  gutterMm: fc.constantFrom(0, 3, 6.35),
  rotate: fc.boolean(),
  pieces: fc
    .array(
      fc.record({
        widthMm: length(10, 180),
        heightMm: length(10, 180),
        count: fc.integer({ min: 1, max: 6 }),
      }),
      {
        minLength: 1,
        maxLength: 12,
      },
    )
    .map((pieces) => pieces.map((piece, index) => ({ id: `piece ${index + 1}`, ...piece }))),
});

/** A short search keeps the many cases quick; the laws do not depend on its length. */
const SHORT = { steps: 5_000, seed: 1 };

/** What a request gets that asks for nothing else. */
const USUAL = { steps: 500_000, seed: 1 };

function packed(request: SheetsRequest, effort: Effort = SHORT) {
  const answer = packSheets(request, effort);
  if (!answer.ok) throw new Error(JSON.stringify(answer.problem));
  return answer.value;
}

describe('pieces of several sizes on sheets', () => {
  it('lie apart, inside the margins, each once and in its size, on no fewer sheets than the bound', () => {
    fc.assert(
      fc.property(anyRequest, (request) => {
        const { sheets, count, lowerBound } = packed(request);
        const paper = { ...request, widthMm: request.sheetWidthMm, heightMm: request.sheetHeightMm };
        expect(sheets.flatMap(({ pieces }) => layoutProblems(pieces, paper))).toEqual([]);
        expect(
          pieceProblems(
            sheets.flatMap(({ pieces }) => pieces),
            request.pieces,
            request.rotate,
          ),
        ).toEqual([]);
        expect(sheets).toHaveLength(count);
        expect(sheets.every(({ pieces }) => pieces.length > 0)).toBe(true);
        expect(lowerBound).toBeLessThanOrEqual(count);
      }),
      cases(100),
    );
  });

  it('come out the same for the same request', () => {
    fc.assert(
      fc.property(anyRequest, (request) => {
        expect(packed(request)).toEqual(packed(request));
      }),
      cases(30),
    );
  });

  it('take as many sheets when sheet and pieces are turned together', () => {
    fc.assert(
      fc.property(anyRequest, (request) => {
        const turned = {
          ...request,
          sheetWidthMm: request.sheetHeightMm,
          sheetHeightMm: request.sheetWidthMm,
          pieces: request.pieces.map(({ widthMm, heightMm, ...piece }) => ({
            ...piece,
            widthMm: heightMm,
            heightMm: widthMm,
          })),
        };
        const { count, lowerBound } = packed(request);
        expect(packed(turned)).toMatchObject({ count, lowerBound });
      }),
      cases(60),
    );
  });

  it('fill one sheet again that was cut into up to twelve pieces from edge to edge', () => {
    fc.assert(
      fc.property(guillotineCutting, ({ bin, pieces }) => {
        const kinds = pieces.map(({ width, height }, index) => ({
          id: String(index),
          widthMm: width,
          heightMm: height,
          count: 1,
        }));
        expect(packed(sheet(bin.width, bin.height, { pieces: kinds }), USUAL).count).toBe(1);
      }),
      cases(60),
    );
  }, 30_000);

  it('come on full sheets of one piece first, and the rest together', () => {
    const { sheets, count, lowerBound } = packed(
      sheet(100, 100, {
        pieces: [
          { id: 'a', widthMm: 50, heightMm: 50, count: 10 },
          { id: 'b', widthMm: 50, heightMm: 100, count: 1 },
        ],
      }),
    );
    expect([count, lowerBound]).toEqual([3, 3]);
    expect(sheets.map(({ pieces }) => pieces.map(({ id }) => id).join(''))).toEqual(['aaaa', 'aaaa', 'baa']);
  });

  it('turn only where they may', () => {
    const pieces = [{ id: 'a', widthMm: 40, heightMm: 100, count: 2 }];
    expect(packed(sheet(100, 80, { pieces })).count).toBe(1);
    expect(packSheets(sheet(100, 80, { pieces, rotate: false })).ok).toBe(false);
  });

  it('are named with the largest size that fits, where they do not fit', () => {
    const answer = packSheets(
      sheet(210, 297, {
        marginMm: 5,
        pieces: [
          { id: 'banner', widthMm: 400, heightMm: 100, count: 1 },
          { id: 'badge', widthMm: 80, heightMm: 80, count: 1 },
        ],
      }),
    );
    expect(answer).toEqual({
      ok: false,
      problem: {
        kind: 'tooLarge',
        pieces: [{ id: 'banner', widthMm: 400, heightMm: 100, largestWidthMm: 287, largestHeightMm: 71.75 }],
      },
    });
  });

  it('find no room between margins that meet', () => {
    const pieces = [{ id: 'a', widthMm: 10, heightMm: 10, count: 1 }];
    expect(packSheets(sheet(210, 297, { marginMm: 105, pieces }))).toEqual({
      ok: false,
      problem: { kind: 'noRoom' },
    });
  });
});
