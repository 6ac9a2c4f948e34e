// @vitest-environment node
import { expect, it } from 'vitest';
import { pictureProblemWords } from '@/app/_words/docket/pictureProblemWords';
import type { PictureProblem } from '@/lib/picture/pictureProblem';

const size = { width: 30_000, height: 20 };
const problems: readonly PictureProblem[] = [
  { kind: 'empty' },
  { kind: 'tooManyBytes', bytes: 5e9, most: 1e8 },
  { kind: 'notAPicture', bytes: 5, begins: '68 65' },
  { kind: 'otherFormat', format: 'PDF' },
  { kind: 'cutShort', format: 'png', bytes: 50 },
  { kind: 'damaged', format: 'jpeg', part: 'SOF' },
  { kind: 'tooLong', ...size, mostSidePx: 16_384 },
  { kind: 'tooManyPixels', ...size, most: 5e7 },
  { kind: 'tooSmall', width: 1, height: 1, leastSidePx: 2 },
  { kind: 'cmyk', marker: 'adobe' },
  { kind: 'cmyk', marker: 'none' },
  { kind: 'oddCoding', coding: 'lossless' },
  { kind: 'svgUnsafe', found: 'script', text: '<script>' },
  { kind: 'svgTooMuch', load: { what: 'copies', count: 248_831, most: 20_000 } },
  { kind: 'svgTooMuch', load: { what: 'copies', count: 1e12, most: 20_000 } },
  { kind: 'svgTooMuch', load: { what: 'shapes', count: 100_001, most: 100_000 } },
  { kind: 'svgTooMuch', load: { what: 'effects', count: 202, most: 200 } },
  { kind: 'svgTooMuch', load: { what: 'elements', count: 400_000, most: 400_000 } },
  { kind: 'svgTooMuch', load: { what: 'loop', name: 'star' } },
  { kind: 'svgSize', state: 'none', given: '' },
  { kind: 'svgSize', state: 'zero', given: 'width 0' },
  { kind: 'cannotDecode', format: 'webp', why: 'bad data' },
  { kind: 'sizeDiffers', declared: size, decoded: { width: 9, height: 9 } },
];

it('says of every kind of bad picture what is wrong and what to do, each in its own words', () => {
  const said = problems.map((problem) => pictureProblemWords(problem, 'en'));
  expect(new Set(said.map(({ sentence }) => sentence)).size).toBe(problems.length);
  for (const { sentence, detail } of said) {
    expect(sentence).toMatch(/^The .+/);
    expect(detail).toMatch(/^[A-Z].+\.$/);
    expect(sentence + detail).not.toMatch(/undefined|NaN|\[object/);
  }
});

it('writes figures the way of the language', () => {
  expect(pictureProblemWords({ kind: 'tooLong', ...size, mostSidePx: 16_384 }, 'de').sentence).toContain(
    '30.000 × 20 px',
  );
});

it('tells how much a drawing would have to draw, and how much is drawn at most', () => {
  const load = { what: 'copies', count: 248_831, most: 20_000 } as const;
  expect(pictureProblemWords({ kind: 'svgTooMuch', load }, 'en').sentence).toBe(
    'The SVG draws 248,831 copies of its own parts; at most 20,000 are drawn.',
  );
});
