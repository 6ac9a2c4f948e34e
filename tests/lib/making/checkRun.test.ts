import { describe, expect, it } from 'vitest';
import { checkRun } from '@/lib/making/check/checkRun';
import { begunLate } from '@/lib/making/check/doneLate';
import { planRun } from '@/lib/making/planRun';
import type { RunAsked } from '@/lib/making/runPlan';
import { standardOf } from '@/lib/making/standard/standardOf';
import type { JobInput } from '@/shared/schemas/request';
import { club, clubWith, mugs } from '@/tests/fixtures/clubJob';
import { jobsOf, ownBlock, runAsked } from '@/tests/fixtures/clubRun';

const enough = { S: 5, M: 11, L: 13, XL: 10, '2XL': 5, '3XL': 1 };
const stocked = (onHand: Readonly<Record<string, number>>, of = club()): JobInput => ({
  ...of,
  onHand: { 'white-shirt': { ...onHand } },
});

const planned = { dryMinutes: 10, coolMinutes: 0 };

function found(
  fields: Readonly<Record<string, unknown>> = {},
  inputs: Readonly<Record<string, JobInput>> = { club: stocked(enough) },
  isBegun = false,
) {
  return foundIn(runAsked({ ...planned, ownBlocks: [ownBlock('2026-12-05')], ...fields }, inputs), isBegun);
}

function foundIn(asked: RunAsked, isBegun = false, kept: Parameters<typeof checkRun>[0]['kept'] = []) {
  const plan = planRun(asked);
  return checkRun({
    ...{ runId: 'run-1', run: asked.run, jobs: jobsOf(asked), isBegun, kept },
    plan: plan.kind === 'planned' ? plan.plan : null,
  });
}

const verdicts = (...given: Parameters<typeof found>) =>
  found(...given).map(({ id, severity, variant }) => `${id} ${severity} ${variant}`);

describe('a run with all it needs', () => {
  it('is told nothing', () => {
    expect(found()).toEqual([]);
  });
});

describe('TIM-01, done after the day it is wanted', () => {
  const wanted = (wantedOn: string | null) => ({
    club: stocked(enough, clubWith({ 'job.wantedOn': wantedOn })),
  });

  it('cautions of each job, with the days it is late', () => {
    // Pressed and packed on Saturday 5 December; the way there finds no room in its own block.
    expect(found({}, wanted('2026-11-29'))).toMatchObject([
      {
        ...{ id: 'TIM-01', severity: 'caution', variant: 'runLate' },
        facts: { days: 6, wantedOn: '2026-11-29', doneOn: '2026-12-05' },
      },
    ]);
    expect(verdicts({}, wanted('2026-12-04'))).toEqual(['TIM-01 caution runLate']);
    expect(verdicts({}, wanted('2026-12-05'))).toEqual([]);
    expect(verdicts({}, wanted(null))).toEqual([]);
  });

  it('holds against the way to the customer where that is planned', () => {
    const own = [ownBlock('2026-12-05'), ownBlock('2026-12-08', 1080, 60)];
    expect(found({ ownBlocks: own }, wanted('2026-12-07'))[0]?.facts).toMatchObject({ days: 1 });
  });
});

describe('TIM-01 of a run that has begun', () => {
  const wanted = (wantedOn: string | null) => ({ club: clubWith({ 'job.wantedOn': wantedOn }) });
  const asked = (day: string, wantedOn: string | null) =>
    runAsked({ ...planned, ownBlocks: [ownBlock(day)] }, wanted(wantedOn));
  const then = asked('2026-12-05', null);
  const plan = planRun(then);
  if (plan.kind !== 'planned') throw new Error(plan.kind);
  const standard = standardOf({
    ...{ runId: 'run-1', run: then.run, jobs: jobsOf(then), plan: plan.plan },
    ...{ number: { count: 1, letter: 'A' }, issuedOn: '2026-11-25' },
  });

  it('is held against the frozen clock, whatever the plan would be now, and the day it is wanted now', () => {
    // Frozen for Saturday 5 December; now it would be planned for the 8th.
    const late = (wantedOn: string | null) => begunLate(standard, jobsOf(asked('2026-12-08', wantedOn)));
    expect(late('2026-12-03')).toMatchObject([
      { id: 'TIM-01', severity: 'caution', variant: 'runLate', facts: { days: 2, doneOn: '2026-12-05' } },
    ]);
    expect(late('2026-12-05')).toEqual([]);
    expect(late(null)).toEqual([]);
  });
});

describe('REC-10, sheets between printing and pressing', () => {
  it('cautions of less than 5 min', () => {
    // Set-up of 2 min, and one long block in which the press waits for nothing but the sheets.
    const quick = { club: stocked(enough, clubWith({ 'workshop.rates.setUpMinutes.value': 2 })) };
    const bench = { blocks: [{ id: 'all', weekday: 5, fromMinute: 480, minutes: 900 }], daysOff: [] };
    const at = (dryMinutes: number) =>
      foundIn(runAsked({ ...planned, dryMinutes }, quick, bench)).filter(({ id }) => id === 'REC-10');
    // Two minutes of set-up and the drying.
    expect(at(3)).toEqual([]);
    expect(at(2.9)).toMatchObject([
      { severity: 'caution', variant: 'wet', limit: { value: 5, unit: 'min' } },
    ]);
    expect(at(0)[0]?.facts).toMatchObject({ minutes: expect.closeTo(2, 6), least: 5 });
  });

  it('notes what lies unsealed for more than 48 h, and asks where nobody has said', () => {
    // Printed Thursday 18:00 to 20:12; pressed on Saturday from 20:12 + 48 h on, or a minute before.
    const late = (fromMinute: number, isStoredSealed: boolean | null) =>
      verdicts({
        isStoredSealed,
        ownBlocks: [ownBlock('2026-12-03', 1080, 60), ownBlock('2026-12-05', fromMinute)],
      });
    // 20:12.24 less 25 min of set-up is 19:47.24.
    expect(late(1188, false)).toEqual(['REC-10 note unsealed']);
    expect(late(1188, null)).toEqual(['REC-10 note untold']);
    expect(late(1188, true)).toEqual([]);
    expect(late(1187, false)).toEqual([]);
  });

  it('goes by the sheets that were printed first where they come on several evenings', () => {
    // 52.9 min by hand: 30 on Tuesday to 18:30 and the rest on Thursday, whose 40 do not hold all; pressed from Friday 18:25 on, 71.9 h later.
    const evenings = [
      ownBlock('2026-12-01', 1080, 30),
      ownBlock('2026-12-03', 1080, 40),
      ownBlock('2026-12-04'),
    ];
    expect(verdicts({ isStoredSealed: false, ownBlocks: evenings })).toEqual(['REC-10 note unsealed']);
    const sooner = [ownBlock('2026-12-02', 1110, 30), ...evenings.slice(1)];
    expect(verdicts({ isStoredSealed: false, ownBlocks: sooner })).toEqual([]);
  });
});

describe('TIM-05, waits that are not in the plan', () => {
  it('notes drying and, of hard goods, cooling', () => {
    expect(verdicts({ dryMinutes: null })).toEqual(['TIM-05 note dry']);
    expect(verdicts({ dryMinutes: 0 })).toEqual([]);
    expect(verdicts({ coolMinutes: null })).toEqual([]);
    const cups = { mugs: mugs() };
    const wide = { ownBlocks: [ownBlock('2026-12-05', 480, 900)] };
    expect(verdicts({ ...wide, coolMinutes: null }, cups)).toContain('TIM-05 note cool');
    expect(verdicts({ ...wide, coolMinutes: 0 }, cups)).not.toContain('TIM-05 note cool');
  });

  it('tells of the first wash where shirts are with the customer within 24 h', () => {
    // Pressed 18:00 to 21:33; brought after 30 min that begin on the next evening.
    const next = (fromMinute: number) =>
      verdicts({ ownBlocks: [ownBlock('2026-12-05'), ownBlock('2026-12-06', fromMinute, 60)] });
    // 21:33 less 30 min is 21:03 of the next day.
    expect(next(1262)).toEqual(['TIM-05 note wash']);
    expect(next(1264)).toEqual([]);
  });
});

describe('QTY-07, blanks against what lies at home', () => {
  it('notes the sizes that are short, spares among them', () => {
    const [finding] = found({}, { club: stocked({ ...enough, M: 10, '3XL': -1 }) });
    expect(finding).toMatchObject({
      ...{ id: 'QTY-07', severity: 'note', variant: 'short' },
      facts: { blank: 'White shirt, 100 % polyester', pieces: 3, each: 'M 1, 3XL 2' },
    });
    expect(found({}, { club: stocked({ ...enough, M: 11 }) })).toEqual([]);
  });

  it('counts what other work keeps as gone', () => {
    const asked = runAsked(
      { ...planned, ownBlocks: [ownBlock('2026-12-05')] },
      { club: stocked({ ...enough, M: 14 }) },
    );
    const kept = (quantity: number) =>
      foundIn(asked, false, [{ item: { kind: 'blank', blankId: 'white-shirt', size: 'M' }, quantity }]);
    // 11 of 14 are taken: three are free for others.
    expect(kept(3)).toEqual([]);
    expect(kept(5)).toMatchObject([{ id: 'QTY-07', variant: 'short', found: { value: 2 } }]);
  });

  it('goes by the cover of the run, and by all its jobs together', () => {
    expect(found({ cover: 'sure' })[0]?.facts).toMatchObject({
      each: 'S 1, M 1, L 1, 2XL 1, 3XL 1',
      pieces: 5,
    });
    const both = { club: stocked(enough), again: stocked(enough) };
    const wide = { ownBlocks: [ownBlock('2026-12-05', 480, 900)] };
    // Twice the shirts share their spares: S 10, M 21, L 25, XL 18, 2XL 10, 3XL 3 reach 75.4 %, found by trying all
    // sets; 45 of the 87 lie at home.
    expect(found(wide, both)[0]?.facts).toMatchObject({ pieces: 42 });
  });

  it('never takes what nobody counted for nothing or for enough', () => {
    const { S: _s, ...others } = enough;
    expect(found({}, { club: stocked(others) })).toMatchObject([
      { variant: 'uncounted', facts: { each: 'S 5' } },
    ]);
  });

  it('is silent once the run has begun, and of what the customer brings', () => {
    expect(verdicts({}, { club: stocked({}) }, true)).toEqual([]);
    const brought = clubWith({ 'blank:white-shirt.suppliedBy': 'customer' });
    expect(verdicts({}, { club: stocked({}, brought) })).toEqual([]);
  });
});

describe('a run that was put away', () => {
  it('is not looked at', () => {
    expect(found({ archivedOn: '2026-12-01', dryMinutes: null })).toEqual([]);
  });
});
