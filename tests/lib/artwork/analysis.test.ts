import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { analysePicture, type PictureAnalysis } from '@/lib/artwork/analysePicture';
import { clothRgb } from '@/lib/artwork/clothRgb';
import { previewOnCloth } from '@/lib/artwork/previewOnCloth';
import { croppedSource, type PictureSource, sourceOf } from '@/lib/picture/pictureSource';
import type { PixelGrid } from '@/lib/picture/pixelGrid';
import { turnMatrix } from '@/lib/picture/turnMatrix';
import { black, clear, cyan, gridOf, type Pixel, white } from '@/tests/fixtures/pictures/gridOf';
import { cases } from '@/tests/tools/cases';

function analyse(picture: PixelGrid | PictureSource): PictureAnalysis {
  const steps = analysePicture('read' in picture ? picture : sourceOf(picture));
  for (;;) {
    const step = steps.next();
    if (step.done) return step.value;
  }
}

const inside = (x: number, y: number, left: number, top: number, right: number, bottom: number) =>
  x >= left && x < right && y >= top && y < bottom;

describe('analysePicture', () => {
  it('tells its progress, from above 0 to 1, and can be left between two steps', () => {
    const steps = analysePicture(sourceOf(gridOf(1000, 1200, () => cyan)));
    expect([steps.next().value, steps.next().value, steps.next().value]).toEqual([
      500 / 1200,
      1000 / 1200,
      1,
    ]);
    expect(steps.next()).toMatchObject({ done: true, value: { ink: { coverage: { cyan: 1 } } } });
    expect(analysePicture(sourceOf(gridOf(9, 9, () => cyan))).return(undefined as never).done).toBe(true);
  });

  it('measures the part that is printed where a picture is cropped', () => {
    const half = sourceOf(gridOf(20, 10, (x) => (x < 10 ? white : cyan)));
    const cropped = croppedSource(half, { x: 5, y: 0, width: 10, height: 10 });
    expect(analyse(cropped).ink.coverage.cyan).toBeCloseTo(0.5, 12);
    expect(analyse(croppedSource(half, { x: 10, y: 2, width: 10, height: 4 })).ink.coverage.cyan).toBe(1);
  });
});

describe('clear edges', () => {
  it('are what lies outside the box of the content', () => {
    const grid = gridOf(40, 30, (x, y) => (inside(x, y, 5, 3, 25, 28) ? cyan : clear));
    expect(analyse(grid).clear).toEqual({
      content: { kind: 'box', x: 5, y: 3, width: 20, height: 25 },
      softShare: 0,
    });
  });
  it('are the whole of a picture that is clear throughout', () => {
    expect(analyse(gridOf(9, 9, () => clear))).toMatchObject({
      clear: { content: { kind: 'nothing' } },
      background: { kind: 'none' },
    });
  });
  it('never cut off a pixel that is not clear, wherever it is', () => {
    const places = fc.array(fc.tuple(fc.nat(19), fc.nat(14)), { minLength: 1, maxLength: 5 });
    fc.assert(
      fc.property(places, (points) => {
        const grid = gridOf(20, 15, (x, y) =>
          points.some(([a, b]) => a === x && b === y) ? [9, 9, 9, 1] : clear,
        );
        const [xs, ys] = [points.map(([x]) => x), points.map(([, y]) => y)];
        const [x, y] = [Math.min(...xs), Math.min(...ys)];
        expect(analyse(grid).clear.content).toEqual({
          kind: 'box',
          x,
          y,
          width: Math.max(...xs) - x + 1,
          height: Math.max(...ys) - y + 1,
        });
      }),
      cases(200),
    );
  });
  it('that fade count as soft', () => {
    const grid = gridOf(10, 10, (x) => (x < 5 ? cyan : x < 7 ? [0, 255, 255, 100] : clear));
    expect(analyse(grid).clear.softShare).toBeCloseTo(2 / 7, 12);
  });
});

describe('an opaque background', () => {
  const blob = (ground: Pixel) =>
    gridOf(60, 60, (x, y) => (Math.hypot(x - 30, y - 30) < 20 ? black : ground));
  test.each<[string, PixelGrid, object]>([
    [
      'of one colour is a box that prints',
      blob([250, 200, 200, 255]),
      { kind: 'box', rgb: [250, 200, 200], prints: true },
    ],
    [
      'of white is a box that prints nothing',
      blob(white),
      { kind: 'box', rgb: [255, 255, 255], prints: false },
    ],
    ['is none where the ground is clear', blob(clear), { kind: 'none' }],
    [
      'is none in a picture that reaches the edge',
      gridOf(60, 60, (x) => [x * 4, 90, 90, 255]),
      { kind: 'none' },
    ],
    [
      'is found within clear edges',
      gridOf(60, 60, (x, y) => (inside(x, y, 9, 9, 50, 40) ? [9, 99, 9, 255] : clear)),
      { kind: 'box', rgb: [9, 99, 9] },
    ],
    [
      'is found through the noise of a JPEG',
      gridOf(60, 60, (x, y) => [200 + ((x * 7 + y * 3) % 9), 100 - ((x + y) % 5), 100, 255]),
      { kind: 'box', prints: true },
    ],
  ])('%s', (_, grid, expected) => expect(analyse(grid).background).toMatchObject(expected));
});

describe('white', () => {
  const ring = (ground: Pixel) =>
    gridOf(90, 90, (x, y) => {
      const far = Math.hypot(x - 45, y - 45);
      return far < 15 ? white : far < 35 ? black : ground;
    });
  const disc = (Math.PI * 15 ** 2) / 90 ** 2;

  it('that ink encloses is told from white ground', () => {
    const { share, enclosedShare } = analyse(ring(white)).white;
    expect(enclosedShare).toBeCloseTo(disc, 2);
    expect(share).toBeCloseTo(1 - (Math.PI * (35 ** 2 - 15 ** 2)) / 90 ** 2, 2);
  });
  it('on clear ground is white all the same', () => {
    expect(analyse(ring(clear)).white.share).toBeCloseTo(disc, 2);
  });
  it('is none in a picture that is clear', () => {
    expect(analyse(gridOf(9, 9, () => [255, 255, 255, 0])).white).toEqual({ share: 0, enclosedShare: 0 });
  });
  it('is found in a large picture by its map', () => {
    const grid = gridOf(900, 600, (x, y) => (inside(x, y, 300, 200, 500, 300) ? white : black));
    expect(analyse(grid).white.enclosedShare).toBeCloseTo((200 * 100) / (900 * 600), 2);
  });
});

describe('edges', () => {
  const bars = (blur: number) =>
    gridOf(240, 60, (x) => {
      const place = (x % 40) - 20;
      const share = blur === 0 ? Number(place >= 0) : Math.min(1, Math.max(0, place / blur + 0.5));
      return [255 * share, 255 * share, 255 * share, 255];
    });
  test('of a drawn picture take less than a pixel', () => {
    const { edges } = analyse(bars(0));
    expect(edges).toMatchObject({ kind: 'measured', isSoft: false });
    if (edges.kind === 'measured') expect(edges.widthPx).toBeCloseTo(0.8, 6);
  });
  test('that climb over 8 px take eight tenths of that, and look enlarged', () => {
    const { edges } = analyse(bars(8));
    expect(edges).toMatchObject({ kind: 'measured', isSoft: true });
    if (edges.kind === 'measured') expect(edges.widthPx).toBeGreaterThan(5.5);
    if (edges.kind === 'measured') expect(edges.widthPx).toBeLessThan(7.5);
  });
  test('are not judged where there are few', () => {
    expect(analyse(gridOf(60, 60, () => cyan)).edges).toEqual({ kind: 'unknown' });
  });
});

describe('previewOnCloth', () => {
  const onCloth = (pixel: Pixel, cloth: readonly [number, number, number]) => [
    ...previewOnCloth(
      gridOf(1, 1, () => pixel),
      cloth,
    ).rgba,
  ];
  test.each<[string, Pixel, readonly [number, number, number], readonly number[]]>([
    ['white shows the cloth', white, [200, 150, 90], [200, 150, 90, 255]],
    ['clear shows the cloth', [7, 7, 7, 0], [200, 150, 90], [200, 150, 90, 255]],
    ['ink on white is itself', [12, 130, 240, 255], [255, 255, 255], [12, 130, 240, 255]],
    ['black is black on any cloth', black, [200, 150, 90], [0, 0, 0, 255]],
    // Light of 128 is 0.215861; of both together 0.046596, which is 60.7 of 255.
    ['greys multiply as light', [128, 128, 128, 255], [128, 128, 128], [61, 61, 61, 255]],
  ])('%s', (_, pixel, cloth, shown) => expect(onCloth(pixel, cloth)).toEqual(shown));

  it('never shows anything lighter than the cloth', () => {
    const byte = fc.nat(255);
    fc.assert(
      fc.property(fc.tuple(byte, byte, byte, byte), fc.tuple(byte, byte, byte), (pixel, cloth) => {
        const shown = onCloth(pixel, cloth);
        for (const channel of [0, 1, 2] as const) expect(shown[channel]).toBeLessThanOrEqual(cloth[channel]);
      }),
      cases(100),
    );
  });

  // Lindbloom's and others' tables of sRGB primaries in L*a*b* for D65.
  test.each([
    ['white', { L: 100, a: 0, b: 0 }, [255, 255, 255]],
    ['black', { L: 0, a: 0, b: 0 }, [0, 0, 0]],
    ['red', { L: 53.2408, a: 80.0925, b: 67.2032 }, [255, 0, 0]],
    ['green', { L: 87.7347, a: -86.1827, b: 83.1793 }, [0, 255, 0]],
    ['middle grey', { L: 53.585, a: 0, b: 0 }, [128, 128, 128]],
  ])('the colour of a %s cloth', (_, lab, rgb) => {
    for (const [index, channel] of clothRgb(lab).entries()) {
      expect(Math.abs(channel - (rgb[index] ?? -9))).toBeLessThan(1);
    }
  });
});

// Exif 2.32, tag 0112: which corner of the upright picture the first stored pixel goes to.
describe('turnMatrix puts the first stored pixel in its corner', () => {
  test.each([
    [1, 'top left'],
    [2, 'top right'],
    [3, 'bottom right'],
    [4, 'bottom left'],
    [5, 'top left'],
    [6, 'top right'],
    [7, 'bottom right'],
    [8, 'bottom left'],
  ] as const)('%d: %s', (orientation, corner) => {
    const [a, b, c, d, e, f] = turnMatrix(orientation, { width: 30, height: 20 });
    const x = a * 0.5 + c * 0.5 + e;
    const y = b * 0.5 + d * 0.5 + f;
    const [width, height] = orientation >= 5 ? [20, 30] : [30, 20];
    expect([
      x < 1 ? 'left' : x > width - 1 ? 'right' : '',
      y < 1 ? 'top' : y > height - 1 ? 'bottom' : '',
    ]).toEqual(corner.split(' ').reverse());
    // The long side goes down the page from 5 on.
    expect([Math.abs(a), Math.abs(b)]).toEqual(orientation >= 5 ? [0, 1] : [1, 0]);
  });
});
