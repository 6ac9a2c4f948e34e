import { describe, expect, it } from 'vitest';
import { printedShare } from '@/lib/artwork/printedShare';
import { checkJob } from '@/lib/check/checkJob';
import { priceJob } from '@/lib/costing/priceJob';
import { Grid } from '@/lib/grid/evaluateGrid';
import { totalShare, withBlackShare } from '@/lib/ink/generateBlack';
import { inkProfile } from '@/lib/ink/inkProfile';
import { measureInk } from '@/lib/ink/measureInk';
import type { PixelGrid } from '@/lib/picture/pixelGrid';
import { aPicture } from '@/tests/fixtures/aPicture';
import { clubWith } from '@/tests/fixtures/clubJob';

const grid = new Grid();

/** Cyan from x or y = 0 up to a share of the way, white beyond. */
function half(width: number, height: number, isInked: (x: number, y: number) => boolean): PixelGrid {
  const rgba = new Uint8Array(width * height * 4).fill(255);
  for (let y = 0; y < height; y += 1) {
    for (let x = 0; x < width; x += 1) if (isInked(x, y)) rgba[(y * width + x) * 4] = 0;
  }
  return { width, height, rgba };
}

describe('where the ink of a picture lies', () => {
  it('is told by strips that average to 1', () => {
    const { across, down } = inkProfile(half(64, 96, (x) => x < 32));
    expect(across.slice(0, 16)).toEqual(Array(16).fill(2));
    expect(across.slice(16)).toEqual(Array(16).fill(0));
    expect(down.every((ink) => Math.abs(ink - 1) < 1e-12)).toBe(true);
  });

  it('is even where there is none, and for pictures narrower than the strips', () => {
    expect(inkProfile(half(3, 2, () => false)).across).toEqual(Array(32).fill(1));
    const { across } = inkProfile(half(2, 40, () => true));
    expect(across).toEqual(Array(32).fill(1));
  });
});

describe('the ink of a print, against the ink of its picture', () => {
  const square = { ...aPicture(), width: 1000, height: 1000 };
  const middle = { ...square, inkAcross: inkProfile(half(64, 64, (x) => x >= 16 && x < 48)).across };

  it('thins out over bare strips', () => {
    expect(printedShare(square, { widthMm: 200, heightMm: 100 }, 'inside', 1)).toBeCloseTo(0.5, 12);
    expect(printedShare(square, { widthMm: 100, heightMm: 100 }, 'inside', 1)).toBeCloseTo(1, 12);
  });

  it('is that of the part shown where the picture is cropped', () => {
    // The middle half of the width is shown, and all the ink lies there.
    expect(printedShare(middle, { widthMm: 50, heightMm: 100 }, 'fill', 1)).toBeCloseTo(2, 9);
    expect(printedShare(middle, { widthMm: 100, heightMm: 50 }, 'fill', 1)).toBeCloseTo(1, 9);
  });

  describe('of cyan on the left and black on the right', () => {
    // Left half 100 % whatever the printer; right half 100 % with all grey in black, 200 % at 50 %, 300 % at none.
    const scene = half(64, 64, (x) => x < 32);
    for (let at = 0; at < scene.rgba.length; at += 4) {
      if ((at / 4) % 64 >= 32) scene.rgba.fill(0, at, at + 3);
    }
    const profile = inkProfile(scene);
    const picture = {
      ...square,
      coverage: measureInk(scene).coverage,
      inkAcross: [...profile.across],
      inkDown: [...profile.down],
      grey: { across: [...profile.grey.across], down: [...profile.grey.down], floodShares: [0, 0, 0, 0, 0] },
    };
    const inkOf = (one: typeof picture | (Omit<typeof picture, 'grey'> & { grey: null }), share: number) =>
      totalShare(withBlackShare(one.coverage, share)) *
      printedShare(one, { widthMm: 50, heightMm: 100 }, 'fill', share);

    it.each([
      [1, 1],
      [0.5, 1.5],
      [0, 2],
    ])('a share of %d in black: the middle half of both takes %d', (share, expected) => {
      expect(inkOf(picture, share)).toBeCloseTo(expected, 9);
    });

    it('goes by where the grey is, once the crop shows more of one side', () => {
      // Strips of the right third of the way stand alone where the picture is wider than it is shown.
      const right = { ...picture, width: 2000, inkAcross: rolled(picture.inkAcross) };
      const moved = { ...right, grey: { ...picture.grey, across: rolled(picture.grey.across) } };
      // The middle quarter is black now: 100, 200 and 300 %.
      for (const [share, expected] of [
        [1, 1],
        [0.5, 2],
        [0, 3],
      ] as const) {
        expect(inkOf(moved, share)).toBeCloseTo(expected, 9);
      }
      // Where nobody measured the grey it is taken to lie as all ink does: here as even as that.
      expect(inkOf({ ...moved, grey: null }, 0.5)).toBeCloseTo(1.5, 9);
    });

    /** A quarter of the way to the left, so that the middle half is the black one. */
    function rolled(strips: readonly number[]): number[] {
      return [...strips.slice(8), ...strips.slice(0, 8)];
    }
  });

  it('stays when stretched', () => {
    expect(printedShare(middle, { widthMm: 50, heightMm: 100 }, 'stretch', 1)).toBe(1);
  });
});

describe('costs of a picture that was read', () => {
  const readOf = (more: Readonly<Record<string, unknown>> = {}) =>
    clubWith({
      'artwork:hill-path.picture': aPicture({ width: 1600, height: 2000 }),
      'artwork:hill-path.pixels': { width: 1600, height: 2000 },
      'artwork:hill-path.coverage': null,
      'job.lines.0.placements.0.prints': [{ sizes: null, widthMm: 160, heightMm: 240 }],
      ...more,
    });
  const coverage = (input: ReturnType<typeof readOf>) => {
    const sheet = priceJob(input, grid).costSheet;
    return { value: sheet?.values.coverage_1?.[0], input: sheet?.inputs.cases[0]?.coverage_1 };
  };

  it('take its channels, thinned by the bare strips of its box, and say where they come from', () => {
    // 4 : 5 in a box of 160 × 240 mm covers 160 × 200 of it.
    const { value, input } = coverage(readOf());
    // 85 % with all grey in black; half of the 10 % grey in three inks instead adds 10 %.
    expect(value).toBeCloseTo(0.95 * (200 / 240), 12);
    expect(input).toMatchObject({
      origin: 'counted',
      about: 'read from the file “hill-path.png”, 50 % of its grey printed with black',
    });
  });

  it.each([
    [1, 0.85],
    [0, 1.05],
  ])('follow the printer of the job: %d of the grey in black is %d of ink', (value, total) => {
    const share = { value, unit: 'share', date: '2026-11-25', origin: 'yours' };
    const told = coverage(readOf({ 'workshop.printers.0.blackShare': share }));
    expect(told.value).toBeCloseTo(total * (200 / 240), 12);
  });

  it('stand on the typical share where nobody said it, and say so; of typed ink nobody is asked', () => {
    const unsaid = { 'workshop.printers.0.blackShare': null };
    expect(coverage(readOf(unsaid)).value).toBeCloseTo(0.95 * (200 / 240), 12);
    const missing = (input: ReturnType<typeof readOf>) =>
      checkJob(input).findings.filter(
        ({ id, where }) => id === 'RATE-01' && where.path.includes('blackShare'),
      );
    expect(missing(readOf(unsaid))).toMatchObject([{ severity: 'caution', facts: { typical: 0.5 } }]);
    expect(missing(clubWith(unsaid))).toEqual([]);
  });

  it('take the maker’s own figure where there is one', () => {
    const { value, input } = coverage(
      readOf({ 'artwork:hill-path.coverage': { kind: 'total', total: 1.4 } }),
    );
    expect(value).toBe(1.4);
    expect(input?.origin).toBe('yours');
  });
});
