import { describe, expect, it } from 'vitest';
import { mmFromInches } from '@/shared/units';
import { changed, clubWith, mended, told, verdict } from '@/tests/fixtures/clubJob';

const back = (widthIn: number, heightIn: number) =>
  clubWith({
    'artwork:hill-path.pixels': null,
    'job.lines.0.placements.0.prints': [
      { sizes: null, widthMm: mmFromInches(widthIn), heightMm: mmFromInches(heightIn) },
    ],
  });

// The example's S takes 9.5 × 11 in, M 10 × 12, L 10.5 × 12.5, XL and up 11 × 13.
describe('PLC-01 knows the largest print of each size', () => {
  it.each([
    [9.02, 10.4, 'pass', ''],
    [9.03, 10.4, 'caution near', 'S'],
    [9, 10.46, 'caution near', 'S'],
    [9.5, 11, 'caution near', 'S'],
    [9.51, 11, 'stop over', 'S'],
    [10.2, 11, 'stop over', 'S, M'],
    [11.1, 11, 'stop over', 'S, M, L, XL, 2XL, 3XL'],
  ])('%d × %d in: %s %s', (width, height, expected, sizes) => {
    const input = back(width, height);
    expect(verdict(input, 'PLC-01')).toBe(expected);
    expect(told(input, 'PLC-01')[0]?.facts.sizes ?? '').toBe(sizes);
  });

  it('gives the crowded sizes a print of their own and leaves the others', () => {
    const input = back(9.6, 10);
    const after = mended(input, told(input, 'PLC-01')[0]);
    expect(after.job.lines[0]?.placements[0]?.prints).toMatchObject([
      { sizes: null, widthMm: mmFromInches(9.6) },
      { sizes: ['S', 'M'] },
    ]);
    expect(verdict(after, 'PLC-01')).toBe('pass');
  });

  it('shrinks the print where all sizes are crowded', () => {
    const input = back(11.5, 13.5);
    const after = mended(input, told(input, 'PLC-01')[0]);
    expect(after.job.lines[0]?.placements[0]?.prints).toHaveLength(1);
    expect(verdict(after, 'PLC-01')).toBe('pass');
  });

  it('judges each print of a placement by the sizes that get it', () => {
    const input = clubWith({
      'job.lines.0.placements.0.prints': [
        { sizes: ['S', 'M'], widthMm: mmFromInches(8), heightMm: mmFromInches(10) },
        { sizes: null, widthMm: mmFromInches(10.4), heightMm: mmFromInches(10) },
      ],
    });
    expect(told(input, 'PLC-01').map(({ facts }) => facts.sizes)).toEqual(['L']);
  });
});

// The example's S is 18 in wide, 3XL 28 in.
describe('PLC-02 notes one print for a wide run of sizes', () => {
  it.each([
    [6.99, 'note tiny'],
    [7, 'pass'],
    [11.7, 'pass'],
    [11.71, 'note wide'],
  ])('%d in wide: %s', (width, expected) => {
    expect(verdict(back(width, 9), 'PLC-02')).toBe(expected);
  });

  it('speaks of fronts and backs only', () => {
    const badge = clubWith({ 'job.lines.0.placements.0.position': 'leftChest' });
    expect(verdict(changed(badge, { 'job.lines.0.placements.0.prints.0.widthMm': 50 }), 'PLC-02')).toBe(
      'pass',
    );
  });
});

// The platen is 15 × 15 in; its outer 0.5 in runs cooler.
describe('PLC-05 wants the platen to reach past the print', () => {
  it.each([
    [14, 14, 'pass'],
    [14.01, 14, 'caution edge'],
    [15, 15, 'caution edge'],
    [15.01, 10, 'stop over'],
    [10, 15.01, 'stop over'],
  ])('%d × %d in: %s', (width, height, expected) => {
    expect(verdict(back(width, height), 'PLC-05')).toBe(expected);
  });

  it('allows the piece to be turned on a long platen', () => {
    const long = { widthMm: mmFromInches(16), heightMm: mmFromInches(20) };
    expect(verdict(changed(back(18, 14), { 'workshop.presses.0.platen': long }), 'PLC-05')).toBe('pass');
  });

  it('is mended by its button', () => {
    const input = back(16, 14);
    expect(verdict(mended(input, told(input, 'PLC-05')[0]), 'PLC-05')).toBe('pass');
  });
});

describe('PLC-08 protects the finished side', () => {
  it.each([
    [0, false, 'pass'],
    [1, false, 'caution'],
    [1, true, 'pass'],
  ])('placement %d, barrier %s: %s', (index, barrier, expected) => {
    const input = clubWith({ [`job.lines.0.placements.${index}.recipe.barrierPaper`]: barrier });
    expect(verdict(input, 'PLC-08')).toBe(expected);
  });

  it('is mended by its button', () => {
    const input = clubWith({ 'job.lines.0.placements.1.recipe.barrierPaper': false });
    expect(verdict(mended(input, told(input, 'PLC-08')[0]), 'PLC-08')).toBe('pass');
  });
});
