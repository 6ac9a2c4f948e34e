import { describe, expect, it } from 'vitest';
import { findingWords } from '@/app/_words/findings/findingWords';
import { mmFromInches } from '@/shared/units';
import { changed, clubWith, mended, mugsWith, told, verdict } from '@/tests/fixtures/clubJob';

const drop = (inches: number, position = 'front') =>
  clubWith({
    'job.lines.0.placements.0.position': position,
    'job.lines.0.placements.0.dropFromCollarMm': mmFromInches(inches),
  });

// 2 in is usual, 1.25 to 4 in the range; a youth's 1.5 to 2.5 in; a back 3 to 4 in: common practice.
describe('PLC-03 places a print below the collar', () => {
  it.each([
    [1.24, 'front', 'caution high'],
    [1.25, 'front', 'pass'],
    [4, 'front', 'pass'],
    [4.01, 'front', 'caution low'],
    [2.99, 'back', 'caution high'],
    [3, 'back', 'pass'],
    [4, 'back', 'pass'],
    [4.01, 'back', 'caution low'],
    [9, 'leftChest', 'pass'],
    [0, 'leftSleeve', 'pass'],
  ])('%d in, %s: %s', (inches, position, expected) => {
    const input = drop(inches, position);
    expect(verdict(input, 'PLC-03')).toBe(expected);
    if (expected !== 'pass') expect(verdict(mended(input, told(input, 'PLC-03')[0]), 'PLC-03')).toBe('pass');
  });

  it.each([
    [1.49, 'caution high'],
    [1.5, 'pass'],
    [2.5, 'pass'],
    [2.51, 'caution low'],
  ])('%d in on a child’s front: %s', (inches, expected) => {
    const input = changed(drop(inches), { 'blank:white-shirt.forChildren': true });
    expect(verdict(input, 'PLC-03')).toBe(expected);
  });

  it('proposes whole half centimetres where the maker reads millimetres', () => {
    const input = changed(drop(9), { 'workshop.units.length': 'mm' });
    expect(told(input, 'PLC-03')[0]?.fix?.facts).toEqual({ mm: 50 });
  });

  it('proposes a length that somebody would type', () => {
    // 3.5 in are 88.9 mm.
    expect(told(drop(9, 'back'), 'PLC-03')[0]?.fix?.facts).toEqual({ mm: 88.9 });
  });

  it.each([
    [1, 'Nearer than 1.25 in the collar'],
    [9, 'Lower than 4 in the print'],
  ])('names the limit that %d in goes past', (inches, words) => {
    const [finding] = told(drop(inches), 'PLC-03');
    if (finding === undefined) throw new Error('nothing is said of the print');
    const units = { length: 'in', temperature: 'F', pressure: 'psi', volume: 'mL', distance: 'mi' } as const;
    expect(findingWords(finding, { locale: 'en-US', currency: 'USD', units }).detail).toContain(words);
  });

  it('asks nothing of what has no collar', () => {
    expect(verdict(clubWith({ 'job.lines.0.placements.0.dropFromCollarMm': null }), 'PLC-03')).toBe('pass');
    expect(verdict(changed(drop(9), { 'blank:white-shirt.kind': 'bag' }), 'PLC-03')).toBe('pass');
  });
});

const badge = (width: number, height: number) =>
  clubWith({
    'artwork:club-crest.pixels': null,
    'job.lines.0.placements.1.prints': [
      { sizes: null, widthMm: mmFromInches(width), heightMm: mmFromInches(height) },
    ],
  });

// 3 to 4 in is usual, 2.5 to 4.5 in the range: common practice.
describe('PLC-04 knows the size of a badge', () => {
  it.each([
    [2.5, 1, 'pass'],
    [2.49, 1, 'note small'],
    [4.5, 2, 'pass'],
    [4.51, 2, 'note large'],
    [2, 4.51, 'note large'],
  ])('%d × %d in: %s', (width, height, expected) => {
    const input = badge(width, height);
    expect(verdict(input, 'PLC-04')).toBe(expected);
    if (expected !== 'pass') expect(verdict(mended(input, told(input, 'PLC-04')[0]), 'PLC-04')).toBe('pass');
  });

  it('lets a child’s badge be small, and leaves other places alone', () => {
    expect(verdict(changed(badge(2, 2), { 'blank:white-shirt.forChildren': true }), 'PLC-04')).toBe('pass');
    expect(
      verdict(changed(badge(2, 2), { 'job.lines.0.placements.1.position': 'leftSleeve' }), 'PLC-04'),
    ).toBe('pass');
  });
});

/* A platen of 15 × 15 in, half an inch between pieces: of 3 in wide prints (15 + 0.5) ÷ 3.5 = 4 go along a side. */
describe('PLC-06 counts the pieces on the platen', () => {
  const tags = (piecesPerPress: number, width: number, pieceIn: number | null = null) =>
    clubWith({
      'job.lines.0.placements.0.prints': [
        { sizes: null, widthMm: mmFromInches(width), heightMm: mmFromInches(width) },
      ],
      'job.lines.0.placements.0.recipe.steps.piecesPerPress': piecesPerPress,
      'blank:white-shirt.sizes': clubWith({}).blanks['white-shirt']?.sizes.map((size) => ({
        ...size,
        widthMm: pieceIn === null ? null : mmFromInches(pieceIn),
      })),
    });

  it.each([
    [1, 20, null, 'pass'],
    [16, 3, null, 'pass'],
    [17, 3, null, 'stop platen'],
    [9, 4.6, null, 'pass'],
    [10, 4.6, null, 'stop platen'],
    // 4.7 in wide: (15 + 0.5) ÷ 5.2 = 2.98, so two along a side.
    [5, 4.7, null, 'stop platen'],
    // The piece is wider than its print: two along one side, four along the other.
    [8, 3, 6, 'pass'],
    [9, 3, 6, 'stop platen'],
  ])('%d pieces of %d in, %s in wide themselves: %s', (pieces, width, pieceIn, expected) => {
    const input = tags(pieces, width, pieceIn);
    expect(verdict(input, 'PLC-06')).toBe(expected);
    if (expected !== 'pass') expect(verdict(mended(input, told(input, 'PLC-06')[0]), 'PLC-06')).toBe('pass');
  });
});

describe('PLC-06 knows a press that wraps round one piece', () => {
  it.each([
    ['mug', 1, 'pass'],
    ['mug', 2, 'stop single'],
    ['tumbler', 2, 'stop single'],
    // Nobody has measured what lies in an oven.
    ['oven', 4, 'pass'],
  ])('a %s press with %d at a time: %s', (kind, pieces, expected) => {
    const input = mugsWith({
      'workshop.presses.1.kind': kind,
      'job.lines.0.placements.0.recipe.steps.piecesPerPress': pieces,
    });
    expect(verdict(input, 'PLC-06')).toBe(expected);
    if (expected !== 'pass') expect(verdict(mended(input, told(input, 'PLC-06')[0]), 'PLC-06')).toBe('pass');
  });
});

/** A job of three lines of one mug. */
function threeMugs(fields: Readonly<Record<string, unknown>>) {
  const input = mugsWith(fields);
  const [line] = input.job.lines;
  return changed(input, { 'job.lines': ['a', 'b', 'c'].map((id) => ({ ...line, id })) });
}

describe('what is the same of three lines is told once, and mended in all', () => {
  it.each([
    ['PLC-09', { 'job.lines.0.placements.0.pressId': 'flat-press' }],
    ['LAW-04', { 'job.lines.0.placements.0.rim': { inside: true, belowMm: null } }],
    ['LAW-04', { 'job.lines.0.placements.0.rim': { inside: false, belowMm: 10 } }],
  ] as const)('%s', (id, fields) => {
    const input = threeMugs(fields);
    expect(told(input, id)).toHaveLength(1);
    expect(told(mended(input, told(input, id)[0]), id)).toEqual([]);
  });
});

describe('PLC-09 wants a press that takes the piece', () => {
  it.each([
    ['flat', 'garment', 'pass'],
    ['flat', 'drinkware', 'stop none'],
    ['mug', 'drinkware', 'pass'],
    ['tumbler', 'drinkware', 'pass'],
    ['mug', 'garment', 'stop other'],
    ['oven', 'drinkware', 'pass'],
    ['oven', 'panel', 'pass'],
    ['oven', 'garment', 'stop other'],
  ])('a %s press for a %s: %s', (press, blank, expected) => {
    const input = mugsWith({ 'workshop.presses.1.kind': press, 'blank:white-mug.kind': blank });
    expect(verdict(input, 'PLC-09')).toBe(expected);
  });

  it('offers the press of the workshop that does', () => {
    const input = clubWith({ 'job.lines.0.placements.0.pressId': 'mug-press' });
    const after = mended(input, told(input, 'PLC-09')[0]);
    expect(after.job.lines[0]?.placements[0]?.pressId).toBe('flat-press');
    expect(verdict(after, 'PLC-09')).toBe('pass');
  });
});

describe('PLC-10 wants a press that opens wide enough', () => {
  const thick = (thicknessMm: number | null, openingMm: number | null, others: number | null = null) =>
    clubWith({
      'blank:white-shirt.traits.thicknessMm': thicknessMm,
      'workshop.presses.0.rating.openingMm': openingMm,
      'workshop.presses.1.kind': 'flat',
      'workshop.presses.1.rating.openingMm': others,
    });

  it.each([
    [25, 25, 'pass'],
    [25.1, 25, 'stop'],
    [null, 25, 'pass'],
    [25, null, 'pass'],
  ])('%s mm in an opening of %s mm: %s', (thicknessMm, openingMm, expected) => {
    expect(verdict(thick(thicknessMm, openingMm), 'PLC-10')).toBe(expected);
  });

  it('is told once for a blank and a press, and offers another press that does for all its prints', () => {
    expect(told(thick(30, 25), 'PLC-10')[0]?.fix).toBeNull();
    const input = thick(30, 25, 40);
    const after = mended(input, told(input, 'PLC-10')[0]);
    expect(told(input, 'PLC-10').map(({ where }) => where.placementId)).toEqual(['back']);
    expect(told(after, 'PLC-10')).toEqual([]);
    expect(after.job.lines[0]?.placements.map(({ pressId }) => pressId)).toEqual(['mug-press', 'mug-press']);
  });
});
