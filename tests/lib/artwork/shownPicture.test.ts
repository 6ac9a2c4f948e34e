import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { printedShare } from '@/lib/artwork/printedShare';
import { shownPart, shownPicture } from '@/lib/artwork/shownPicture';
import { scaledToShown } from '@/lib/drafts/trimEdges';
import { wholeJob } from '@/lib/grid/costSheet';
import { Grid } from '@/lib/grid/evaluateGrid';
import { totalShare } from '@/lib/ink/generateBlack';
import { trimAnswer } from '@/lib/studies/sheets/trimAnswer';
import { INK_STRIPS } from '@/shared/schemas/picture';
import { aPicture } from '@/tests/fixtures/aPicture';
import { clubWith } from '@/tests/fixtures/clubJob';
import { costed } from '@/tests/fixtures/costed';
import { cases } from '@/tests/tools/cases';

/** Ink in the middle only: a quarter of the picture, which stands a quarter in from every side. */
const middle = {
  content: { x: 400, y: 500, width: 800, height: 1000 },
  inkAcross: Array.from({ length: INK_STRIPS }, (_, at) => (at >= 8 && at < 24 ? 2 : 0)),
  inkDown: Array.from({ length: INK_STRIPS }, (_, at) => (at >= 8 && at < 24 ? 2 : 0)),
  grey: {
    across: Array.from({ length: INK_STRIPS }, (_, at) => (at >= 8 && at < 24 ? 2 : 0)),
    down: Array.from({ length: INK_STRIPS }, (_, at) => (at >= 8 && at < 24 ? 2 : 0)),
    floodShares: [0.1, 0.05, 0, 0, 0],
  },
};

describe('a picture as it prints', () => {
  it('is the whole of it until its edges are trimmed', () => {
    const picture = aPicture(middle);
    expect(shownPart(picture)).toBeNull();
    expect(shownPicture(picture)).toBe(picture);
  });

  it('is what it holds once they are, four times as dense on a quarter of the area', () => {
    const picture = aPicture({
      ...middle,
      trimmed: true,
      coverage: { cyan: 0.1, magenta: 0.2, yellow: 0, black: 0.05 },
    });
    const shown = shownPicture(picture);
    expect(shown).toMatchObject({
      width: 800,
      height: 1000,
      content: { x: 0, y: 0, width: 800, height: 1000 },
    });
    expect(shown.coverage.cyan).toBeCloseTo(0.4, 12);
    expect(shown.coverage.black).toBeCloseTo(0.2, 12);
    const { across = [], down = [], floodShares = [] } = shown.grey ?? {};
    for (const strip of [...shown.inkAcross, ...shown.inkDown, ...across, ...down]) {
      expect(strip).toBeCloseTo(1, 9);
    }
    expect([across.length, down.length]).toEqual([INK_STRIPS, INK_STRIPS]);
    expect(floodShares).toEqual([0.4, 0.2, 0, 0, 0]);
  });

  it('has all its ink whatever its edges: what it covers more it is smaller', () => {
    fc.assert(
      fc.property(
        fc.record({
          left: fc.integer({ min: 0, max: 700 }),
          top: fc.integer({ min: 0, max: 900 }),
          right: fc.integer({ min: 0, max: 700 }),
          bottom: fc.integer({ min: 0, max: 900 }),
          ink: fc.double({ min: 0.001, max: 0.005, noNaN: true }),
          width: fc.integer({ min: 50, max: 300 }),
          height: fc.integer({ min: 50, max: 300 }),
        }),
        ({ left, top, right, bottom, ink, width, height }) => {
          const content = { x: left, y: top, width: 1600 - left - right, height: 2000 - top - bottom };
          const before = aPicture({ content, coverage: { cyan: ink, magenta: 0, yellow: 0, black: 0 } });
          const after = { ...before, trimmed: true };
          const input = clubWith({
            'job.lines.0.placements.0.prints': [{ sizes: null, widthMm: width, heightMm: height }],
          });
          const area = (picture: typeof before, job: typeof input.job) => {
            const [print] = job.lines[0]?.placements[0]?.prints ?? [];
            if (print === undefined) throw new Error('a print');
            const shown = shownPicture(picture);
            const covered = totalShare(shown.coverage) * printedShare(shown, print, 'inside', 1);
            return covered * print.widthMm * print.heightMm;
          };
          const trimmed = scaledToShown(input.job, 'hill-path', before, after);
          expect(area(after, trimmed) / area(before, input.job)).toBeCloseTo(1, 9);
        },
      ),
      cases(500),
    );
  });
});

describe('trimming in a job', () => {
  const trimmedAway = aPicture({ content: { x: 0, y: 1000, width: 1600, height: 1000 } });
  const input = clubWith({
    'artwork:hill-path.picture': trimmedAway,
    'artwork:hill-path.pixels': { width: 1600, height: 2000 },
    'artwork:hill-path.coverage': null,
  });

  it('takes the same ink to the last digits, on less paper, and tells before what it saves', () => {
    // 8 × 10 in goes once on a letter sheet, 8 × 5 in twice.
    const answer = trimAnswer(input, new Grid(), { artworkId: 'hill-path' });
    const after = { ...trimmedAway, trimmed: true };
    const job = scaledToShown(input.job, 'hill-path', trimmedAway, after);
    const artworks = {
      ...input.artworks,
      'hill-path': { ...(input.artworks['hill-path'] ?? never()), picture: after },
    };
    const [was, is] = [costed(input).sheet, costed({ ...input, job, artworks }).sheet];
    expect(wholeJob(is, 'inkRun') / wholeJob(was, 'inkRun')).toBeCloseTo(1, 9);
    expect(wholeJob(is, 'sheets')).toBeLessThan(wholeJob(was, 'sheets') - 15);
    expect(answer?.saved).toBeCloseTo(was.fullCost - is.fullCost, 9);
    expect(answer?.sheetsLess).toBeCloseTo(wholeJob(was, 'sheets') - wholeJob(is, 'sheets'), 9);
    expect(answer?.saved).toBeGreaterThan(0);
  });

  it('gives the prints their size back to the last digit', () => {
    const after = { ...trimmedAway, trimmed: true };
    const there = scaledToShown(input.job, 'hill-path', trimmedAway, after);
    expect(scaledToShown(there, 'hill-path', after, trimmedAway)).toEqual(input.job);
  });
});

function never(): never {
  throw new Error('the example has a hill path');
}
