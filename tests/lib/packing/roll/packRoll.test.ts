import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Effort } from '@/lib/packing/pieceRequest';
import { packRoll, type RollRequest } from '@/lib/packing/roll/packRoll';
import { guillotineCutting } from '@/tests/lib/packing/guillotine';
import { layoutProblems, pieceProblems } from '@/tests/lib/packing/layoutProblems';
import { cases } from '@/tests/tools/cases';

const length = (min: number, max: number) =>
  fc.integer({ min: min * 10, max: max * 10 }).map((tenths) => tenths / 10);

const anyRequest: fc.Arbitrary<RollRequest> = fc.record({
  rollWidthMm: length(200, 700),
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

const SHORT = { steps: 20_000, seed: 1 };

/** What a request gets that asks for nothing else. */
const USUAL = { steps: 3_000_000, seed: 1 };

function packed(request: RollRequest, effort: Effort = SHORT) {
  const answer = packRoll(request, effort);
  if (!answer.ok) throw new Error(JSON.stringify(answer.problem));
  return answer.value;
}

describe('pieces on a roll', () => {
  it('lie apart, inside the margins, each once and in its size, on no shorter a roll than the bound', () => {
    fc.assert(
      fc.property(anyRequest, (request) => {
        const { pieces, rollLengthMm, lowerBoundMm } = packed(request);
        const paper = { ...request, widthMm: request.rollWidthMm, heightMm: rollLengthMm };
        expect(layoutProblems(pieces, paper)).toEqual([]);
        expect(pieceProblems(pieces, request.pieces, request.rotate)).toEqual([]);
        expect(lowerBoundMm).toBeLessThanOrEqual(rollLengthMm);
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

  it('take as long a roll whichever way up they are asked, where they may turn', () => {
    fc.assert(
      fc.property(anyRequest, (request) => {
        const pieces = request.pieces.map(({ widthMm, heightMm, ...piece }) => ({
          ...piece,
          widthMm: heightMm,
          heightMm: widthMm,
        }));
        const { rollLengthMm } = packed({ ...request, rotate: true });
        expect(packed({ ...request, rotate: true, pieces }).rollLengthMm).toBe(rollLengthMm);
      }),
      cases(60),
    );
  });

  it('fill a rectangle again that was cut into up to twelve pieces from edge to edge', () => {
    fc.assert(
      fc.property(guillotineCutting, ({ bin, pieces }) => {
        const kinds = pieces.map(({ width, height }, index) => ({
          id: String(index),
          widthMm: width,
          heightMm: height,
          count: 1,
        }));
        const request = { rollWidthMm: bin.width, marginMm: 0, gutterMm: 0, rotate: true, pieces: kinds };
        const { rollLengthMm, lowerBoundMm } = packed(request, USUAL);
        expect(rollLengthMm).toBeLessThanOrEqual(bin.height);
        expect(lowerBoundMm).toBeLessThanOrEqual(bin.height);
      }),
      cases(60),
    );
  }, 30_000);

  /* 610 − 10 mm hold three columns of 80 + 3 and six of 55 + 3; 500 badges need at least the area's 3,999 mm. */
  it('lie in columns upright and turned where all are equal', () => {
    const request = { rollWidthMm: 610, marginMm: 5, gutterMm: 3, rotate: true };
    const { rollLengthMm } = packed({
      ...request,
      pieces: [{ id: 'a', widthMm: 90, heightMm: 90, count: 37 }],
    });
    expect(rollLengthMm).toBe(7 * 93 - 3 + 10);
  });

  it('are refused where wider than the roll either way up', () => {
    const pieces = [{ id: 'a', widthMm: 700, heightMm: 1400, count: 1 }];
    expect(packRoll({ rollWidthMm: 610, marginMm: 5, gutterMm: 3, rotate: true, pieces })).toEqual({
      ok: false,
      problem: {
        kind: 'tooLarge',
        pieces: [{ id: 'a', widthMm: 700, heightMm: 1400, largestWidthMm: 600, largestHeightMm: 1200 }],
      },
    });
  });
});
