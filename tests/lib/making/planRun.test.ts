import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { formatterFor } from '@/app/_words/formatter';
import { runTroubleWords } from '@/app/_words/making/runs/runTroubleWords';
import { runTroubleWords as commandWords } from '@/app/_words/making/runTroubleWords';
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
      // Friday, the evening before: 52.9 min by hand of its 60, the printer 132.2.
      ['print', '', '2026-11-27', '18:00', '20:12'],
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
    expect([plan.firstDay, plan.lastDay]).toEqual(['2026-11-27', '2026-12-01']);
  });

  it('begins on the day it is told to, and not before', () => {
    const { sessions } = planned(runAsked({ startsOn: '2026-11-29' }));
    expect(sessions.map(({ day }) => day)).toEqual(['2026-12-05']);
  });

  it('waits for the sheets to dry, and for the pieces to cool before they are folded', () => {
    // Friday 18:00: the printer runs until 20:12; 14 h of drying end on Saturday at 10:12, too late for 223 min. So a week
    // later, and on its Thursday, for the Friday would be too late again.
    const dry = planned(runAsked({ startsOn: '2026-11-27', dryMinutes: 840 }));
    expect(told(dry)[1]).toEqual(['dry', '', '2026-12-03', '20:12', '34:12']);
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
    expect(tenths(trouble.acceptedMinutes)).toBe(223);
  });

  it('tells all in one apart from the longest of those that are priced', () => {
    const twice = { club: clubWith({ 'job.piecesPerSession': 19 }) };
    const [trouble] = troubles(runAsked({}, twice, evenings));
    if (trouble?.kind !== 'moreHeatings') throw new Error(trouble?.kind);
    expect([trouble.accepted, trouble.needed]).toEqual([2, 3]);
    // 35 + 178 + a break of 10; nineteen with the tests are 35 + 4.8 + 19 × (93.9 + 79.3) ÷ 37 = 128.7.
    expect(tenths(trouble.neededMinutes)).toBe(223);
    expect(tenths(trouble.acceptedMinutes)).toBe(128.7);
    const { workshop } = club();
    const told = runTroubleWords(trouble, formatterFor(workshop), workshop.locale, () => '').sentence;
    expect(told).toMatch(
      /^Planned with three heatings-up: all of it in one takes 3 h 43 min, the longest of two 2 h 9 min, and your longest block is 2 h\./,
    );
    expect(commandWords(trouble, formatterFor(workshop), workshop.locale)).toMatch(
      /^All pieces take 3 h 43 min with one heating-up, the longest of 2 takes 2 h 9 min, and/,
    );
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

  it('is left out again once longer blocks hold all in one, for what was accepted is the most there may be', () => {
    expect(planned(runAsked({ heatings: 3 })).heatings).toBe(1);
    // Accepted for two evenings of 160 min; then one of 300 takes its place.
    const short = [ownBlock('2026-12-05', 1080, 160), ownBlock('2026-12-06', 1080, 160)];
    const both = [...short, ownBlock('2026-12-07', 1080, 160)];
    expect(planned(runAsked({ heatings: 2, ownBlocks: both })).heatings).toBe(2);
    expect(planned(runAsked({ heatings: 2, ownBlocks: [ownBlock('2026-12-05')] })).heatings).toBe(1);
  });

  it('is taken where fewer find a block, but leave no room for what follows', () => {
    // 223 min fill the last block of 240 but for 17, and 56.4 of folding are left; two of 129 min leave 31 twice.
    const own = [
      ownBlock('2026-12-05', 1080, 160),
      ownBlock('2026-12-06', 1080, 160),
      ownBlock('2026-12-07', 1080, 240),
    ];
    expect(troubles(runAsked({ ownBlocks: own }))).toEqual([{ kind: 'blocksEnd', isOwn: true }]);
    expect(planned(runAsked({ heatings: 2, ownBlocks: own })).heatings).toBe(2);
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

describe('when the sheets are printed', () => {
  it('is never before the moment in which it is planned', () => {
    // Saturday 9:00 to 13:00 and nothing else; planned on Saturday at 11:25, a quarter of an hour rounded up.
    const bench = { blocks: [{ id: 'sat', weekday: 5, fromMinute: 540, minutes: 720 }], daysOff: [] };
    const at = (nowMinute: number) =>
      planned({ ...runAsked({}, undefined, bench, '2026-11-28'), nowMinute }).clock.map(
        ({ what, day, fromMinute }) => `${what} ${day} ${wall(fromMinute)}`,
      );
    expect(at(0).slice(0, 2)).toEqual(['print 2026-11-28 09:00', 'setUp 2026-11-28 11:12']);
    expect(at(690).slice(0, 2)).toEqual(['print 2026-11-28 11:30', 'setUp 2026-11-28 13:42']);
    // 132 and 223 min no longer fit before 21:00; printed now, the sheets would lie for a week.
    expect(at(1020).slice(0, 2)).toEqual(['print 2026-12-05 09:00', 'setUp 2026-12-05 11:12']);
  });

  it('is before own blocks from now on, where the evening before is over', () => {
    const at = (nowMinute: number) =>
      planned({
        ...runAsked({ ownBlocks: [ownBlock('2026-11-28')] }, undefined, undefined, '2026-11-28'),
        nowMinute,
      });
    expect(told(at(690)).slice(0, 2)).toEqual([
      ['print', '', '2026-11-28', '11:30', '13:42'],
      ['setUp', '', '2026-11-28', '18:00', '18:25'],
    ]);
    // 15:47 is the last moment: 132.2 min before 18:00.
    expect(at(947).notes[0]).toEqual({ kind: 'printedBefore', day: '2026-11-28', isPast: false });
    const late = at(948);
    expect(late.notes[0]).toEqual({ kind: 'sheetsTaken' });
    expect(late.clock[0]).toMatchObject({ what: 'setUp', day: '2026-11-28', fromMinute: 1080 });
  });

  it('is in a long own block first where the time before it is too short', () => {
    // At 11:30 the block of 12:00 to 23:00 holds 132 min of printing and 279 of the rest.
    const own = [ownBlock('2026-11-28', 720, 660)];
    const asked = runAsked({ ownBlocks: own }, undefined, undefined, '2026-11-28');
    expect(told(planned({ ...asked, nowMinute: 690 })).slice(0, 2)).toEqual([
      ['print', '', '2026-11-28', '12:00', '14:12'],
      ['setUp', '', '2026-11-28', '14:12', '14:37'],
    ]);
  });

  it('is before each heating-up for that one alone, on the evening before', () => {
    // Saturdays of 160 min hold 133 of the work in two, evenings of an hour the sheets: 37 as 19 and 18.
    const evenings = [0, 1, 2, 3, 4].map((weekday) => ({ ...evening(weekday), minutes: 60 }));
    const bench = { blocks: [...evenings, { ...evening(5), fromMinute: 540, minutes: 160 }], daysOff: [] };
    const plan = planned(runAsked({ heatings: 2 }, undefined, bench));
    expect(plan.sessions.map(({ day, pieces }) => [day, pieces])).toEqual([
      ['2026-11-28', 19],
      ['2026-12-05', 18],
    ]);
    const prints = plan.clock.filter(({ what }) => what === 'print');
    expect(prints.map(({ day, fromMinute, minutes }) => [day, fromMinute, tenths(minutes)])).toEqual([
      // 132.24 · 19 ÷ 37 and · 18 ÷ 37.
      ['2026-11-27', 1080, 67.9],
      ['2026-12-04', 1080, 64.3],
    ]);
  });

  it('goes over several evenings where no one holds it, as late as it can', () => {
    // 30 min an evening: 52.9 by hand are Thursday's 30 and 22.9 of Friday.
    const evenings = [0, 1, 2, 3, 4].map((weekday) => ({ ...evening(weekday), minutes: 30 }));
    const bench = { blocks: [...evenings, { ...evening(5), fromMinute: 540, minutes: 240 }], daysOff: [] };
    const prints = planned(runAsked({}, undefined, bench)).clock.filter(({ what }) => what === 'print');
    expect(prints.map(({ day, fromMinute }) => [day, fromMinute])).toEqual([
      ['2026-11-26', 1080],
      ['2026-11-27', 1080],
    ]);
  });
});

describe('jobs that are wanted on days of their own', () => {
  // 43 shirts with two sets of tests in two heatings-up, 22 and 21; the six of the second job are wanted first.
  const both = {
    club: clubWith({ 'job.wantedOn': '2026-12-24' }),
    again: clubWith({
      'job.name': 'Second club',
      'job.wantedOn': '2026-12-10',
      'job.lines.0.quantities': few,
    }),
  };
  const own = [5, 6, 7].map((at) => ownBlock(`2026-12-0${at}`, 1080, 200));

  it('are heated up for in the order of those days', () => {
    const plan = planned(runAsked({ ownBlocks: own }, both));
    expect(plan.sessions.map(({ pieces }) => pieces)).toEqual([22, 21]);
    const heatedFor = (jobId: string) => [
      ...new Set(plan.clock.flatMap(({ turn, session }) => (turn?.jobId === jobId ? [session] : []))),
    ];
    expect(heatedFor('again')).toEqual([0]);
    expect(heatedFor('club')).toEqual([0, 1]);
  });

  it('come first of prints that the order of work leaves alike', () => {
    const names = planned(runAsked({ ownBlocks: own }, both)).turns.map(({ jobId }) => jobId);
    expect(names).toEqual(['again', 'club', 'again', 'club']);
  });
});

describe('own blocks that are doubtful', () => {
  it('end when they begin', () => {
    const empty = runAsked({ ownBlocks: [ownBlock('2026-11-30', 1140, 1440), ownBlock('2026-12-05')] });
    expect(troubles(empty)).toEqual([{ kind: 'blockEmpty', day: '2026-11-30', fromMinute: 1140 }]);
  });

  it('overlap: they count once, and that is told where it holds the work and where it does not', () => {
    const from = (hour: number, day = '2026-11-30') => ownBlock(day, hour * 60, 180);
    // 18:00 to 21:00 and 20:00 to 23:00 are 300 min.
    const [note] = planned(runAsked({ ownBlocks: [from(20), from(18)] })).notes;
    expect(note).toEqual({ kind: 'blocksOverlap', day: '2026-11-30', other: '2026-11-30' });
    // From 23:00 to 2:00 and from 1:00 to 4:00 of the next day: 300 min, less than 279 and 60 for the way.
    expect(planned(runAsked({ ownBlocks: [from(23), from(1, '2026-12-01')] })).notes[0]).toEqual({
      ...{ kind: 'blocksOverlap', day: '2026-12-01', other: '2026-11-30' },
    });
    const twice = [ownBlock('2026-11-30', 1080, 230), ownBlock('2026-11-30', 1080, 230)];
    expect(troubles(runAsked({ ownBlocks: twice }))).toEqual([
      { kind: 'blocksOverlap', day: '2026-11-30', other: '2026-11-30' },
      { kind: 'blocksEnd', isOwn: true },
    ]);
  });

  it('are none that touch, nor one over midnight', () => {
    const touching = [ownBlock('2026-11-30', 1080, 120), ownBlock('2026-11-30', 1200, 180)];
    expect(planned(runAsked({ ownBlocks: touching })).notes.map(({ kind }) => kind)).toEqual([
      'printedBefore',
      'notDelivered',
    ]);
    const night = planned(runAsked({ ownBlocks: [ownBlock('2026-11-30', 1320, 300)] }));
    // 22:00 and 279.4 min.
    expect(told(night).at(-1)).toEqual(['cleanDown', '', '2026-11-30', '26:29', '26:39']);
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
