import { describe, expect, it } from 'vitest';
import { mmFromInches } from '@/shared/units';
import { aPicture } from '@/tests/fixtures/aPicture';
import { clubWith, mended, mugsWith, told, verdict } from '@/tests/fixtures/clubJob';

const sized = (placement: number, widthIn: number, heightIn: number) => ({
  [`job.lines.0.placements.${placement}.prints`]: [
    { sizes: null, widthMm: mmFromInches(widthIn), heightMm: mmFromInches(heightIn) },
  ],
});
/** Only the back picture left. */
const backAlone = (widthIn: number, heightIn: number, fields: Record<string, unknown> = {}) => {
  const [line] = clubWith(sized(0, widthIn, heightIn)).job.lines;
  return clubWith({
    'artwork:hill-path.pixels': null,
    'job.lines.0.placements': line?.placements.slice(0, 1),
    'job.lines.0.placements.0.recipe.reliefFromRaisedParts': false,
    ...fields,
  });
};

// Half an inch of paper around a print alone on a letter sheet: 7.5 × 10 in.
describe('LAY-05 notes a paper edge close to a print on knit', () => {
  it.each([
    [7.5, 10, 'pass'],
    [7.51, 10, 'note'],
    [7.5, 10.01, 'note'],
  ])('%d × %d in: %s', (width, height, expected) => {
    expect(verdict(backAlone(width, height), 'LAY-05')).toBe(expected);
  });

  it('measures to the cut where pieces share a sheet, and is settled by a pillow', () => {
    const input = clubWith({ 'job.lines.0.placements.1.recipe.reliefFromRaisedParts': false });
    const badge = told(input, 'LAY-05').find(({ where }) => where.placementId === 'badge');
    expect(badge?.found).toEqual({ value: mmFromInches(0.125), unit: 'mm' });
    const after = mended(input, badge);
    expect(told(after, 'LAY-05').some(({ where }) => where.placementId === 'badge')).toBe(false);
  });

  it('says nothing of hard goods', () => {
    expect(verdict(mugsWith({}), 'LAY-05')).toBe('pass');
  });
});

/* A sheet of 200 × 150 mm, no margin: 45 % of it is 13,500 mm². */
const onSmallSheet = (widthMm: number, heightMm: number) =>
  backAlone(8, 10, {
    'workshop.sheets.0.widthMm': 200,
    'workshop.sheets.0.heightMm': 150,
    'workshop.printers.0.marginMm': 0,
    'workshop.policy.gutterMm': 6.35,
    'job.lines.0.placements.0.prints': [{ sizes: null, widthMm, heightMm }],
  });

describe('LAY-07 notes sheets more than half empty', () => {
  it.each([
    [112.5, 120, 'pass'],
    [112.4, 120, 'note empty'],
    [100, 120, 'note smaller'],
  ])('one of %d × %d mm: %s', (width, height, expected) => {
    expect(verdict(onSmallSheet(width, height), 'LAY-07')).toBe(expected);
  });

  it('offers the size at which the sheet is used, and falls silent after it', () => {
    const input = onSmallSheet(100, 120);
    const [finding] = told(input, 'LAY-07');
    // Two beside each other: (200 − 6.35) ÷ 2 = 96.825 mm, in hundredths of an inch 3.81.
    expect(finding?.facts).toMatchObject({
      perSheet: 1,
      betterPerSheet: 2,
      widthMm: expect.closeTo(3.81 * 25.4, 9),
    });
    expect(verdict(mended(input, finding), 'LAY-07')).toBe('pass');
  });

  it('is not asked of prints that share sheets', () => {
    const input = onSmallSheet(100, 120);
    expect(verdict({ ...input, job: { ...input.job, gang: 'together' } }, 'LAY-07')).toBe('pass');
  });
});

describe('LAY-09 tells how to find out which side is printed', () => {
  it.each([
    [null, 'pass'],
    ['unsure', 'caution'],
    ['up', 'pass'],
    ['down', 'pass'],
  ])('%s: %s', (printedSide, expected) => {
    const input = clubWith({ 'workshop.printers.0.printedSide': printedSide });
    expect(verdict(input, 'LAY-09')).toBe(expected);
    for (const { where } of told(input, 'LAY-09')) {
      expect(where).toMatchObject({ document: 'workshop', path: ['printers', 0, 'printedSide'] });
    }
  });
});

describe('LAY-11 asks for transfer paper of enough weight', () => {
  it('stops another paper, until it is said to be transfer paper', () => {
    const input = clubWith({ 'workshop.sheets.0.paper': 'other' });
    expect(verdict(input, 'LAY-11')).toBe('stop other');
    expect(verdict(mended(input, told(input, 'LAY-11')[0]), 'LAY-11')).toBe('pass');
  });

  it.each([
    [89.9, 2.01, 'caution light'],
    [90, 2.01, 'pass'],
    [89.9, 2, 'pass'],
    [null, 3, 'pass'],
  ])('%s g/m² with ink entered as %d: %s', (grams, total, expected) => {
    const input = clubWith({
      'workshop.sheets.0.gramsPerSquareMetre': grams,
      'artwork:hill-path.coverage': { kind: 'total', total },
    });
    expect(verdict(input, 'LAY-11')).toBe(expected);
  });

  // Three colours at 50 % are 150 %. Black of 75 % is 75 % on a printer that prints all grey with black, 150 % at a half
  // and 225 % where there is no black.
  it.each([
    [0.501, 0, 1, 'caution light'],
    [0.5, 0, 0.5, 'pass'],
    [0, 0.751, 1, 'pass'],
    [0, 0.751, 0.5, 'caution light'],
    [0, 0.75, 0.5, 'pass'],
    [0, 0.75, 0, 'caution light'],
  ])(
    'holds what a printer lays down to 150 %%: colours %d, black %d, share %d: %s',
    (share, black, blackShare, expected) => {
      const picture = aPicture({
        // The shape of the print, so that all of its box is covered.
        width: 1600,
        height: 2000,
        coverage: { cyan: share, magenta: share, yellow: share, black },
      });
      const input = clubWith({
        'workshop.sheets.0.gramsPerSquareMetre': 80,
        'workshop.printers.0.blackShare': {
          value: blackShare,
          unit: 'share',
          date: '2026-11-25',
          origin: 'yours',
        },
        'artwork:hill-path.coverage': null,
        'artwork:hill-path.picture': picture,
      });
      expect(verdict(input, 'LAY-11')).toBe(expected);
    },
  );
});

describe('LAY-14 warns of prints on one sheet that are not treated alike', () => {
  it.each([
    ['apart', { 'job.lines.0.placements.0.mirror': false }, 'pass'],
    ['together', {}, 'pass'],
    ['together', { 'job.lines.0.placements.0.mirror': false }, 'caution mirror'],
    ['together', { 'job.lines.0.placements.0.recipe.dwellSeconds': 51 }, 'caution recipe'],
    [
      'together',
      { 'job.lines.0.placements.0.recipe.temperature': { value: 386, unit: 'F' } },
      'caution recipe',
    ],
    ['together', { 'job.lines.0.placements.0.recipe.pressure': 'firm' }, 'caution recipe'],
  ])('%s, %j: %s', (gang, fields, expected) => {
    const [line] = clubWith({}).job.lines;
    const recipe = line?.placements[0]?.recipe;
    const input = clubWith({ 'job.gang': gang, 'job.lines.0.placements.1.recipe': recipe, ...fields });
    expect(verdict(input, 'LAY-14')).toBe(expected);
  });

  it('goes by laying each print out by itself', () => {
    const input = clubWith({ 'job.gang': 'together', 'job.lines.0.placements.0.mirror': false });
    const after = mended(input, told(input, 'LAY-14')[0]);
    expect(after.job.gang).toBe('apart');
    expect(verdict(after, 'LAY-14')).toBe('pass');
  });
});
