import { describe, expect, it } from 'vitest';
import { clubWith, mended, told, verdict } from '@/tests/fixtures/clubJob';

describe('QTY-03 knows the least order', () => {
  it.each([
    [null, 'order', 'pass'],
    [37, 'order', 'pass'],
    [38, 'order', 'caution'],
    [38, 'stock', 'pass'],
  ])('37 shirts where the least is %s, made for %s: %s', (leastPieces, madeFor, expected) => {
    const input = clubWith({ 'workshop.habits.leastPieces': leastPieces, 'job.madeFor': madeFor });
    expect(verdict(input, 'QTY-03')).toBe(expected);
  });

  it('leaves an empty job to QTY-02', () => {
    const input = clubWith({ 'workshop.habits.leastPieces': 12, 'job.lines.0.quantities': [] });
    expect(verdict(input, 'QTY-03')).toBe('pass');
  });
});

/** The six sizes of the club's shirt, S to 3XL. */
const mix = (pieces: readonly number[], audience: string | null = 'adults') =>
  clubWith({
    'job.lines.0.audience': audience,
    'job.lines.0.upCharges': [],
    'job.lines.0.quantities': ['S', 'M', 'L', 'XL', '2XL', '3XL'].map((size, index) => ({
      size,
      quantity: pieces[index] ?? 0,
    })),
  });

/*
 * Adults, common practice: S 11, M 24.5, L 30, XL 20.5, 2XL 9, 3XL 4 of 99 (XS 1 is not among the sizes), so S is
 * 11.1 %, M 24.7 %, L 30.3 %, XL 20.7 %, 2XL 9.1 %, 3XL 4.0 %; 15 points away is a note.
 */
describe('QTY-05 compares the mix with the crowd', () => {
  it.each([
    // S at 26 % is 14.9 points over, at 27 % 15.9.
    [[26, 20, 25, 17, 8, 4], 'adults', 'pass'],
    [[27, 19, 25, 17, 8, 4], 'adults', 'note more'],
    // L at 16 % is 14.3 points under, at 15 % 15.3.
    [[15, 30, 16, 24, 11, 4], 'adults', 'pass'],
    [[15, 30, 15, 25, 11, 4], 'adults', 'note fewer'],
    [[60, 20, 10, 10, 0, 0], null, 'pass'],
    // Eleven pieces are no crowd, twelve are.
    [[11, 0, 0, 0, 0, 0], 'adults', 'pass'],
    [[12, 0, 0, 0, 0, 0], 'adults', 'note more'],
  ])('%j for %s: %s', (pieces, audience, expected) => {
    const input = mix(pieces, audience);
    expect(verdict(input, 'QTY-05')).toBe(expected);
    if (expected !== 'pass') expect(verdict(mended(input, told(input, 'QTY-05')[0]), 'QTY-05')).toBe('pass');
  });

  it('names the size that is furthest off', () => {
    expect(told(mix([60, 15, 10, 10, 3, 2]), 'QTY-05')[0]?.facts).toMatchObject({ size: 'S', share: 0.6 });
  });

  it('does not hold a child’s M against the crowd of grown-ups, nor sizes of both against any', () => {
    const named = (names: readonly string[], audience: string) =>
      clubWith({
        'job.lines.0.audience': audience,
        'blank:white-shirt.forChildren': null,
        'blank:white-shirt.sizes': names.map((name) => ({
          ...clubWith({}).blanks['white-shirt']?.sizes[0],
          name,
        })),
        'job.lines.0.upCharges': [],
        'job.lines.0.quantities': [{ size: names[0], quantity: 30 }],
      });
    expect(verdict(named(['YS', 'YM'], 'youth'), 'QTY-05')).toBe('note more');
    expect(verdict(named(['YS', 'YM'], 'adults'), 'QTY-05')).toBe('pass');
    expect(verdict(named(['Youth S', 'Youth M'], 'women'), 'QTY-05')).toBe('pass');
    expect(verdict(named(['YS', 'YM', 'S', 'M'], 'youth'), 'QTY-05')).toBe('pass');
  });

  it('reads a youth’s letters, and is silent about sizes no curve knows', () => {
    const named = (name: string) =>
      clubWith({
        'job.lines.0.audience': 'youth',
        'blank:white-shirt.sizes': ['S', 'M'].map((letter) => ({
          ...clubWith({}).blanks['white-shirt']?.sizes[0],
          name: name.replace('*', letter),
        })),
        'job.lines.0.upCharges': [],
        'job.lines.0.quantities': [{ size: name.replace('*', 'S'), quantity: 30 }],
      });
    expect(verdict(named('Youth *'), 'QTY-05')).toBe('note more');
    expect(verdict(named('Y*'), 'QTY-05')).toBe('note more');
    expect(verdict(named('* slim'), 'QTY-05')).toBe('pass');
  });
});
