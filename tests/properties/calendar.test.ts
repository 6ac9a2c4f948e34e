import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BenchWork } from '@/lib/calendar/benchWork';
import { type Calendar, calendarOf } from '@/lib/calendar/calendar';
import { minutesBetween } from '@/lib/calendar/freeMinutes';
import { behindLoad, latestOfAll, loadOf, type OrderLoad } from '@/lib/calendar/load';
import { minuteOf } from '@/lib/calendar/minutes';
import { latestDates } from '@/lib/calendar/orderDates';
import { planWork } from '@/lib/calendar/planWork';
import type { WorkPlan } from '@/lib/calendar/workPlan';
import { addDays, daysBetween, weekdayOf } from '@/shared/days';
import type { Block, DaysOff } from '@/shared/schemas/benchWeek';
import { cases } from '@/tests/tools/cases';

const FIRST = '2026-11-23';
const day = fc.integer({ min: 0, max: 120 }).map((days) => addDays(FIRST, days));

const block = fc.record({
  id: fc.constant('block'),
  weekday: fc.integer({ min: 0, max: 6 }),
  fromMinute: fc.integer({ min: 0, max: 1439 }),
  minutes: fc.integer({ min: 1, max: 1440 }),
});
const off = fc.record({ id: fc.constant('off'), from: day, to: day, what: fc.constant('') });
const week = fc.record({
  blocks: fc.array(block, { minLength: 1, maxLength: 6 }),
  daysOff: fc.array(off, { maxLength: 3 }),
});

const minutes = fc.integer({ min: 0, max: 600 });
const work: fc.Arbitrary<BenchWork> = fc.record({
  before: fc.tuple(minutes).map(([one]) => [{ what: 'print', minutes: one } as const]),
  press: fc.option(
    fc.record({
      pieces: fc.integer({ min: 1, max: 60 }),
      sessions: fc.integer({ min: 1, max: 3 }),
      setUpMinutes: fc.integer({ min: 0, max: 40 }),
      cleanDownMinutes: fc.integer({ min: 0, max: 20 }),
      breakMinutes: fc.constantFrom(0, 10),
      inkMl: fc.constant(4),
      runs: fc.array(fc.record({ name: fc.constant('Back'), minutes }), { minLength: 1, maxLength: 3 }),
    }),
  ),
  after: fc
    .tuple(minutes, minutes)
    .map(([one, other]) => [
      { what: 'finish', minutes: one } as const,
      { what: 'deliver', minutes: other } as const,
    ]),
});
const orders = fc.array(
  fc.record({
    id: fc.uuid(),
    wantedOn: fc.option(day),
    works: fc.array(work, { minLength: 1, maxLength: 2 }),
    blanks: fc.option(fc.record({ ordered: fc.constant(FIRST), lead: fc.integer({ min: 0, max: 20 }) })),
  }),
  { maxLength: 4 },
);

type Week = { readonly blocks: Block[]; readonly daysOff: DaysOff[] };

function calendar(of: Week): Calendar {
  const found = calendarOf(of);
  if (found === null) throw new Error('no blocks');
  return found;
}

/** The definition itself, minute by minute and apart from the code: a block holds the minute, and its day is not off. */
function isFree({ blocks, daysOff }: Week, onDay: string, minute: number): boolean {
  if (daysOff.some(({ from, to }) => (from <= onDay && onDay <= to) || (to <= onDay && onDay <= from)))
    return false;
  const at = weekdayOf(onDay) * 1440 + minute;
  return blocks.some(({ weekday, fromMinute, minutes: long }) => {
    const since = (((at - weekday * 1440 - fromMinute) % 10_080) + 10_080) % 10_080;
    return since < long;
  });
}

const stretches = ({ sessions, loose }: WorkPlan) => [...sessions, ...loose];

/** Every tenth minute and the ends, a little inside. */
function minutesUsed({ day: first, fromMinute, minutes: long }: ReturnType<typeof stretches>[number]) {
  const times = [0.01, long - 0.01];
  for (let at = 10; at < long; at += 10) times.push(at);
  return times
    .filter((at) => at > 0 && at < long)
    .map((at) => ({
      day: addDays(first, Math.floor((fromMinute + at) / 1440)),
      minute: (fromMinute + at) % 1440,
    }));
}

describe('any work in any week', () => {
  it('takes no minute that is not free and none of a day off, and no minute twice', () => {
    fc.assert(
      fc.property(week, fc.array(work, { maxLength: 3 }), day, (of, works, from) => {
        const planned = planWork(calendar(of), works, minuteOf(from));
        if (planned.kind !== 'planned') return;
        for (const stretch of stretches(planned.plan))
          for (const used of minutesUsed(stretch)) expect(isFree(of, used.day, used.minute)).toBe(true);
        const ends = stretches(planned.plan)
          .map((one) => ({ from: minuteOf(one.day) + one.fromMinute, long: one.minutes }))
          .toSorted((one, other) => one.from - other.from);
        for (const [index, { from: begin }] of ends.entries()) {
          const before = ends[index - 1];
          if (before !== undefined) expect(begin).toBeGreaterThanOrEqual(before.from + before.long - 1e-6);
        }
      }),
      cases(300),
    );
  });

  it('is planned to the minute: what is planned is the work, its sessions and what they take more', () => {
    fc.assert(
      fc.property(week, fc.array(work, { maxLength: 3 }), day, (of, works, from) => {
        const planned = planWork(calendar(of), works, minuteOf(from));
        if (planned.kind !== 'planned') return;
        const { plan } = planned;
        const loose = works.flatMap(({ before, after }) => [...before, ...after]);
        const sum = (all: readonly { readonly minutes: number }[]) =>
          all.reduce((so, one) => so + one.minutes, 0);
        expect(sum(plan.loose)).toBeCloseTo(sum(loose), 3);
        const parts = plan.sessions.flatMap((session) => session.parts);
        const pressed = works.flatMap(({ press }) => press?.runs ?? []);
        expect(sum(parts.filter(({ what }) => what === 'press'))).toBeCloseTo(sum(pressed), 3);
        expect(sum(plan.sessions)).toBeCloseTo(sum(parts), 3);
        const pieces = works.reduce((so, { press }) => so + (press?.pieces ?? 0), 0);
        // A session without a minute of work is none.
        if (plan.sessions.length > 0 && works.every(({ press }) => press === null || sum(press.runs) > 1))
          expect(plan.sessions.reduce((so, session) => so + session.pieces, 0)).toBe(pieces);
      }),
      cases(300),
    );
  });

  it('free minutes between two days are those counted one by one', () => {
    fc.assert(
      fc.property(week, day, fc.integer({ min: 0, max: 10 }), (of, from, days) => {
        let counted = 0;
        for (let index = 0; index <= days; index += 1)
          for (let minute = 0; minute < 1440; minute += 1)
            if (isFree(of, addDays(from, index), minute)) counted += 1;
        expect(minutesBetween(calendar(of), from, addDays(from, days))).toBe(counted);
      }),
      cases(30),
    );
  });
});

describe('walking back and walking forward', () => {
  it('agree: begun on the last day it is still in time, and nothing later would be', () => {
    fc.assert(
      fc.property(week, fc.array(work, { minLength: 1, maxLength: 2 }), day, (of, works, wantedOn) => {
        const latest = latestDates(calendar(of), works, wantedOn, null);
        if (latest.kind !== 'latest') return;
        const { plan } = latest.dates;
        const forward = planWork(calendar(of), works, plan.span.from);
        expect(forward.kind).toBe('planned');
        if (forward.kind !== 'planned') return;
        expect(forward.plan.span.to).toBeLessThanOrEqual(plan.span.to + 1e-3);
        expect(daysBetween(forward.plan.ready, wantedOn)).toBeGreaterThanOrEqual(0);
        const total = stretches(plan).reduce((sum, one) => sum + one.minutes, 0);
        if (total < 1) return;
        // A minute later it ends after the last day at the bench.
        const tooLate = planWork(calendar(of), works, plan.span.from + 1);
        const end = latestDates(calendar(of), [], wantedOn, null);
        if (tooLate.kind === 'planned' && end.kind === 'latest')
          expect(tooLate.plan.span.to).toBeGreaterThan(end.dates.plan.span.to);
      }),
      cases(300),
    );
  });

  it('agree for orders behind one another too', () => {
    fc.assert(
      fc.property(week, orders, (of, all) => {
        const dated = all.map((one) => ({ ...one, blanks: null, lead: null }));
        const wanted = dated.filter(({ wantedOn }) => wantedOn !== null);
        const latest = latestOfAll(calendar(of), wanted);
        const begins = latest.flatMap((one) =>
          one.latest.kind === 'latest' ? [one.latest.dates.plan.span.from] : [],
        );
        const [first] = begins;
        if (first === undefined || begins.length < latest.length) return;
        const today = addDays(FIRST, Math.floor((first - minuteOf(FIRST)) / 1440));
        const load = loadOf(calendar(of), wanted, today);
        for (const { daysLate } of load.orders) expect(daysLate).toBe(0);
      }),
      cases(300),
    );
  });
});

describe('a growing load', () => {
  it('has no two orders at the bench at once', () => {
    fc.assert(
      fc.property(week, orders, (of, load) => {
        const plans = loadOf(calendar(of), load, FIRST).orders.flatMap(({ planned }) =>
          planned.kind === 'planned' ? [planned.plan.span] : [],
        );
        for (const [index, span] of plans.entries())
          expect(span.from).toBeGreaterThanOrEqual(plans[index - 1]?.to ?? minuteOf(FIRST));
      }),
      cases(200),
    );
  });

  it('never brings the earliest day of a new order forward', () => {
    const ready = (of: Week, load: readonly OrderLoad[], works: readonly BenchWork[]): string => {
      const planned = behindLoad(calendar(of), loadOf(calendar(of), load, FIRST), { works, blanks: null });
      return planned.kind === 'planned' ? planned.plan.ready : '9999-12-31';
    };
    fc.assert(
      fc.property(week, orders, orders, work, fc.nat(), (of, load, more, added, at) => {
        const before = ready(of, load, [added]);
        expect(daysBetween(before, ready(of, [...load, ...more], [added]))).toBeGreaterThanOrEqual(0);
        // The same orders with more to do in one of them.
        const grown = load.map((one, index) =>
          load.length > 0 && index === at % load.length
            ? {
                ...one,
                works: [
                  ...one.works,
                  { before: [], press: null, after: [{ what: 'pack', minutes: 45 } as const] },
                ],
              }
            : one,
        );
        expect(daysBetween(before, ready(of, grown, [added]))).toBeGreaterThanOrEqual(0);
      }),
      cases(300),
    );
  });
});
