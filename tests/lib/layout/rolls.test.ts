import { describe, expect, it } from 'vitest';
import { checkJob } from '@/lib/check/checkJob';
import { wholeJob } from '@/lib/grid/costSheet';
import { Grid } from '@/lib/grid/evaluateGrid';
import { rollUsed } from '@/lib/grid/rollUsed';
import { plannedSheets } from '@/lib/layout/plannedSheets';
import { rollWorthMm } from '@/lib/layout/rollWorth';
import { rollLengthMm, rollStrips, stripLengthMm } from '@/lib/packing/roll/rollStrips';
import { compareSheets } from '@/lib/studies/sheets/compareSheets';
import { changed, club, clubWith, mended, TODAY, told, verdict } from '@/tests/fixtures/clubJob';
import { costed } from '@/tests/fixtures/costed';

/* A roll 24 in wide, prints up to 1 m long, margin 1/8 in, gutter 1/4 in: what both ends lose is one gutter. */
const asked = { rollWidthMm: 609.6, longestMm: 1000, marginMm: 3.175, gutterMm: 6.35 };
const of = (width: number, height: number) => {
  const strips = rollStrips({ ...asked, pieceWidthMm: width * 25.4, pieceHeightMm: height * 25.4 });
  if (strips === null) throw new Error('it does not fit');
  return strips;
};
const perMetre = { value: 1.2, unit: 'money/m', date: TODAY, origin: 'yours' };
const onRoll = (fields: Readonly<Record<string, unknown>> = {}) =>
  clubWith({
    'workshop.sheets.0.form': 'roll',
    'workshop.sheets.0.widthMm': 609.6,
    'workshop.sheets.0.heightMm': 1000,
    'workshop.sheets.0.price': perMetre,
    ...fields,
  });

describe('equal pieces on a roll', () => {
  it('lie in rows as many as go across, one pitch behind the other', () => {
    // 6.4 badges of 3.5 in with their gutter go across 24 in, 10.5 rows in 1 m.
    expect(of(3.5, 3.5)).toMatchObject({ across: 6, turned: false, rowsPerPrint: 10 });
    expect(of(3.5, 3.5).pitchMm).toBeCloseTo(95.25, 9);
    expect(of(3.5, 3.5).places).toHaveLength(60);
  });

  it('are turned where a piece then takes less roll', () => {
    // Two go across either way: 130.2 mm of roll a piece upright, 104.8 turned.
    expect(of(8, 10)).toMatchObject({ across: 2, turned: true, rowsPerPrint: 4 });
  });

  it('take whole rows, and a border at both ends of each print', () => {
    // 37 badges are seven rows in one print; 37 backs are nineteen rows in five prints.
    expect(rollLengthMm(of(3.5, 3.5), 37, asked)).toBeCloseTo(7 * 95.25, 9);
    expect(rollLengthMm(of(8, 10), 37, asked)).toBeCloseTo(19 * 209.55, 9);
    const wider = { ...asked, marginMm: 5 };
    // A strip bears a quarter of the borders of a print with four.
    expect(stripLengthMm(of(8, 10), wider)).toBeCloseTo(209.55 + (10 - 6.35) / 4, 9);
    expect(rollLengthMm(of(8, 10), 37, wider)).toBeCloseTo(19 * 209.55 + 5 * (10 - 6.35), 9);
  });

  it('do not fit where they are wider than the reach or longer than a print, either way round', () => {
    const fits = (pieceWidthMm: number, pieceHeightMm: number) =>
      rollStrips({ ...asked, pieceWidthMm, pieceHeightMm }) !== null;
    expect(fits(603.25, 993.65)).toBe(true);
    expect(fits(603.3, 993.7)).toBe(false);
    expect(fits(993.65, 603.25)).toBe(true);
    expect(fits(610, 610)).toBe(false);
  });
});

describe('a job on a roll', () => {
  it('is costed by strips, each by its area in letter sheets and the price of its length', () => {
    // 8.5 × 11 in of a roll 24 in wide are 3.896 in long.
    expect(rollWorthMm(609.6)).toBeCloseTo((8.5 * 11 * 25.4) / 24, 9);
    const { laidOut, sheet } = costed(onRoll());
    const [back, badge] = laidOut.prints;
    expect(back).toMatchObject({ perSheet: 2, sheets: 19, spare: 1 });
    expect(badge).toMatchObject({ perSheet: 6, sheets: 7, spare: 5 });
    // Two tests are strips of 209.55 mm; the pieces take 3,981.45 and 666.75 mm.
    const lengthMm = 3981.45 + 666.75 + 2 * 209.55;
    expect(wholeJob(sheet, 'sheetsBase')).toBeCloseTo((lengthMm * 24) / (8.5 * 11 * 25.4), 9);
    expect(wholeJob(sheet, 'paper')).toBeCloseTo((lengthMm / 1000) * 1.2, 9);
  });

  it('takes a whole strip for a piece that is printed again alone', () => {
    // One goes across 8.5 in; a strip is 10.25 in long, 8.5 × 10.25 of 8.5 × 11 in².
    const { sheet } = costed(onRoll({ 'workshop.sheets.0.widthMm': 215.9 }));
    const reject = sheet.jobValues.sheetReject ?? Number.NaN;
    const printed = wholeJob(sheet, 'entering_1') / (1 - reject);
    expect(wholeJob(sheet, 'sheetsRun_1')).toBeCloseTo((printed * 10.25) / 11, 9);
  });

  it('uses up a part of a new roll, spoiled pieces and tests included', () => {
    const { sheet, laidOut } = costed(onRoll({ 'workshop.sheets.0.rollLengthMm': 30_000 }));
    const used = rollUsed(sheet, laidOut.job.sheet);
    expect(used?.lengthMm).toBeCloseTo((wholeJob(sheet, 'paperExpected') / 1.2) * 1000, 6);
    expect(used?.rolls).toBeCloseTo((used?.lengthMm ?? 0) / 30_000, 12);
    expect(rollUsed(sheet, { ...laidOut.job.sheet, rollLengthMm: null })?.rolls).toBeNull();
    expect(rollUsed(sheet, { ...laidOut.job.sheet, form: 'cut' })).toBeNull();
  });

  it('is planned print by print, each cut off behind its last row', () => {
    const plan = plannedSheets(costed(onRoll()).laidOut);
    expect(plan.sheets.map(({ count, pieces, lengthMm }) => [count, pieces.length, lengthMm])).toEqual([
      [4, 8, expect.closeTo(838.2, 6)],
      [1, 5, expect.closeTo(628.65, 6)],
      [1, 37, expect.closeTo(666.75, 6)],
    ]);
    // The border, a print and half a gutter: 3.175 + 203.2 + 3.175, and one pitch on.
    expect(plan.sheets[0]?.cutsMm).toEqual([209.55, 419.1, 628.65].map((mm) => expect.closeTo(mm, 6)));
    expect(plan.roll?.lengthMm).toBeCloseTo(3981.45 + 666.75, 6);
    expect(plan.roll?.leastMm).toBeCloseTo((37 * (203.2 * 254 + 88.9 * 88.9)) / 609.6, 6);
    expect(plan.wasteShare).toBeCloseTo(1 - (plan.roll?.leastMm ?? 0) / 4648.2, 9);
  });

  it('takes less roll where prints lie together, apart and inside its borders, and the shares add up', () => {
    const { laidOut } = costed(onRoll({ 'job.gang': 'together' }));
    const plan = plannedSheets(laidOut);
    expect(plan.roll?.lengthMm).toBeLessThan(4648.2);
    const shares = laidOut.prints.reduce((sum, { sheets, sheetWorth }) => sum + sheets * sheetWorth, 0);
    expect(shares).toBeCloseTo((plan.roll?.lengthMm ?? 0) / rollWorthMm(609.6), 6);
    expect(plan.sheets.reduce((sum, { count, pieces }) => sum + count * pieces.length, 0)).toBe(74);
    for (const { pieces, lengthMm } of plan.sheets) {
      expect(lengthMm).toBeLessThanOrEqual(1000 + 1e-6);
      for (const [index, one] of pieces.entries()) {
        expect(one.xMm).toBeGreaterThanOrEqual(3.175 - 1e-6);
        expect(one.xMm + one.widthMm).toBeLessThanOrEqual(609.6 - 3.175 + 1e-6);
        for (const other of pieces.slice(index + 1)) {
          const apart =
            one.xMm + one.widthMm + 6.35 <= other.xMm + 1e-3 ||
            other.xMm + other.widthMm + 6.35 <= one.xMm + 1e-3 ||
            one.yMm + one.heightMm + 6.35 <= other.yMm + 1e-3 ||
            other.yMm + other.heightMm + 6.35 <= one.yMm + 1e-3;
          expect(apart).toBe(true);
        }
      }
    }
  });

  it('stands beside cut sheets in the comparison, by its length', () => {
    const input = club();
    const [letter] = input.workshop.sheets;
    const both = changed(input, {
      'workshop.sheets': [
        letter,
        { ...letter, id: 'roll', form: 'roll', widthMm: 609.6, heightMm: 1000, price: perMetre },
      ],
    });
    const [cut, roll] = compareSheets(both, new Grid());
    expect(cut).toMatchObject({ kind: 'costed', sheets: 47, rollLengthMm: null });
    expect(roll).toMatchObject({ kind: 'costed', sheetId: 'roll' });
    expect(roll?.kind === 'costed' && roll.rollLengthMm).toBeCloseTo(4648.2, 6);
  });
});

describe('what is wrong on a roll', () => {
  it('LAY-10 stops a print wider than its reach, or longer than a print may be', () => {
    const print = (widthMm: number, heightMm: number) =>
      onRoll({ 'job.lines.0.placements.0.prints': [{ sizes: null, widthMm, heightMm }] });
    expect(verdict(onRoll(), 'LAY-10')).toBe('pass');
    expect(verdict(print(610, 1001), 'LAY-10')).toBe('stop');
    expect(verdict(print(300, 1001), 'LAY-10')).toBe('stop');
    expect(verdict(print(300, 1001), 'LAY-01')).toBe('pass');
    const input = print(300, 1001);
    expect(verdict(mended(input, told(input, 'LAY-10')[0]), 'LAY-10')).toBe('pass');
  });

  it('LAY-10 says when the borders of the printer leave nothing of a narrow roll', () => {
    const [finding] = told(onRoll({ 'workshop.sheets.0.widthMm': 6 }), 'LAY-10');
    expect(finding).toMatchObject({ severity: 'stop', variant: 'nothing', fix: null });
  });

  it('LAY-04 asks for room beside a print, never behind it: a roll is cut where the maker likes', () => {
    const wide = (widthMm: number) =>
      onRoll({ 'workshop.sheets.0.widthMm': widthMm, 'workshop.sheets.0.heightMm': 262 });
    expect(verdict(wide(203.2 + 13), 'LAY-04')).toBe('pass');
    expect(verdict(wide(203.2 + 11), 'LAY-04')).toBe('caution narrow');
  });

  it('RATE-03 stops a price that is for the other form of paper, and its button gives a typical one', () => {
    const wrong = clubWith({ 'workshop.sheets.0.form': 'roll', 'workshop.sheets.0.widthMm': 609.6 });
    expect(verdict(wrong, 'RATE-03')).toBe('stop paperForm');
    expect(checkJob(wrong).checked).toBeNull();
    const right = mended(wrong, told(wrong, 'RATE-03')[0]);
    expect(verdict(right, 'RATE-03')).toBe('pass');
    expect(right.workshop.sheets[0]?.price).toMatchObject({ unit: 'money/m', origin: 'typical' });
    expect(verdict(clubWith({ 'workshop.sheets.0.price': perMetre }), 'RATE-03')).toBe('stop paperForm');
  });

  it('RATE-01 tells of a missing price of a roll, by the metre', () => {
    const [finding] = told(onRoll({ 'workshop.sheets.0.price': null }), 'RATE-01');
    expect(finding).toMatchObject({ severity: 'caution', facts: { unit: 'money/m', typical: 1.2 } });
  });
});
