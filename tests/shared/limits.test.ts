import { describe, expect, it, test } from 'vitest';
import { mostEntries, numberLimits, textLimits, UnreadLimit } from '@/shared/limits';
import { artworkSchema } from '@/shared/schemas/artwork';
import { blankSchema } from '@/shared/schemas/blank';
import { jobSchema, placementSchema, recipeSchema } from '@/shared/schemas/job';
import { stallDaySchema } from '@/shared/schemas/stallDay';
import { sheetSchema, workshopSchema } from '@/shared/schemas/workshop';
import { z } from '@/shared/schemas/z';

describe('numberLimits reads', () => {
  test.each([
    ['both ends', numberLimits(recipeSchema, ['temperature', 'value']), { min: 0, max: 1000 }],
    ['an end that is left out', numberLimits(recipeSchema, ['dwellSeconds']), { above: 0, max: 7200 }],
    ['ends below nothing', numberLimits(placementSchema, ['dropFromCollarMm']), { min: -500, max: 2000 }],
    ['a whole number', numberLimits(artworkSchema, ['version']), { min: 1, max: 10_000, decimals: 0 }],
    ['the narrower of two ends', numberLimits(sheetSchema, ['widthMm']), { min: 0.01, max: 2000 }],
    ['a rate', numberLimits(blankSchema, ['blankFault', 'value']), { min: 0, max: 0.9 }],
    [
      'through lists',
      numberLimits(blankSchema, ['sizes', 7, 'packSize']),
      { min: 1, max: 10_000, decimals: 0 },
    ],
    ['a block of the week', numberLimits(workshopSchema, ['blocks', 6, 'minutes']), { min: 1, max: 1440 }],
    ['one of several shapes', numberLimits(artworkSchema, ['coverage', 'total']), { min: 0, max: 4 }],
    ['another of them', numberLimits(artworkSchema, ['coverage', 'cyan']), { min: 0, max: 1 }],
    [
      'what may be missing',
      numberLimits(blankSchema, ['sizes', 0, 'wrap', 'taperDegrees']),
      { min: 0, max: 45 },
    ],
    ['what may be left out', numberLimits(stallDaySchema, ['prices', 'secondsShare']), { min: 0, max: 1 }],
  ])('%s', (_, found, expected) => expect(found).toEqual(expected));

  it('nothing that a field cannot tell: an open upper end or a step is a fault of ours', () => {
    expect(() => numberLimits(z.number().lt(1), [])).toThrow(UnreadLimit);
    expect(() => numberLimits(z.number().multipleOf(0.5), [])).toThrow(UnreadLimit);
  });
});

describe('textLimits reads', () => {
  test.each([
    ['a name', textLimits(jobSchema, ['name']), { shortest: 1, longest: 120, isTrimmed: true }],
    [
      'a text whose spaces are kept',
      textLimits(jobSchema, ['customer']),
      { shortest: 0, longest: 200, isTrimmed: false },
    ],
    [
      'a reason',
      textLimits(jobSchema, ['waivers', 0, 'reason']),
      { shortest: 3, longest: 500, isTrimmed: true },
    ],
  ])('%s', (_, found, expected) => expect(found).toEqual(expected));

  it('no text without an end', () => expect(() => textLimits(z.string(), [])).toThrow(UnreadLimit));
});

describe('mostEntries reads', () => {
  test.each([
    ['lines of a job', mostEntries(jobSchema, ['lines']), 12],
    ['print sizes', mostEntries(placementSchema, ['prints']), 10],
    ['breaks', mostEntries(workshopSchema, ['policy', 'breaks']), 12],
  ])('%s', (_, found, expected) => expect(found).toBe(expected));

  it('no list without an end', () => {
    expect(() => mostEntries(z.array(z.string()), [])).toThrow(UnreadLimit);
  });
});
