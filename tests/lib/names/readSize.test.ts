import { describe, expect, it } from 'vitest';
import { readSize } from '@/lib/names/readSize';

const SIZES = ['XS', 'S', 'M', 'L', 'XL', '2XL', '3XL'];
const known = (size: string, pieces = 1) => ({ state: 'known', size, pieces, isAsWritten: false });

describe('readSize', () => {
  it.each([
    ['L', 'L'],
    ['xl', 'XL'],
    [' 2xl ', '2XL'],
  ])('takes “%s” as written', (text, size) =>
    expect(readSize(text, SIZES)).toEqual({ state: 'known', size, pieces: 1, isAsWritten: true }),
  );

  // Spellings of order lists, common practice.
  it.each([
    ['large', 'L'],
    ['Lg', 'L'],
    ['Medium', 'M'],
    ['sm.', 'S'],
    ['X-Large', 'XL'],
    ['extra large', 'XL'],
    ['1XL', 'XL'],
    ['XXL', '2XL'],
    ['xx-large', '2XL'],
    ['2X', '2XL'],
    ['Double XL', '2XL'],
    ['XXXL', '3XL'],
    ['3x-large', '3XL'],
    ['x small', 'XS'],
    ['Ｌ', 'L'],
    ['М (Cyrillic)'.slice(0, 1), 'M'],
    ['ХХL (Cyrillic Х)'.slice(0, 3), '2XL'],
  ])('understands “%s” as %s and says so', (text, size) =>
    expect(readSize(text, SIZES)).toEqual(known(size)),
  );

  it.each([
    ['2 x L', 'L', 2],
    ['2 × L', 'L', 2],
    ['2×XL', 'XL', 2],
    ['3 x large', 'L', 3],
    ['2 of M', 'M', 2],
    ['L (2)', 'L', 2],
    ['L x 2', 'L', 2],
    ['L x2', 'L', 2],
    ['XXL: 4', '2XL', 4],
    ['2 S', 'S', 2],
    ['L, L', 'L', 2],
  ])('understands “%s” as so many', (text, size, pieces) =>
    expect(readSize(text, SIZES)).toEqual(known(size, pieces)),
  );

  it('guesses nothing where two things can be meant', () => {
    expect(readSize('2 XL', SIZES)).toEqual({
      state: 'twoMeanings',
      offers: [
        { size: '2XL', pieces: 1 },
        { size: 'XL', pieces: 2 },
      ],
    });
    expect(readSize('2L', SIZES)).toEqual({
      state: 'twoMeanings',
      offers: [
        { size: '2XL', pieces: 1 },
        { size: 'L', pieces: 2 },
      ],
    });
  });

  it('never takes a size that the blank is not made in for a count of another', () => {
    expect(readSize('2XL', ['S', 'M', 'L', 'XL'])).toEqual({ state: 'unknown', nearest: 'XL' });
  });

  it.each([
    ['4XL', '3XL'],
    ['XXS', 'XS'],
    ['Lx', 'L'],
    ['banana', null],
    ['', undefined],
  ])('offers the nearest of the blank for “%s”: %s', (text, nearest) =>
    expect(readSize(text, SIZES)).toEqual(
      nearest === undefined ? { state: 'none' } : { state: 'unknown', nearest },
    ),
  );

  it('offers the larger of two that are as near, and keeps youth sizes apart', () => {
    expect(readSize('M', ['S', 'L'])).toEqual({ state: 'unknown', nearest: 'L' });
    expect(readSize('youth medium', ['M', 'YM'])).toEqual(known('YM'));
    expect(readSize('11', ['11 oz', '15 oz'])).toEqual({ state: 'unknown', nearest: '11 oz' });
  });

  it.each([
    ['M/L', ['M', 'L'], [1, 1]],
    ['S or M', ['S', 'M'], [1, 1]],
    ['2 x S, 1 x M', ['S', 'M'], [2, 1]],
  ])('tells several sizes in one cell: “%s”', (text, sizes, pieces) =>
    expect(readSize(text, SIZES)).toEqual({
      state: 'several',
      sizes: sizes.map((size, at) => ({ size, pieces: pieces[at] })),
    }),
  );

  it('takes a size with a stroke in its name as the blank has it', () => {
    expect(readSize('5-6', ['3/4', '5/6'])).toEqual(known('5/6'));
    expect(readSize('S/M', ['S/M', 'L/XL'])).toMatchObject({ size: 'S/M', isAsWritten: true });
  });
});
