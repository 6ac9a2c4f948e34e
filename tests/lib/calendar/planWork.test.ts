import { describe, expect, it } from 'vitest';
import type { BenchWork } from '@/lib/calendar/benchWork';
import { type Calendar, calendarOf } from '@/lib/calendar/calendar';
import { minuteOf } from '@/lib/calendar/minutes';
import { planWork } from '@/lib/calendar/planWork';
import { usualBlocks } from '@/lib/calendar/usualBlocks';
import type { WorkPlan } from '@/lib/calendar/workPlan';
import type { Block, DaysOff } from '@/shared/schemas/benchWeek';
import { clubWork, looseWork } from '@/tests/fixtures/benchWork';
import { blocksOf } from '@/tests/fixtures/blocksOf';

function calendar(blocks: readonly Block[], daysOff: readonly Omit<DaysOff, 'id' | 'what'>[] = []): Calendar {
  const found = calendarOf({
    blocks: [...blocks],
    daysOff: daysOff.map((days, index) => ({ id: `off-${index}`, what: '', ...days })),
  });
  if (found === null) throw new Error('no blocks');
  return found;
}

function plan(on: Calendar, work: BenchWork, from: string): WorkPlan {
  const planned = planWork(on, [work], minuteOf(from));
  if (planned.kind !== 'planned') throw new Error(planned.kind);
  return planned.plan;
}

/** To the tenth of a minute. */
const tenths = (minutes: number) => Math.round(minutes * 10) / 10;

// One free hour an evening from 18:00, four on Saturday from 9:00; Wednesday 25 November 2026.
describe('the worked run in an hour an evening and four on Saturday', () => {
  const club = plan(calendar(usualBlocks), clubWork, '2026-11-25');

  it('heats the press up once, on Saturday: set-up, backs, break, badges and clean-down take 223 of 240 min', () => {
    expect(club.sessions).toHaveLength(1);
    expect(club.extra).toEqual({ sessions: 0, minutes: 0, inkMl: 0 });
    const [session] = club.sessions;
    expect(session).toMatchObject({ day: '2026-11-28', fromMinute: 540, pieces: 37 });
    expect(tenths(session?.minutes ?? 0)).toBe(223);
    expect(session?.parts.map(({ what, name, fromMinute }) => [what, name, tenths(fromMinute)])).toEqual([
      ['setUp', '', 540],
      ['press', 'Back', 565],
      ['break', '', 663.7],
      ['press', 'Chest', 673.7],
      ['cleanDown', '', 753],
    ]);
  });

  it('prints on the evening before and folds, packs and brings on evenings after', () => {
    expect(club.loose.map(({ what, day, minutes }) => [what, day, tenths(minutes)])).toEqual([
      ['print', '2026-11-25', 52.9],
      // 240 − 223 = 17 min of Saturday are left.
      ['finish', '2026-11-28', 17],
      ['finish', '2026-11-30', 27.4],
      ['pack', '2026-11-30', 12],
      // 20.6 min of Monday are too short for a way of 30.
      ['deliver', '2026-12-01', 30],
    ]);
    expect([club.firstDay, club.lastDay, club.ready]).toEqual(['2026-11-25', '2026-12-01', '2026-12-03']);
  });

  it('waits for the Saturday after where this one is a day off', () => {
    const away = calendar(usualBlocks, [{ from: '2026-11-28', to: '2026-11-28' }]);
    expect(plan(away, clubWork, '2026-11-25').sessions.map(({ day }) => day)).toEqual(['2026-12-05']);
  });
});

describe('work that no block holds in one session', () => {
  it('is split evenly into as few as fit, each a day, and what that takes more is told', () => {
    // Two hours an evening: 120 − 35 leaves 85 min of 178, so three sessions of 13, 12 and 12 shirts.
    const evenings = plan(calendar(blocksOf([2, 2, 2, 2, 2, 0, 0])), clubWork, '2026-11-25');
    expect(evenings.sessions.map(({ day, pieces }) => [day, pieces])).toEqual([
      ['2026-11-26', 13],
      ['2026-11-27', 12],
      ['2026-11-30', 12],
    ]);
    // 13 ÷ 37 × 178 = 62.5 min at the press, no break within two hours.
    expect(tenths(evenings.sessions[0]?.minutes ?? 0)).toBe(97.5);
    expect(evenings.extra).toEqual({ sessions: 2, minutes: 70, inkMl: 8 });
  });

  it('is not planned where a block does not hold even one piece, and says how long one would have to be', () => {
    const half = calendar(blocksOf([0.5, 0.5, 0.5, 0.5, 0.5, 0.5, 0.5]));
    const planned = planWork(half, [clubWork], minuteOf('2026-11-25'));
    // 35 min of set-up and clean-down and 178 ÷ 37 = 4.81 of a shirt.
    expect(planned).toMatchObject({ kind: 'noBlock', longestMinutes: 30 });
    expect(planned.kind === 'noBlock' ? tenths(planned.neededMinutes) : 0).toBe(39.8);
  });

  it('keeps the sessions that the job is priced for, also where one would fit', () => {
    const twice: BenchWork = { ...clubWork, press: clubWork.press && { ...clubWork.press, sessions: 2 } };
    const { sessions, extra } = plan(calendar(usualBlocks), twice, '2026-11-25');
    expect(sessions.map(({ day, pieces }) => [day, pieces])).toEqual([
      ['2026-11-28', 19],
      ['2026-12-05', 18],
    ]);
    expect(extra.sessions).toBe(0);
  });
});

describe('blocks', () => {
  const nights: readonly Block[] = [
    // Sunday 22:00 to Monday 2:00, and Monday 2:00 to 3:00 as a block of its own.
    { id: 'a', weekday: 6, fromMinute: 1320, minutes: 240 },
    { id: 'b', weekday: 0, fromMinute: 120, minutes: 60 },
    // Monday 1:00 to 2:00 once more.
    { id: 'c', weekday: 0, fromMinute: 60, minutes: 60 },
  ];

  it('run past midnight into the next week, and count once where they overlap', () => {
    const night = plan(calendar(nights), looseWork(300), '2026-11-25');
    expect(night.loose).toMatchObject([{ day: '2026-11-29', fromMinute: 1320, minutes: 300 }]);
    expect(night.days).toEqual(['2026-11-29', '2026-11-30']);
    expect(night.lastDay).toBe('2026-11-30');
  });

  it('end at midnight where the next day is off', () => {
    const on = calendar(nights, [{ from: '2026-11-30', to: '2026-12-04' }]);
    expect(plan(on, looseWork(120), '2026-11-25').lastDay).toBe('2026-11-29');
    expect(plan(on, looseWork(121), '2026-11-25').lastDay).toBe('2026-12-06');
  });

  it('that are none leave no day, and neither do days off for ever', () => {
    expect(planWork(calendar([]), [looseWork(1)], minuteOf('2026-11-25'))).toEqual({ kind: 'never' });
    const away = calendar(usualBlocks, [{ from: '2026-01-01', to: '9999-12-31' }]);
    expect(planWork(away, [looseWork(1)], minuteOf('2026-11-25'))).toEqual({ kind: 'never' });
  });

  it('all day and all week are free without a gap', () => {
    const { loose } = plan(calendar(blocksOf([24, 24, 24, 24, 24, 24, 24])), looseWork(3000), '2026-11-25');
    expect(loose).toMatchObject([{ day: '2026-11-25', fromMinute: 0, minutes: 3000 }]);
  });
});
