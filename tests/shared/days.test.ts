import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  addDays,
  addWorkingDays,
  compareDays,
  daysBetween,
  isWorkingDay,
  weekdayOf,
  workingDaysBetween,
} from '@/shared/days';
import { cases } from '@/tests/tools/cases';

const anyDay = fc
  .date({ min: new Date('1900-01-01'), max: new Date('2100-12-31'), noInvalidDate: true })
  .map((date) => date.toISOString().slice(0, 10));

describe('days', () => {
  it.each([
    ['2026-11-25', 0, '2026-11-25'],
    ['2026-11-25', 16, '2026-12-11'],
    ['2028-02-28', 1, '2028-02-29'],
    ['2100-02-28', 1, '2100-03-01'],
    ['2026-01-01', -1, '2025-12-31'],
    ['9999-12-31', 1, '+010000-01-01'],
  ])('%s and %d days is %s, and back', (day, count, expected) => {
    expect(addDays(day, count)).toBe(expected);
    expect(daysBetween(day, expected)).toBe(count);
  });

  it('come in order, those that are not known last', () => {
    const days = [null, '2026-12-11', '2025-01-31', null, '2026-02-01'];
    expect(days.toSorted(compareDays)).toEqual(['2025-01-31', '2026-02-01', '2026-12-11', null, null]);
    expect(compareDays(null, null)).toBe(0);
    expect(compareDays('2026-12-11', '2026-12-11')).toBe(0);
  });

  it.each([
    ['1970-01-01', 3],
    ['2000-01-01', 5],
    ['2026-11-25', 2],
    ['2026-11-29', 6],
    ['1900-01-01', 0],
  ])('%s is weekday %d, Monday being 0', (day, weekday) => expect(weekdayOf(day)).toBe(weekday));

  it.each([
    ['2026-11-27', 1, '2026-11-30'],
    ['2026-11-28', 1, '2026-11-30'],
    ['2026-11-30', -1, '2026-11-27'],
    ['2026-12-04', -4, '2026-11-30'],
    ['2026-11-29', 0, '2026-11-29'],
  ])('%s and %d working days is %s', (day, count, expected) => {
    expect(addWorkingDays(day, count)).toBe(expected);
  });

  it.each([
    ['2026-11-25', '2026-11-30', 3],
    ['2026-11-25', '2026-12-11', 12],
    ['2026-11-27', '2026-11-29', 0],
    ['2026-11-30', '2026-11-25', -3],
    ['2026-11-25', '2026-11-25', 0],
  ])('from %s to %s are %d working days', (from, to, count) => {
    expect(workingDaysBetween(from, to)).toBe(count);
  });

  it('counts as many working days as stepping over them one by one', () => {
    fc.assert(
      fc.property(anyDay, fc.integer({ min: 0, max: 400 }), (from, length) => {
        const days = Array.from({ length }, (_, index) => addDays(from, index + 1));
        const to = addDays(from, length);
        expect(workingDaysBetween(from, to)).toBe(days.filter(isWorkingDay).length);
      }),
      cases(300),
    );
  });
});
