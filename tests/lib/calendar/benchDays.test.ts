import { describe, expect, it } from 'vitest';
import { type BenchDay, benchDays, planMinutes } from '@/lib/calendar/benchDays';
import { calendarOf } from '@/lib/calendar/calendar';
import { minuteOf } from '@/lib/calendar/minutes';
import { planWork } from '@/lib/calendar/planWork';
import { clubWork, looseWork } from '@/tests/fixtures/benchWork';
import { blocksOf } from '@/tests/fixtures/blocksOf';

/* 2026-11-27 is a Friday. An hour on each evening, four on Saturday, nothing on Sunday. */
const calendar = calendarOf({ blocks: blocksOf([1, 1, 1, 1, 1, 4, 0]), daysOff: [] });
if (calendar === null) throw new Error('the blocks make a calendar');
const planFrom = (day: string, work = clubWork) => {
  const planned = planWork(calendar, [work], minuteOf(day));
  if (planned.kind !== 'planned') throw new Error('it can be planned');
  return planned.plan;
};
const seen = { from: '2026-11-27', wantedOn: '2026-12-14', most: 30 };
const ofDay = (days: readonly BenchDay[], day: string) => days.find((one) => one.day === day);

describe('days at the bench', () => {
  it('go from today to the wanted day without those on which nothing can be done', () => {
    const days = benchDays(calendar, null, [], seen);
    expect(days[0]).toEqual({ day: '2026-11-27', free: 60, own: 0, others: 0, isWanted: false });
    expect(ofDay(days, '2026-11-28')?.free).toBe(240);
    expect(ofDay(days, '2026-11-29')).toBeUndefined();
    // 18 days less three Sundays; the last is the Monday it is wanted on.
    expect(days).toHaveLength(15);
    expect(days.at(-1)).toMatchObject({ day: '2026-12-14', isWanted: true });
  });

  it('tell the wanted day though nothing can be done on it', () => {
    const days = benchDays(calendar, null, [], { ...seen, wantedOn: '2026-12-13' });
    expect(days.at(-1)).toEqual({ day: '2026-12-13', free: 0, own: 0, others: 0, isWanted: true });
  });

  it('hold the minutes of this order and of others apart, and all of each', () => {
    const own = planFrom('2026-11-27');
    const other = planFrom('2026-11-30', looseWork(90));
    const days = benchDays(calendar, own, [other], seen);
    // The worked run: printing 52.9 on Friday; on Saturday 223 at the press and 17 of folding fill the four hours.
    expect(ofDay(days, '2026-11-27')?.own).toBeCloseTo(52.9, 6);
    expect(ofDay(days, '2026-11-28')?.own).toBeCloseTo(240, 6);
    // An hour on Monday, half of one on Tuesday.
    expect(ofDay(days, '2026-11-30')?.others).toBeCloseTo(60, 6);
    expect(ofDay(days, '2026-12-01')?.others).toBeCloseTo(30, 6);
    expect(days.reduce((sum, one) => sum + one.own, 0)).toBeCloseTo(planMinutes(own), 6);
  });

  it('leave out the first free ones where there are too many, and keep those of the order', () => {
    const own = planFrom('2026-12-04');
    const days = benchDays(calendar, own, [], { ...seen, most: 9 });
    expect(days).toHaveLength(9);
    expect(days[0]).toMatchObject({ day: '2026-12-04' });
    expect(days.at(-1)).toMatchObject({ day: '2026-12-14' });
  });

  it('end somewhere for a day that is wanted in a hundred years', () => {
    expect(benchDays(calendar, null, [], { ...seen, wantedOn: '2126-12-14', most: 30 })).toHaveLength(30);
  });

  it('keep the wanted day and those of the order where few fit, and drop idle ones between', () => {
    const own = planFrom('2026-11-27');
    const days = benchDays(calendar, own, [], { ...seen, most: 5 });
    // Friday to Tuesday the work, no Sunday; then Monday the 14th.
    expect(days.map(({ day }) => day)).toEqual([
      ...['2026-11-27', '2026-11-28', '2026-11-30', '2026-12-01', '2026-12-14'],
    ]);
  });
});
