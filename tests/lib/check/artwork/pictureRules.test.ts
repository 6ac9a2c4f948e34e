import { describe, expect, it } from 'vitest';
import { checkJob } from '@/lib/check/checkJob';
import type { Picture } from '@/shared/schemas/picture';
import { aPicture } from '@/tests/fixtures/aPicture';
import { club, clubWith, mended, TODAY, told, verdict } from '@/tests/fixtures/clubJob';

const read = (fields: Partial<Picture> = {}, more: Readonly<Record<string, unknown>> = {}) =>
  clubWith({
    'artwork:hill-path.picture': aPicture(fields),
    'artwork:hill-path.pixels': { width: 1600, height: 2000 },
    'artwork:hill-path.coverage': null,
    ...more,
  });

describe('a picture that was read', () => {
  it('is silent where it is clean, and where there is none', () => {
    for (const id of ['ART-03', 'ART-06', 'ART-07', 'ART-08', 'ART-10', 'SUB-05'] as const) {
      expect(verdict(read(), id)).toBe('pass');
      expect(verdict(club(), id)).toBe('pass');
    }
  });
});

describe('ink that was read', () => {
  it('is not missing; it is again once the picture is taken out', () => {
    const missing = (input: ReturnType<typeof read>) =>
      checkJob(input).findings.filter(({ variant }) => variant === 'coverage').length;
    expect(missing(read())).toBe(0);
    expect(missing(clubWith({ 'artwork:hill-path.coverage': null }))).toBe(1);
  });
});

describe('ART-03 tells a file that was enlarged', () => {
  it.each([
    [2.99, 'pass'],
    [3, 'caution'],
    [null, 'pass'],
  ])('edges of %s px: %s', (edgeWidthPx, expected) => {
    expect(verdict(read({ edgeWidthPx }), 'ART-03')).toBe(expected);
  });
});

describe('ART-06 asks about a solid background', () => {
  const background = { rgb: [200, 30, 30] as [number, number, number], ink: 1.1, prints: true };

  it('asks once, and takes the answer', () => {
    const input = read({ background });
    expect(verdict(input, 'ART-06')).toBe('caution');
    expect(verdict(mended(input, told(input, 'ART-06')[0]), 'ART-06')).toBe('pass');
  });

  it('leaves a white ground alone: it prints nothing', () => {
    expect(verdict(read({ background: { ...background, ink: 0.01, prints: false } }), 'ART-06')).toBe('pass');
  });
});

describe('ART-07 notes what prints as a pale tint', () => {
  it.each([
    ['png', 0.02, 0, 'pass'],
    ['png', 0.0201, 0, 'note fading'],
    ['jpeg', 0, 0.01, 'pass'],
    ['jpeg', 0, 0.0101, 'note halo'],
    ['png', 0, 0.5, 'pass'],
  ] as const)('%s, %d fading, %d pale: %s', (format, softShare, paleShare, expected) => {
    expect(verdict(read({ format, softShare, paleShare }), 'ART-07')).toBe(expected);
  });
});

describe('ART-08 notes colours nobody has named', () => {
  it.each([
    ['sRGB', 'sRGB', 'pass'],
    ['profile', 'displayP3', 'pass'],
    ['profile', 'unknown', 'pass'],
    ['untagged', null, 'note untagged'],
    ['profile', 'unreadable', 'caution unreadable'],
  ] as const)('%s, %s: %s', (colourTag, profile, expected) => {
    expect(verdict(read({ colourTag, profile }), 'ART-08')).toBe(expected);
  });
});

describe('ART-17 warns of live text in a font that is not there', () => {
  it.each([
    [[], 'pass'],
    [['Futura'], 'caution'],
  ])('%j: %s', (liveFonts, expected) => {
    expect(verdict(read({ format: 'svg', liveFonts }), 'ART-17')).toBe(expected);
  });
});

describe('ART-10 judges heavy pixels', () => {
  it.each([
    [0.1, 'pass'],
    [0.1001, 'caution heavyPixels'],
    [0.4, 'caution heavyPixels'],
    [0.4001, 'stop tooHeavyPixels'],
  ])('a share of %d: %s', (heavyShare, expected) => {
    expect(verdict(read({ heavyShare }), 'ART-10')).toBe(expected);
  });

  const blackShareOf = (value: number) => ({
    'workshop.printers.0.blackShare': { value, unit: 'share', date: TODAY, origin: 'yours' },
  });
  const floods = (floodShares: readonly number[]) => ({
    grey: {
      across: Array.from({ length: 32 }, () => 1),
      down: Array.from({ length: 32 }, () => 1),
      floodShares: [...floodShares],
    },
  });

  it('lets black pass that a printer lays down with three inks beside it, and tells of what floods', () => {
    // All black: 200 % at 50 %, 250 % at 25 %, 300 % where the printer has no black.
    const dark = { coverage: { cyan: 0, magenta: 0, yellow: 0, black: 1 }, ...floods([1, 1, 1, 1, 1]) };
    for (const [share, expected] of [
      [1, 'pass'],
      [0.5, 'pass'],
      [0.25, 'pass'],
      [0.24, 'stop tooHeavyPixels'],
      [0, 'stop tooHeavyPixels'],
    ] as const) {
      expect(verdict(read(dark, blackShareOf(share)), 'ART-10'), String(share)).toBe(expected);
    }
  });

  it('adds what floods to what is heavy with colour; between two counts it goes by the lower share', () => {
    const picture = { heavyShare: 0.08, ...floods([0.2, 0.15, 0.1, 0.03, 0.01]) };
    const input = read(picture, blackShareOf(0.12));
    expect(verdict(input, 'ART-10')).toBe('caution heavyPixels');
    expect(told(input, 'ART-10')[0]).toMatchObject({ facts: { share: 0.18, flooded: 0.1 } });
    expect(verdict(read(picture, blackShareOf(0.2)), 'ART-10')).toBe('pass');
  });

  it('lets a stop pass with a reason', () => {
    const waiver = { finding: 'ART-10', placementId: 'back', lineId: null, reason: 'Swatch came out dry.' };
    const input = read({ heavyShare: 0.6 }, { 'job.waivers': [waiver] });
    expect(told(input, 'ART-10')[0]?.waivable).toBe(true);
    expect(checkJob(input).checked).not.toBeNull();
  });

  it('goes by the maker’s own figure where there is one', () => {
    const own = { 'artwork:hill-path.coverage': { kind: 'total', total: 2 } };
    expect(verdict(read({ heavyShare: 0.6 }, own), 'ART-10')).toBe('pass');
  });

  it('does not take a total that was read for one that was typed', () => {
    const coverage = { cyan: 0.9, magenta: 0.9, yellow: 0.9, black: 0 };
    expect(verdict(read({ coverage }), 'ART-10')).toBe('pass');
  });
});

describe('SUB-05 asks whether white may be bare cloth', () => {
  const natural = { name: 'natural', L: 89, a: 1, b: 5 };

  it.each([
    [0.005, 'pass'],
    [0.0051, 'caution'],
  ])('an enclosed share of %d on a natural shirt: %s', (enclosedWhiteShare, expected) => {
    expect(verdict(read({ enclosedWhiteShare }, { 'blank:white-shirt.colour': natural }), 'SUB-05')).toBe(
      expected,
    );
  });

  it.each([
    [90, 5, 'pass'],
    [89.9, 5, 'caution'],
    [90, 5.1, 'caution'],
  ])('cloth of L* %d and C* %d: %s', (L, b, expected) => {
    const colour = { name: 'cloth', L, a: 0, b };
    expect(verdict(read({ enclosedWhiteShare: 0.2 }, { 'blank:white-shirt.colour': colour }), 'SUB-05')).toBe(
      expected,
    );
  });

  it('takes the answer', () => {
    const input = read({ enclosedWhiteShare: 0.2 }, { 'blank:white-shirt.colour': natural });
    expect(verdict(mended(input, told(input, 'SUB-05')[0]), 'SUB-05')).toBe('pass');
  });
});

describe('ART-04 knows the shape of a drawing, which has no pixels of its own', () => {
  it.each([
    [1000, 'caution inside'],
    [1250, 'pass'],
  ])('1000 × %d in a box of 4 to 5: %s', (height, expected) => {
    const input = read({ format: 'svg', width: 1000, height }, { 'artwork:hill-path.pixels': null });
    expect(verdict(input, 'ART-04')).toBe(expected);
    expect(verdict(input, 'ART-01')).toBe('pass');
  });
});
