import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { contrast } from '@/tests/tools/contrast';

const css = readFileSync(new URL('../../app/tokens.css', import.meta.url), 'utf8');
const themes = { day: 1, night: 2 } as const;

/** Reads a colour of the look from the very file the pages use. */
function token(name: string, theme: keyof typeof themes): string {
  const found = new RegExp(`--${name}: light-dark\\((#[0-9a-f]{6}), (#[0-9a-f]{6})\\);`).exec(css);
  const colour = found?.[themes[theme]];
  if (!colour) throw new Error(`tokens.css has no --${name} of the form light-dark(#day, #night)`);
  return colour;
}

const findings = ['stop', 'caution', 'note'] as const;
const families = ['materials-1', 'time-1', 'running-1', 'loss', 'house'] as const;

/** Every pair in which words stand on a ground. */
const textPairs: readonly (readonly [string, string])[] = [
  ...['ink', 'ink-2', 'ink-3', 'ember', 'stop'].flatMap((text) =>
    ['paper', 'sheet'].map((ground) => [text, ground] as const),
  ),
  ['ink', 'well'],
  ['ink-2', 'well'],
  ['on-ink', 'ink'],
  ['on-ink', 'ember'],
  ...findings.flatMap((finding) =>
    [finding, 'ink', 'ink-2', 'ink-3', 'ember'].map((text) => [text, `${finding}-ground`] as const),
  ),
  ['stop', 'caution-ground'],
  ['stop', 'note-ground'],
];

/** Every line or shape that must be seen to use the page. */
const shapePairs: readonly (readonly [string, string])[] = [
  ...['edge', 'ink', 'cold', 'hot', 'focus', ...findings, ...families].flatMap((shape) =>
    ['paper', 'sheet'].map((ground) => [shape, ground] as const),
  ),
  ...findings.flatMap((finding) =>
    ['focus', 'ink', 'edge', finding].map((shape) => [shape, `${finding}-ground`] as const),
  ),
  ['focus', 'well'],
];

describe('contrast(a, b) follows WCAG 2.2', () => {
  it.each([
    // W3C, WCAG 2.2 definition of contrast ratio; W3C technique G18 and common reference pairs.
    ['#000000', '#ffffff', 21],
    ['#767676', '#ffffff', 4.54],
    ['#777777', '#ffffff', 4.48],
    ['#949494', '#ffffff', 3.03],
    ['#ffffff', '#ffffff', 1],
  ])('of %s on %s is %d', (a, b, ratio) => {
    expect(contrast(a, b)).toBeCloseTo(ratio, 2);
    expect(contrast(b, a)).toBe(contrast(a, b));
  });
});

describe.each(['day', 'night'] as const)('by %s', (theme) => {
  it.each(textPairs)('the words in %s can be read on %s', (text, ground) => {
    expect(contrast(token(text, theme), token(ground, theme))).toBeGreaterThanOrEqual(4.5);
  });

  it.each(shapePairs)('the shapes in %s can be seen on %s', (shape, ground) => {
    expect(contrast(token(shape, theme), token(ground, theme))).toBeGreaterThanOrEqual(3);
  });

  it('the heat scale keeps its order: each step is told from the next by hue or light', () => {
    const heats = ['cold', 'cool', 'tepid', 'warm', 'hot', 'scorch'].map((heat) => token(heat, theme));
    expect(new Set(heats).size).toBe(heats.length);
  });
});

it('the words on the selection can be read by day and night', () => {
  for (const theme of ['day', 'night'] as const)
    expect(contrast('#1f2333', token('warm', theme))).toBeGreaterThanOrEqual(4.5);
});

/**
 * The sales count is read in the sun. Its quiet colours are made ink (`Count.module.css`), also those of the controls
 * that it shares with other screens.
 */
describe('the sales count', () => {
  const room = new URL('../../app/_count/', import.meta.url);
  const textOf = (sheet: string) => readFileSync(new URL(sheet, room), 'utf8');
  const sheets = readdirSync(room, { recursive: true, encoding: 'utf8' }).filter((name) =>
    name.endsWith('.css'),
  );
  const madeInk = [...textOf('Count.module.css').matchAll(/--([a-z0-9-]+): var\(--ink\);/g)].map(
    ([, name]) => name,
  );
  const written = sheets.flatMap((sheet) =>
    [...textOf(sheet).matchAll(/(?:^|[^-])color: var\(--([a-z0-9-]+)\)/g)].map(([, name]) => name),
  );

  it('writes in ink, or the other way round', () => {
    expect(sheets.length).toBeGreaterThan(4);
    expect(new Set(written)).toEqual(new Set(['ink', 'on-ink']));
    expect(new Set(madeInk)).toEqual(new Set(['ink-2', 'ink-3', 'edge', 'ember', 'caution', 'note']));
  });

  it.each([
    ['ink', 'paper'],
    ['ink', 'sheet'],
    ['ink', 'well'],
    ['ink', 'stop-ground'],
    ['ink', 'caution-ground'],
    ['ink', 'note-ground'],
    ['on-ink', 'ink'],
    // A field that cannot take what is typed says so.
    ['stop', 'sheet'],
  ])('has words in %s on %s at 7 to 1 by day and night', (text, ground) => {
    for (const theme of ['day', 'night'] as const)
      expect(contrast(token(text, theme), token(ground, theme)), theme).toBeGreaterThanOrEqual(7);
  });
});
