import { describe, expect, it } from 'vitest';
import { priceJob } from '@/lib/costing/priceJob';
import { mmFromInches } from '@/shared/units';
import { clubWith, mended, mugsWith, told, verdict } from '@/tests/fixtures/clubJob';
import { grid } from '@/tests/fixtures/costed';

const back = (widthIn: number, heightIn: number, fields: Record<string, unknown> = {}) =>
  clubWith({
    'artwork:hill-path.pixels': null,
    'job.lines.0.placements.0.prints': [
      { sizes: null, widthMm: mmFromInches(widthIn), heightMm: mmFromInches(heightIn) },
    ],
    ...fields,
  });

// Letter paper with a border of 0.125 in: 8.25 × 10.75 in can be printed.
describe('LAY-01 asks whether the print goes on the sheet', () => {
  it.each([
    [8.25, 10.75, 'pass'],
    [10.75, 8.25, 'pass'],
    [8.51, 10.75, 'stop'],
    [10.5, 12.5, 'stop'],
    [8, 11.1, 'stop'],
  ])('%d × %d in: %s', (width, height, expected) => {
    expect(verdict(back(width, height), 'LAY-01')).toBe(expected);
  });

  it('stops 10.5 × 12.5 in and proposes 8.00 × 9.52 in, the largest of that shape with room for tape', () => {
    const input = back(10.5, 12.5);
    const [finding] = told(input, 'LAY-01');
    expect(finding?.waivable).toBe(false);
    // 8.5 − 2 × 0.25 = 8 in wide; 12.5 × 8 ÷ 10.5 = 9.5238 in high.
    const after = mended(input, finding);
    expect(after.job.lines[0]?.placements[0]?.prints[0]).toMatchObject({
      widthMm: mmFromInches(8),
      heightMm: expect.closeTo(mmFromInches(9.52), 9),
    });
    for (const id of ['LAY-01', 'LAY-02', 'LAY-03', 'LAY-04'] as const) {
      expect(verdict(after, id)).toBe('pass');
    }
  });

  it.each([
    [0.009, 'pass'],
    [0.011, 'stop'],
  ])('allows a hundredth of a millimetre: %d mm over is %s', (overMm, expected) => {
    const widthMm = mmFromInches(8.5) + overMm;
    const input = back(8, 10, {
      'job.lines.0.placements.0.prints': [{ sizes: null, widthMm, heightMm: widthMm }],
      'workshop.printers.0.borderless': true,
    });
    expect(verdict(input, 'LAY-01')).toBe(expected);
  });

  it('takes a print of a few millimetres for a slip of the unit', () => {
    expect(verdict(back(0.19, 3), 'LAY-01')).toBe('stop speck');
    expect(verdict(back(0.2, 3), 'LAY-01')).toBe('pass');
  });
});

describe('LAY-02 notes a print that fits turned only', () => {
  it.each([
    [8.25, 10, 'pass'],
    [8.3, 8, 'note'],
    [10, 8.25, 'note'],
  ])('%d × %d in: %s', (width, height, expected) => {
    expect(verdict(back(width, height), 'LAY-02')).toBe(expected);
  });
});

describe('LAY-03 asks for borderless printing where only that fits', () => {
  it.each([
    [false, 8.25, 'pass'],
    [false, 8.26, 'stop unsupported'],
    [true, 8.26, 'caution supported'],
    [false, 8.5, 'stop unsupported'],
    [true, 8.5, 'caution supported'],
    [true, 8.51, 'pass'],
  ])('printer borderless %s, %d in wide: %s', (borderless, width, expected) => {
    const input = back(width, 10.7, { 'workshop.printers.0.borderless': borderless });
    expect(verdict(input, 'LAY-03')).toBe(expected);
  });

  it('cannot be waived where the printer leaves a border', () => {
    expect(told(back(8.4, 10), 'LAY-03')[0]?.waivable).toBe(false);
  });
});

describe('LAY-04 wants clean paper round a print that has its sheet alone', () => {
  it.each([
    [8, 10, 'pass'],
    [8, 10.5, 'pass'],
    [8.01, 10, 'caution narrow'],
    [8.25, 10, 'caution narrow'],
    [8, 10.51, 'caution narrow'],
  ])('%d × %d in on letter: %s', (width, height, expected) => {
    expect(verdict(back(width, height), 'LAY-04')).toBe(expected);
  });

  it('stops a garment without 0.125 in', () => {
    const borderless = { 'workshop.printers.0.borderless': true };
    expect(verdict(back(8.26, 10, borderless), 'LAY-04')).toBe('stop none');
    expect(verdict(back(8.26, 10, { ...borderless, 'blank:white-shirt.kind': 'bag' }), 'LAY-04')).toBe(
      'caution narrow',
    );
  });

  it('follows a maker who wants more room, never one who wants less', () => {
    const more = { 'workshop.policy.tapeMarginMm': mmFromInches(0.5) };
    expect(verdict(back(7.6, 10, more), 'LAY-04')).toBe('caution narrow');
    expect(verdict(back(8.1, 10, { 'workshop.policy.tapeMarginMm': 0 }), 'LAY-04')).toBe('caution narrow');
  });

  it('leaves pieces that share a sheet to their gutter', () => {
    expect(verdict(mugsWith({}), 'LAY-04')).toBe('pass');
  });

  /* Two of 8 × 5.2 in, one above the other: 5.2 + 0.25 + 5.2 = 10.65 in of 11, (8.5 − 8) ÷ 2 at the sides. */
  it.each([
    [0.125, 5.2, []],
    // 5.25 + 0.25 + 5.25 = 10.75: an eighth of an inch above and below.
    [0, 5.25, []],
    [0, 5.26, ['caution outer']],
  ])(
    'counts the outer edges of pieces that are cut apart: border %d in, %d in high: %j',
    (border, high, expected) => {
      const input = back(8, high, { 'workshop.printers.0.marginMm': mmFromInches(border) });
      // At border 0 the badges beside it fill the height of the sheet and are told of as well.
      const own = told(input, 'LAY-04').filter(({ where }) => where.placementId === 'back');
      expect(own.map(({ severity, variant }) => `${severity} ${variant}`)).toEqual(expected);
    },
  );

  it('tells what is clear there and names no size: a smaller one would lie otherwise', () => {
    const [finding] = told(back(8, 5.3, { 'workshop.printers.0.marginMm': 0 }), 'LAY-04');
    // (11 − 10.85) ÷ 2 in.
    expect(finding?.facts.marginMm).toBeCloseTo(mmFromInches(0.075), 8);
    expect(finding?.fix).toBeNull();
  });

  it('takes a print the way round it lies, which leaves the most', () => {
    // Turned, 7 × 8.2 in leave 0.75 in; upright they would leave 0.15 in.
    expect(verdict(back(8.2, 7), 'LAY-04')).toBe('pass');
  });

  it('answers while another stop stands, even one by which a print lies nowhere', () => {
    const prints = [{ sizes: null, widthMm: 300, heightMm: 300 }];
    const input = back(8.2, 10, { 'job.lines.0.placements.1.prints': prints });
    expect(verdict(input, 'LAY-01')).toBe('stop');
    expect(told(input, 'LAY-04').map(({ where }) => where.placementId)).toEqual(['back']);
  });

  it('waits for the layout where prints are laid on sheets together', () => {
    const input = back(8.2, 10.6, { 'job.gang': 'together' });
    expect(verdict(input, 'LAY-04')).toBe('pass');
    const { findings } = priceJob(input, grid);
    const [finding] = findings.filter(({ id }) => id === 'LAY-04');
    // (8.5 − 8.2) ÷ 2 = 0.15 in.
    expect(finding).toMatchObject({
      severity: 'caution',
      variant: 'narrow',
      facts: { placement: 'Back picture' },
    });
    expect(finding?.found).toEqual({ value: expect.closeTo(mmFromInches(0.15), 8), unit: 'mm' });
  });

  it('is mended by its button', () => {
    const input = back(8.2, 10.6);
    expect(verdict(mended(input, told(input, 'LAY-04')[0]), 'LAY-04')).toBe('pass');
  });
});

describe('LAY-06 leaves room for the knife', () => {
  it.each([
    [0.124, 'stop none'],
    [0.125, 'caution narrow'],
    [0.249, 'caution narrow'],
    [0.25, 'pass'],
  ])('%d in: %s', (gutter, expected) => {
    const input = mugsWith({ 'workshop.policy.gutterMm': mmFromInches(gutter) });
    expect(verdict(input, 'LAY-06')).toBe(expected);
  });

  it('speaks once, and its button sets the gap', () => {
    const input = mugsWith({ 'workshop.policy.gutterMm': 1 });
    expect(told(input, 'LAY-06')).toHaveLength(1);
    expect(verdict(mended(input, told(input, 'LAY-06')[0]), 'LAY-06')).toBe('pass');
  });

  it('has nothing to say where every print has its sheet alone', () => {
    const { job } = clubWith({});
    const alone = clubWith({
      'job.lines.0.placements': job.lines[0]?.placements.slice(0, 1),
      'workshop.policy.gutterMm': 0,
    });
    expect(verdict(alone, 'LAY-06')).toBe('pass');
  });
});

describe('LAY-10 holds pages against the longest one of the printer', () => {
  const longest = (mm: number | null, fields: Record<string, unknown> = {}) =>
    clubWith({ 'workshop.printers.0.longestPageMm': mm, ...fields });

  it.each([
    [null, 'pass'],
    [279.4, 'pass'],
    [279.3, 'stop longSheet'],
  ])('a letter sheet, %s mm at most: %s', (mm, expected) => {
    expect(verdict(longest(mm), 'LAY-10')).toBe(expected);
  });

  it('takes the long side of a sheet, however it is typed', () => {
    const lying = { 'workshop.sheets.0.widthMm': 279.4, 'workshop.sheets.0.heightMm': 215.9 };
    expect(verdict(longest(250, lying), 'LAY-10')).toBe('stop longSheet');
  });

  it('offers a shorter sheet of the workshop, and no button where there is none', () => {
    expect(told(longest(250), 'LAY-10')[0]).toMatchObject({ waivable: false, fix: null });
    const [letter] = clubWith({}).workshop.sheets;
    // The back picture, 203.2 × 254 mm, does not go on the first of them.
    const small = { ...letter, id: 'small', name: 'Small sheet', heightMm: 240 };
    const short = { ...letter, id: 'short', name: 'Short sheet', heightMm: 262 };
    expect(told(longest(270, { 'workshop.sheets': [letter, small] }), 'LAY-10')[0]?.fix).toBeNull();
    const input = longest(270, { 'workshop.sheets': [letter, small, short] });
    const after = mended(input, told(input, 'LAY-10')[0]);
    expect(after.job.sheetId).toBe('short');
    expect(verdict(after, 'LAY-10')).toBe('pass');
  });

  /* On a roll 24 in wide backs lie in rows of two, 209.55 mm each, four to a print of 1 m: 838.2 mm. */
  const roll = {
    'workshop.sheets.0.form': 'roll',
    'workshop.sheets.0.widthMm': 609.6,
    'workshop.sheets.0.heightMm': 1000,
    'workshop.sheets.0.price': { value: 1.2, unit: 'money/m', date: '2026-11-25', origin: 'yours' },
  };

  it.each([
    [null, 'pass'],
    [838.2, 'pass'],
    [838, 'stop longPrint'],
  ])('the prints of a roll as long as they come out, %s mm at most: %s', (mm, expected) => {
    expect(verdict(longest(mm, roll), 'LAY-10')).toBe(expected);
  });

  it('splits them shorter by its button', () => {
    const input = longest(700, roll);
    const after = mended(input, told(input, 'LAY-10')[0]);
    expect(after.workshop.sheets[0]?.heightMm).toBe(700);
    expect(verdict(after, 'LAY-10')).toBe('pass');
  });

  it('holds prints laid together against it too', () => {
    const { findings } = priceJob(longest(500, { ...roll, 'job.gang': 'together' }), grid);
    expect(findings.find(({ id }) => id === 'LAY-10')).toMatchObject({ variant: 'longPrint' });
  });
});
