import { describe, expect, it } from 'vitest';
import { checkJob } from '@/lib/check/checkJob';
import type { CostFacts } from '@/lib/check/costFacts';
import { reviewCosts } from '@/lib/check/reviewCosts';
import { wholeJob } from '@/lib/grid/costSheet';
import type { Finding } from '@/shared/finding';
import type { JobInput } from '@/shared/schemas/request';
import type { FindingId } from '@/shared/tables/findingIds';
import { looseWork } from '@/tests/fixtures/benchWork';
import { blocksOf } from '@/tests/fixtures/blocksOf';
import { changed, clubWith, mended, TODAY } from '@/tests/fixtures/clubJob';
import { costed } from '@/tests/fixtures/costed';

const none: CostFacts = {
  attendedMinutes: 0,
  benchMinutes: 0,
  work: looseWork(0),
  sheets: 0,
  cases: [],
  placements: [],
  suggested: [],
  lying: [],
  pressOrders: [],
  ownPrices: [],
  breakPrices: [],
};

function reviewed(input: JobInput, facts: Partial<CostFacts>, id: FindingId): Finding | undefined {
  const { checked } = checkJob(input);
  if (checked === null) throw new Error('the job is stopped');
  return reviewCosts(checked, { ...none, ...facts }).find((finding) => finding.id === id);
}

const verdict = (input: JobInput, facts: Partial<CostFacts>, id: FindingId): string => {
  const finding = reviewed(input, facts, id);
  return finding === undefined ? 'pass' : `${finding.severity} ${finding.variant ?? ''}`;
};

// 4 and 8 hours in one piece: common practice, from memory.
describe('TIM-04 counts hours in one piece', () => {
  const day = (hours: number | null) => ({
    'workshop.blocks': hours === null ? null : blocksOf([0, 0, 0, 0, 0, hours, 0]),
  });

  it.each([
    [240, null, 'pass'],
    [241, null, 'note long'],
    [480, null, 'note long'],
    [481, null, 'caution tooLong'],
    // The day ends sooner than the work.
    [600, 4, 'pass'],
    [600, 4.5, 'note long'],
    [600, 9, 'caution tooLong'],
  ])('%d min on days of %s h: %s', (benchMinutes, hours, expected) => {
    expect(verdict(clubWith(day(hours)), { benchMinutes }, 'TIM-04')).toBe(expected);
  });

  it.each([
    [300, 'pass'],
    [600, 'caution tooLong'],
  ])('takes time allowed for rest for breaks, up to eight hours: %d min is %s', (benchMinutes, expected) => {
    const rest = { value: 0.15, unit: 'share', date: TODAY, origin: 'yours' };
    const input = clubWith({ ...day(null), 'workshop.rates.restAllowance': rest });
    expect(verdict(input, { benchMinutes }, 'TIM-04')).toBe(expected);
  });

  it('counts each session by itself, and offers sessions of less than four hours', () => {
    const input = clubWith({ ...day(null), 'job.piecesPerSession': 19 });
    // 37 shirts in two sessions of 4 h.
    expect(verdict(input, { benchMinutes: 480 }, 'TIM-04')).toBe('pass');
    const whole = clubWith(day(null));
    const finding = reviewed(whole, { benchMinutes: 480 }, 'TIM-04');
    /* 480 less 35 of set-up and cleaning leaves 445 for 37 shirts; 205 of 240 min a session make 17 of them. */
    expect(finding?.fix?.facts).toEqual({ pieces: 17 });
    // Three sessions then, with 445 + 3 × 35 = 550 min between them.
    expect(verdict(mended(whole, finding), { benchMinutes: 550 }, 'TIM-04')).toBe('pass');
  });
});

describe('ELE-04 holds machines to what they are rated for', () => {
  // 37 backs ÷ (0.965 × 0.98) = 39.12 and two tests, 37 badges ÷ 0.98 = 37.76: 78.88 presses.
  it.each([
    [79, 'pass'],
    [78, 'caution presses'],
    [39.45, 'caution presses'],
    [39.4, 'stop presses'],
  ])('78.88 presses on a press rated for %d a day: %s', (pressesPerDay, expected) => {
    const rating = { openingMm: null, pressesPerDay, hotHoursPerDay: null };
    expect(verdict(clubWith({ 'workshop.presses.0.rating': rating }), {}, 'ELE-04')).toBe(expected);
  });

  // 41.12 × 2.4 + 37.76 × 2.1 min = 178.0 min, 2.966 h hot.
  it.each([
    [2.97, 'pass'],
    [2.96, 'caution hours'],
    [1.48, 'stop hours'],
  ])('hot for 2.97 h on a press rated for %d h: %s', (hotHoursPerDay, expected) => {
    const rating = { openingMm: null, pressesPerDay: null, hotHoursPerDay };
    expect(verdict(clubWith({ 'workshop.presses.0.rating': rating }), {}, 'ELE-04')).toBe(expected);
  });

  // By hand: 39.12 backs ÷ 0.98 = 39.92 sheets, (10 + 0.76 badges once more) ÷ 0.98 = 10.97, two tests: 52.9, so 53.
  it.each([
    [53, 'pass'],
    [52, 'caution sheets'],
    [26.5, 'caution sheets'],
    [26.4, 'stop sheets'],
  ])(
    'the sheets of the club’s order on a printer rated for %d a month: %s',
    (ratedSheetsPerMonth, expected) => {
      const input = clubWith({ 'workshop.printers.0.ratedSheetsPerMonth': ratedSheetsPerMonth });
      const { sheet } = costed(input);
      expect(verdict(input, { sheets: wholeJob(sheet, 'sheets') }, 'ELE-04')).toBe(expected);
    },
  );

  it('goes on with a reason, or in sessions on several days', () => {
    const rating = { openingMm: null, pressesPerDay: 30, hotHoursPerDay: null };
    const input = clubWith({ 'workshop.presses.0.rating': rating });
    const finding = reviewed(input, {}, 'ELE-04');
    expect(finding?.waivable).toBe(true);
    // 37 × 30 ÷ 78.88 = 14.07 shirts a day, so three days of 26.3 presses.
    expect(finding?.fix?.facts).toEqual({ pieces: 14 });
    expect(verdict(mended(input, finding), {}, 'ELE-04')).toBe('pass');
  });

  it.each([
    [61, 'pass'],
    [60, 'caution presses'],
  ])('counts two badges at a time as one press: rated for %d it is %s', (pressesPerDay, expected) => {
    // 41.12 + 37.76 ÷ 2 = 60.002 presses, on a press whose platen nobody measured.
    const input = clubWith({
      'workshop.presses.0.platen': null,
      'workshop.presses.0.rating': { openingMm: null, pressesPerDay, hotHoursPerDay: null },
      'job.lines.0.placements.1.recipe.steps.piecesPerPress': 2,
    });
    expect(verdict(input, {}, 'ELE-04')).toBe(expected);
  });

  it.each([
    // Hot minutes are one piece's own share: 41.12 × 2.4 + 37.76 × 2.1 min = 2.966 h, however many lie in a press.
    [2.97, 'pass'],
    [2.96, 'caution hours'],
  ])(
    'but the minutes of each: hot for 2.97 h on a press rated for %d h is %s',
    (hotHoursPerDay, expected) => {
      const input = clubWith({
        'workshop.presses.0.platen': null,
        'workshop.presses.0.rating': { openingMm: null, pressesPerDay: null, hotHoursPerDay },
        'job.lines.0.placements.1.recipe.steps.piecesPerPress': 2,
      });
      expect(verdict(input, {}, 'ELE-04')).toBe(expected);
    },
  );
});

describe('the button that splits a run', () => {
  // Ten hours on any of the days, and blanks that take so long that one more session makes them too late.
  const hurried = (wantedOn: string | null) =>
    clubWith({
      'workshop.blocks': blocksOf([10, 10, 10, 10, 10, 10, 10]),
      'blank:white-shirt.suppliedBy': 'customer',
      'job.wantedOn': wantedOn,
    });

  it('is not there where the set-ups it adds make a stop of the wanted day', () => {
    // Wednesday has 10 h; 9.5 h are done by then, and with 2 × 35 min more they are not.
    const work = { attendedMinutes: 570, benchMinutes: 570, work: looseWork(570) };
    expect(reviewed(hurried('2026-11-26'), work, 'TIM-01')?.severity).toBe('caution');
    expect(reviewed(hurried('2026-11-26'), work, 'TIM-04')?.fix).toBeNull();
    // 570 less 35 leaves 535 for 37 shirts; 205 min a session make 14 of them.
    expect(reviewed(hurried('2026-11-27'), work, 'TIM-04')?.fix?.facts).toEqual({ pieces: 14 });
    expect(reviewed(hurried(null), work, 'TIM-04')?.fix?.facts).toEqual({ pieces: 14 });
  });

  it('is not there for a press that is asked for too much, either', () => {
    const rated = changed(hurried('2026-11-26'), {
      'workshop.presses.0.rating': { openingMm: null, pressesPerDay: 30, hotHoursPerDay: null },
    });
    const work = { attendedMinutes: 570, benchMinutes: 570, work: looseWork(570) };
    expect(reviewed(rated, work, 'ELE-04')).toMatchObject({ variant: 'presses', fix: null });
  });
});
