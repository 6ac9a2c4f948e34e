import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { judgeJob } from '@/lib/costing/priceJob';
import { wholeJob } from '@/lib/grid/costSheet';
import { planRun } from '@/lib/making/planRun';
import { addDays } from '@/shared/days';
import { club, clubWith, TODAY } from '@/tests/fixtures/clubJob';
import { ownBlock, planned, runAsked, troubles, wall } from '@/tests/fixtures/clubRun';
import { costed, grid } from '@/tests/fixtures/costed';
import { cases } from '@/tests/tools/cases';

const few = [{ size: 'M', quantity: 6 }];

const tenths = (minutes: number) => Math.round(minutes * 10) / 10;

/** What, day and both ends by the wall clock. */
const told = (plan: ReturnType<typeof planned>) =>
  plan.clock.map(({ what, name, day, fromMinute, minutes }) => [
    what,
    name,
    day,
    wall(fromMinute),
    wall(fromMinute + minutes),
  ]);

describe('the worked run in one block from 18:00 to 23:00', () => {
  const day = addDays(TODAY, 3);
  const plan = planned(runAsked({ ownBlocks: [ownBlock(day)] }));

  it('is the clock worked by hand: 20:04, 20:14, 21:33, 22:17, 22:29, 22:39', () => {
    // Set-up 25; two tests 4.8 and 39.12 backs at 2.4 = 98.7; break 10; 37.76 badges at 2.1 = 79.3; 37 at 1.2; 12; 10.
    expect(told(plan)).toEqual([
      ['print', '', addDays(day, -1), '18:00', '20:12'],
      ['setUp', '', day, '18:00', '18:25'],
      ['test', 'Back picture', day, '18:25', '18:30'],
      ['press', 'Back picture', day, '18:30', '20:04'],
      ['break', '', day, '20:04', '20:14'],
      ['press', 'Chest badge', day, '20:14', '21:33'],
      ['finish', '', day, '21:33', '22:17'],
      ['pack', '', day, '22:17', '22:29'],
      ['cleanDown', '', day, '22:29', '22:39'],
    ]);
    expect(plan.isInOneBlock).toBe(true);
    expect(plan.heatings).toBe(1);
    expect(plan.more).toBe(null);
  });

  it('says that sheets come on the evening before, and that the way of 30 min finds no room in the 21 left', () => {
    expect(plan.notes).toEqual([
      { kind: 'printedBefore', day: addDays(day, -1), isPast: false },
      { kind: 'notDelivered', minutes: 30 },
    ]);
  });

  it('is 5 min shorter without tests: 20:09 after the break, 21:28, 22:35', () => {
    const bare = { club: clubWith({ 'job.lines.0.placements.0.testPresses': 0 }) };
    const ends = told(planned(runAsked({ ownBlocks: [ownBlock(day)] }, bare))).slice(1);
    expect(ends.map(([what, , , , to]) => [what, to])).toEqual([
      ['setUp', '18:25'],
      ['press', '19:59'],
      ['break', '20:09'],
      ['press', '21:28'],
      ['finish', '22:13'],
      ['pack', '22:25'],
      ['cleanDown', '22:35'],
    ]);
  });

  it('is the same on every day of a week and across the end of a month', () => {
    for (const on of ['2027-01-31', '2027-02-01', '2028-02-29', ...week(addDays(TODAY, 10))]) {
      const parts = told(planned(runAsked({ ownBlocks: [ownBlock(on)] })));
      expect(parts.map(([, , , , to]) => to)).toEqual(told(plan).map(([, , , , to]) => to));
      expect(parts.map(([, , at]) => at)).toEqual([addDays(on, -1), ...Array(8).fill(on)]);
    }
  });

  it('prints in the run’s own blocks where they have room for it', () => {
    const own = [ownBlock(addDays(day, -2), 19 * 60, 60), ownBlock(day)];
    const { clock, notes } = planned(runAsked({ ownBlocks: own }));
    // 39.124 ÷ 0.98 backs, 10.755 ÷ 0.98 sheets of badges and 2 tests are 52.897: at 2.5 min 132.24.
    expect(clock[0]).toMatchObject({ what: 'print', day: addDays(day, -2), fromMinute: 1140 });
    expect(tenths(clock[0]?.minutes ?? 0)).toBe(132.2);
    expect(notes.map(({ kind }) => kind)).toEqual(['notDelivered']);
  });

  it('takes its own blocks as they stand when they are over, and says so', () => {
    const late = runAsked({ ownBlocks: [ownBlock(day)] }, undefined, undefined, addDays(day, 4));
    const { notes, clock } = planned(late);
    expect(told(planned(late))).toEqual(told(plan));
    expect(clock).toEqual(plan.clock);
    expect(notes[0]).toEqual({ kind: 'past', day });
    expect(notes[1]).toEqual({ kind: 'printedBefore', day: addDays(day, -1), isPast: true });
  });
});

// One free hour an evening from 18:00, four on Saturday from 9:00; Wednesday 25 November 2026.
describe('the worked run in an hour an evening and four on Saturday', () => {
  it('presses on Saturday in one heating-up, and folds and packs on one evening', () => {
    const plan = planned(runAsked());
    expect(told(plan)).toEqual([
      ['print', '', '2026-11-25', '18:00', '20:12'],
      ['setUp', '', '2026-11-28', '09:00', '09:25'],
      ['test', 'Back picture', '2026-11-28', '09:25', '09:30'],
      ['press', 'Back picture', '2026-11-28', '09:30', '11:04'],
      ['break', '', '2026-11-28', '11:04', '11:14'],
      ['press', 'Chest badge', '2026-11-28', '11:14', '12:33'],
      ['cleanDown', '', '2026-11-28', '12:33', '12:43'],
      // 44.4 and 12 = 56.4 of 60 min; the 17 min left of Saturday would not end it a day sooner.
      ['finish', '', '2026-11-30', '18:00', '18:44'],
      ['pack', '', '2026-11-30', '18:44', '18:56'],
      ['deliver', '', '2026-12-01', '18:00', '18:30'],
    ]);
    expect([plan.heatings, plan.pricedHeatings, plan.more, plan.isInOneBlock]).toEqual([1, 1, null, false]);
    expect(tenths(plan.sessions[0]?.minutes ?? 0)).toBe(223);
    expect([plan.firstDay, plan.lastDay]).toEqual(['2026-11-25', '2026-12-01']);
  });

  it('begins on the day it is told to, and not before', () => {
    const { sessions } = planned(runAsked({ startsOn: '2026-11-29' }));
    expect(sessions.map(({ day }) => day)).toEqual(['2026-12-05']);
  });

  it('waits for the sheets to dry, and for the pieces to cool before they are folded', () => {
    // Friday 18:00: the printer runs until 20:12; 14 h of drying end on Saturday at 10:12, too late for 223 min.
    const dry = planned(runAsked({ startsOn: '2026-11-27', dryMinutes: 840 }));
    expect(told(dry)[1]).toEqual(['dry', '', '2026-11-27', '20:12', '34:12']);
    expect(dry.sessions[0]?.day).toBe('2026-12-05');
    // Pressed until Saturday 12:33, three days of cooling end on Tuesday at 12:33.
    const cool = planned(runAsked({ coolMinutes: 3 * 1440 }));
    expect(told(cool).find(([what]) => what === 'finish')?.[2]).toBe('2026-12-01');
    expect(
      told(cool)
        .find(([what]) => what === 'cool')
        ?.slice(2, 4),
    ).toEqual(['2026-11-28', '12:33']);
  });

  it('cools inside the block where all fits one', () => {
    const own = [ownBlock('2026-12-04', 960, 420)];
    const parts = told(planned(runAsked({ ownBlocks: own, coolMinutes: 30 })));
    expect(parts.slice(-5).map(([what, , , from]) => [what, from])).toEqual([
      // Pressed 16:00 + 3 h 33.
      ['cool', '19:33'],
      ['finish', '20:03'],
      ['pack', '20:47'],
      ['cleanDown', '20:59'],
      ['deliver', '21:09'],
    ]);
  });
});

describe('heating the press up once more', () => {
  // Two hours an evening: 120 − 35 leaves 85 min of 178, so three sessions.
  const evenings = { blocks: [0, 1, 2, 3, 4].map(evening), daysOff: [] };

  it('is not planned before it is accepted; what it takes is told: 35 min, 4 mL and 0.64 each', () => {
    const [trouble] = troubles(runAsked({}, undefined, evenings));
    expect(trouble).toMatchObject({ kind: 'moreHeatings', accepted: 1, needed: 3, longestMinutes: 120 });
    if (trouble?.kind !== 'moreHeatings') throw new Error(trouble?.kind);
    expect(trouble.more).toMatchObject({ heatings: 2, minutes: 70, inkMl: 8 });
    expect(trouble.more.inkCost).toBeCloseTo(1.28, 10);
    expect(tenths(trouble.neededMinutes)).toBe(223);
  });

  it('is planned once it is, tests in the first, each on a day of its own', () => {
    const { sessions, more, clock } = planned(runAsked({ heatings: 3 }, undefined, evenings));
    expect(sessions.map(({ pieces }) => pieces)).toEqual([13, 12, 12]);
    expect(new Set(sessions.map(({ day }) => day)).size).toBe(3);
    expect(more?.heatings).toBe(2);
    expect(clock.filter(({ what }) => what === 'test').map(({ session }) => session)).toEqual([0]);
    expect(clock.filter(({ what }) => what === 'setUp')).toHaveLength(3);
  });

  it('costs what the sums say of a job that is priced for it', () => {
    const [trouble] = troubles(runAsked({}, undefined, evenings));
    const more = trouble?.kind === 'moreHeatings' ? trouble.more : null;
    // 37 shirts at 13 a session are three.
    const [once, thrice] = [costed(club()), costed(clubWith({ 'job.piecesPerSession': 13 }))];
    expect(wholeJob(thrice.sheet, 'fullCost') - wholeJob(once.sheet, 'fullCost')).toBeCloseTo(
      more?.cost ?? 0,
      9,
    );
  });

  it('is not more than the job is priced for, whatever fewer was accepted', () => {
    const twice = { club: clubWith({ 'job.piecesPerSession': 19 }) };
    for (const heatings of [null, 1]) {
      const plan = planned(runAsked({ heatings }, twice));
      expect([plan.heatings, plan.more]).toEqual([2, null]);
      expect(plan.sessions.map(({ pieces }) => pieces)).toEqual([19, 18]);
    }
  });

  it('is never hidden in a block that holds no piece', () => {
    const half = { blocks: [{ id: 'a', weekday: 0, fromMinute: 1080, minutes: 30 }], daysOff: [] };
    const [trouble] = troubles(runAsked({ heatings: 9 }, undefined, half));
    // 35 min and a shirt at (93.9 + 79.3) ÷ 37 = 4.68.
    expect(trouble).toMatchObject({ kind: 'noBlock', longestMinutes: 30 });
    expect(trouble?.kind === 'noBlock' ? tenths(trouble.neededMinutes) : 0).toBe(39.7);
  });
});

describe('several jobs made together', () => {
  const both = {
    club: club(),
    again: clubWith({ 'job.name': 'Second club', 'job.lines.0.quantities': few }),
  };

  it('are heated up for once, which no job alone is priced for', () => {
    // Two sets of tests and 43 shirts: more than four hours.
    const plan = planned(runAsked({ ownBlocks: [ownBlock('2026-12-05', 480, 600)] }, both));
    expect([plan.heatings, plan.pricedHeatings]).toEqual([1, 2]);
    expect(plan.clock.filter(({ what }) => what === 'setUp')).toHaveLength(1);
    expect(plan.notes).toContainEqual({ kind: 'fewerHeatings', heatings: 1, priced: 2 });
    // Both backs, set alike, then both badges.
    expect(plan.turns.map(({ name, jobId }) => `${name} ${jobId}`)).toEqual([
      'Back picture club',
      'Back picture again',
      'Chest badge club',
      'Chest badge again',
    ]);
  });

  it('hold no more of a job in one session than it says that one carries', () => {
    // 40 at most 20 in a session: two. Ten more of another job beside them are 25 a session, but only 20 of the first.
    const forty = { size: 'M', quantity: 40 };
    const limited = {
      club: clubWith({ 'job.lines.0.quantities': [forty], 'job.piecesPerSession': 20 }),
      again: clubWith({
        'job.lines.0.quantities': [{ size: 'M', quantity: 10 }],
        'job.lines.0.placements.0.name': 'Other back',
      }),
    };
    const blocks = [ownBlock('2026-12-05', 480, 600), ownBlock('2026-12-06', 480, 600)];
    const plan = planned(runAsked({ ownBlocks: blocks }, limited));
    expect(plan.sessions.map(({ pieces }) => pieces)).toEqual([25, 25]);
    const pressed = (name: string, session: number) =>
      plan.clock
        .filter((part) => part.what === 'press' && part.name === name && part.session === session)
        .reduce((sum, { minutes }) => sum + minutes, 0);
    // A good back takes 2.4 ÷ (0.965 · 0.98) min.
    const each = 2.4 / (0.965 * 0.98);
    for (const session of [0, 1]) {
      expect(pressed('Back picture', session) / each).toBeCloseTo(20, 9);
      expect(pressed('Other back', session) / each).toBeCloseTo(5, 9);
    }
  });
});

describe('what keeps a run from being planned', () => {
  it('is named, each thing apart', () => {
    const empty = clubWith({ 'job.lines.0.quantities': [{ size: 'M', quantity: 0 }] });
    const stopped = clubWith({ 'job.lines.0.placements.0.prints.0.widthMm': 900 });
    const all = runAsked({}, { gone: null, empty, stopped }, { blocks: null, daysOff: [] });
    expect(troubles(all).map(({ kind }) => kind)).toEqual([
      'jobMissing',
      'noPieces',
      'jobStopped',
      'noBlocks',
    ]);
    expect(troubles(all)[2]).toMatchObject({ jobId: 'stopped', why: { severity: 'stop' } });
    expect(troubles(runAsked({}, {}))).toEqual([{ kind: 'noWorks' }]);
    expect(troubles(runAsked({ works: [{ jobId: 'club' }, { jobId: 'club' }] }))).toEqual([
      { kind: 'jobTwice', jobId: 'club' },
    ]);
  });

  it('is not a day that is too near to be promised: the pieces can still be made', () => {
    const late = clubWith({ 'job.wantedOn': TODAY });
    expect(judgeJob(late, grid).priced).toBe(null);
    expect(troubles(runAsked({}, { late }))).toEqual([]);
  });

  it('is own blocks that end before the work does', () => {
    // Two sessions of 223 min never lie in one block; 56 min of folding find none after.
    const short = runAsked({ ownBlocks: [ownBlock('2026-12-05', 480, 224)] });
    expect(troubles(short)).toEqual([{ kind: 'blocksEnd', isOwn: true }]);
    expect(planRun(runAsked({ ownBlocks: [] }))).toEqual({
      kind: 'troubled',
      troubles: [{ kind: 'noBlocks' }],
    });
  });
});

describe('work that is said to take no time', () => {
  it('is planned where there is a block at all, and takes none', () => {
    const nothing = clubWith({
      'workshop.rates.setUpMinutes.value': 0,
      'workshop.rates.cleanDownMinutes.value': 0,
      'job.lines.0.placements.0.handMinutes.value': 0,
      'job.lines.0.placements.1.handMinutes.value': 0,
    });
    const plan = planned(runAsked({ ownBlocks: [ownBlock('2026-12-05')] }, { club: nothing }));
    expect(plan.sessions).toHaveLength(1);
    expect(tenths(plan.sessions[0]?.minutes ?? 0)).toBe(56.4);
  });
});

describe('laws of the clock', () => {
  it('overlaps nothing at the bench, and comes to the minutes of the jobs and breaks, for any block', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 1439 }), fc.integer({ min: 280, max: 900 }), (from, minutes) => {
        const { clock } = planned(runAsked({ ownBlocks: [ownBlock(addDays(TODAY, 5), from, minutes)] }));
        const bench = clock.filter(({ what }) => what !== 'print' && what !== 'deliver');
        for (const [at, part] of bench.entries()) {
          const before = bench[at - 1];
          if (before !== undefined)
            expect(part.fromMinute).toBeCloseTo(before.fromMinute + before.minutes, 6);
        }
        // 25 + 98.7 + 10 + 79.3 + 44.4 + 12 + 10.
        expect(tenths(bench.reduce((sum, part) => sum + part.minutes, 0))).toBe(279.4);
      }),
      cases(20),
    );
  });
});

// Helpers

function evening(weekday: number) {
  return { id: `evening-${weekday}`, weekday, fromMinute: 1080, minutes: 120 };
}

function week(from: string) {
  return [0, 1, 2, 3, 4, 5, 6].map((days) => addDays(from, days));
}
