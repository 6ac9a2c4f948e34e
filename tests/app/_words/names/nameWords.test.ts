import { describe, expect, it } from 'vitest';
import { measuresOf } from '@/app/_numbers/measures';
import { formatterFor } from '@/app/_words/formatter';
import { csvProblemWords } from '@/app/_words/names/csvProblemWords';
import { nameCountWords } from '@/app/_words/names/nameCountWords';
import { nameFaultWords, understoodWords } from '@/app/_words/names/nameFaultWords';
import { sizeFormWords } from '@/app/_words/names/sizeFormWords';
import { compareCounts } from '@/lib/names/compareCounts';
import type { NameFault } from '@/lib/names/namePreview';
import { sizeForm, sizeFormMessage } from '@/lib/names/sizeForm';

const formatter = formatterFor({ ...measuresOf(null), locale: 'en-US' });

describe('faults of a row', () => {
  it.each<[NameFault, string]>([
    [
      { code: 'unknownSize', asWritten: '5XL', nearest: '2XL' },
      'The blank has no size “5XL”. Nearest is 2XL.',
    ],
    [
      { code: 'unknownSize', asWritten: 'red', nearest: null },
      'The blank has no size “red”. Choose one it has.',
    ],
    [
      {
        code: 'twoMeanings',
        asWritten: '2 XL',
        offers: [
          { size: '2XL', pieces: 1 },
          { size: 'XL', pieces: 2 },
        ],
      },
      '“2 XL” can be 2XL or 2 of XL. Choose which is meant.',
    ],
    [
      { code: 'samePerson', lines: [4, 0] },
      'The same name stands twice. Also on line 4 and in the order already. Two people may share it; else remove one.',
    ],
    [
      { code: 'tooLong', part: 'name', letters: 239, most: 160 },
      'The name has 239 letters; 160 can be kept. The row waits here until it is shorter.',
    ],
    [
      { code: 'overMost', most: 2000 },
      'An order keeps 2,000 names for one item. The row waits here; put it into another item of the order.',
    ],
  ])('%o', (fault, words) => {
    const { sentence, detail } = nameFaultWords(fault, formatter);
    expect(`${sentence} ${detail}`).toBe(words);
  });

  it('are told apart from what was only understood', () => {
    expect(understoodWords({ code: 'size', asWritten: 'xx-large', size: '2XL', pieces: 1 })).toBe(
      '“xx-large” read as 2XL.',
    );
    expect(understoodWords({ code: 'size', asWritten: '2 x L', size: 'L', pieces: 2 })).toBe(
      '“2 x L” read as 2 of L.',
    );
  });
});

it('counts that differ are told size by size, and nothing where none does', () => {
  const rows = [...Array.from({ length: 12 }, () => ({ size: 'L' })), { size: '' }, { size: '7XL' }];
  const told = (quantity: number, of = rows) =>
    nameCountWords(compareCounts(of, [{ size: 'L', quantity }], ['M', 'L']), formatter);
  expect(told(11)).toBe(
    '11 pieces ordered, 14 names: 11 L ordered, 12 named; 1 in “7XL”, which the blank has not; 1 without a size.',
  );
  expect(told(12, rows.slice(0, 12))).toBeNull();
});

it('a file in letters of no told kind is not guessed at', () => {
  expect(csvProblemWords('club.csv', 'encoding')).toEqual({
    sentence: '“club.csv” does not tell how its letters are written.',
    detail: 'Names would come out wrong. Save it as CSV UTF-8, or copy its cells and paste them.',
  });
});

it('a size form says how it is filled', () => {
  expect(sizeFormMessage(sizeForm('Club shirts', ['S', 'M'], [], 0), sizeFormWords(false))).toBe(
    'Club shirts\nOne line for each person, with one of the sizes below.\nSize: S, M\n\nName; Size',
  );
});
