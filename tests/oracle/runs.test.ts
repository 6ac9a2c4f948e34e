import type { Decimal } from 'decimal.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { clubOrder } from '@/lib/examples/clubOrder';
import { planRun } from '@/lib/making/planRun';
import type { RunJob } from '@/lib/making/runPlan';
import { blanksOfRun } from '@/lib/making/standard/blanksOfRun';
import { standardWork } from '@/lib/making/standard/standardWork';
import { runResult } from '@/lib/variances/runResult';
import { addDays } from '@/shared/days';
import { runSchema } from '@/shared/schemas/making/run';
import type { RunStandard } from '@/shared/schemas/making/runPapers';
import type { JobInput } from '@/shared/schemas/request';
import { ownBlock } from '@/tests/fixtures/clubRun';
import { actual, hour, noFacts, noteOf } from '@/tests/fixtures/clubStandard';
import { costed } from '@/tests/fixtures/costed';
import { DAY } from '@/tests/fixtures/numbers';
import { type JobShape, randomJob } from '@/tests/fixtures/randomJob';
import { cases, patience } from '@/tests/tools/cases';
import { perSheetOf } from './perSheetOf';
import { runOracle, varianceOracle } from './runOracle';

/*
 * Random runs of one job, planned and held against what they took, and worked out anew in fifty-digit decimals.
 */
const PATIENCE_MS = patience(60_000);
const shape = (lines: number): JobShape => ({ lines, placements: 2, presses: 2, own: 'none' });

const jobOf = (input: JobInput): RunJob => ({
  work: { jobId: 'job', orderId: null, stallDayId: null },
  input,
  costed: costed(input),
});

/** The clock counts minutes from 1969: the difference of two is exact to some 1e-8. */
const ON_CLOCK = 1e-7;

/** Sums of doubles against decimals. */
function near(found: number, wanted: Decimal, what: string, within = 1e-9): void {
  const most = within * Math.max(1, Math.abs(wanted.toNumber()));
  expect(Math.abs(wanted.minus(found).toNumber()), `${what}: ${found} for ${wanted}`).toBeLessThanOrEqual(
    most,
  );
}

function standardOf(job: RunJob): RunStandard {
  return {
    ...{ number: { count: 1, letter: 'A' }, issuedOn: DAY, runId: 'run', title: 'Run', currency: 'USD' },
    ...{
      cover: 'expected',
      works: [standardWork(job, blanksOfRun([job], 'expected'))],
      sizes: [],
      clock: [],
    },
  };
}

describe('the standard and the clock of a run agree with the trade’s formulas in decimals', () => {
  it.each([1, 2])('of a job of %s line(s)', { timeout: PATIENCE_MS }, (lines) => {
    fc.assert(
      fc.property(randomJob(shape(lines)), fc.boolean(), (drawn, isHalved) => {
        const pieces = drawn.job.lines
          .flatMap(({ quantities }) => quantities)
          .reduce((sum, { quantity }) => sum + quantity, 0);
        const piecesPerSession = isHalved ? Math.ceil(pieces / 2) : null;
        const input = { ...drawn, job: { ...drawn.job, piecesPerSession } };
        const job = jobOf(input);
        const wanted = runOracle(input, perSheetOf(job.costed));
        const [work] = standardOf(job).works;
        if (work === undefined) throw new Error('a run of no job');
        const drawnBlanks = work.lines
          .flatMap(({ sizes }) => sizes)
          .reduce((sum, one) => sum + one.wanted * one.blanksEach, 0);
        near(drawnBlanks, wanted.blanks, 'blanks');
        near(work.sheets.quantity, wanted.sheets, 'sheets');
        near(work.ink.mL, wanted.inkMl, 'mL');
        near(work.labour.minutes, wanted.minutes, 'paid minutes');
        for (const { lineId, slot, entering } of wanted.presses) {
          const placement = work.lines.find((line) => line.lineId === lineId)?.placements[slot];
          near(placement?.entering ?? Number.NaN, entering, `entering press ${slot} of ${lineId}`);
        }
        onTheClock(job, wanted);
      }),
      cases(60),
    );
  });
});

function onTheClock(job: RunJob, wanted: ReturnType<typeof runOracle>): void {
  // Three blocks of ten days each, a day apart: no session lacks room, and no two share a block.
  const days = [0, 11, 22].flatMap((from) => Array.from({ length: 10 }, (_, day) => from + day));
  const run = runSchema.parse({
    name: 'Run',
    works: [job.work],
    ownBlocks: days.flatMap((day) => [0, 720].map((from) => ownBlock(addDays(DAY, day), from, 720))),
  });
  const bench = { blocks: null, daysOff: [] };
  const found = planRun({
    run,
    bench,
    today: addDays(DAY, -90),
    found: [{ kind: 'costed', findings: [], ...job }],
  });
  if (found.kind !== 'planned') throw new Error(JSON.stringify(found.troubles));
  const { clock, heatings } = found.plan;
  const minutes = (what: string, name?: string) =>
    clock
      .filter((part) => part.what === what && (name === undefined || part.name === name))
      .reduce((sum, part) => sum + part.minutes, 0);
  // Placements of random jobs bear their ids as names.
  for (const { lineId, slot, testMinutes, pressMinutes } of wanted.presses) {
    near(minutes('test', `${lineId}-print-${slot}`), testMinutes, `tests of ${lineId} ${slot}`, ON_CLOCK);
    near(minutes('press', `${lineId}-print-${slot}`), pressMinutes, `presses of ${lineId} ${slot}`, ON_CLOCK);
  }
  near(minutes('print'), wanted.printMinutes, 'sheets on the clock', ON_CLOCK);
  near(minutes('setUp'), wanted.setUpMinutes.times(heatings), 'set-up', ON_CLOCK);
  near(minutes('cleanDown'), wanted.cleanDownMinutes.times(heatings), 'clean-down', ON_CLOCK);
  near(minutes('finish'), wanted.finishMinutes, 'folding', ON_CLOCK);
}

const used = fc.record({
  blanks: fc.integer({ min: 1, max: 300 }),
  blanksMinor: fc.option(fc.integer({ min: 0, max: 300_000 })),
  sheets: fc.integer({ min: 1, max: 400 }),
  sheetsMinor: fc.option(fc.integer({ min: 0, max: 90_000 })),
  inkMl: fc.integer({ min: 0, max: 400 }),
  minutes: fc.integer({ min: 0, max: 1_440 }),
});
type Used = typeof used extends fc.Arbitrary<infer Of> ? Of : never;

function expectVariances(input: JobInput, drawn: Used, good: readonly number[] | null): void {
  const job = jobOf(input);
  const standard = standardOf(job);
  const sizes = standard.works.flatMap(({ lines }) =>
    lines.flatMap((line) => line.sizes.map(({ size }) => ({ line, size }))),
  );
  const goodOf = (lineId: string, size: string) =>
    good?.[sizes.findIndex((one) => one.line.lineId === lineId && one.size === size)] ?? 0;
  const pressings = sizes.flatMap(({ line: { lineId, placements }, size }) =>
    placements.flatMap(({ placementId }) =>
      Array.from({ length: goodOf(lineId, size) }, () =>
        noteOf('pressing', {
          ...{ runId: 'run', standardId: null, jobId: 'job', lineId, placementId, size },
          ...{ result: 'good' as const, fault: null },
        }),
      ),
    ),
  );
  const { bars } = runResult(
    { body: standard },
    {
      facts: {
        ...noFacts,
        pressings,
        actuals: [
          actual({ of: 'blanks', quantity: drawn.blanks, amountMinor: drawn.blanksMinor }),
          actual({ of: 'sheets', quantity: drawn.sheets, amountMinor: drawn.sheetsMinor }),
          actual({ of: 'ink', mL: drawn.inkMl }),
        ],
        hours: [hour(drawn.minutes, 'rest')],
      },
      paid: { blank: () => null, sheet: () => null },
      orderHours: [],
    },
  );
  const isMade = pressings.length > 0;
  const oracle = runOracle(input, perSheetOf(job.costed), isMade ? goodOf : undefined);
  const wanted = varianceOracle(oracle, {
    ...drawn,
    blanksMoney: drawn.blanksMinor === null ? null : drawn.blanksMinor / 100,
    sheetsMoney: drawn.sheetsMinor === null ? null : drawn.sheetsMinor / 100,
  });
  for (const [name, amount] of Object.entries(wanted))
    near(bars.find((bar) => bar.line === name)?.amount ?? Number.NaN, amount, name);
}

describe('variances agree with the flexible budget in decimals', () => {
  it('of a job of two lines as planned', { timeout: PATIENCE_MS }, () => {
    fc.assert(
      fc.property(randomJob(shape(2)), used, (input, drawn) => expectVariances(input, drawn, null)),
      cases(60),
    );
  });

  it.each([1, 2, 3])(
    'of %s line(s) of which more or fewer came out, or none',
    { timeout: PATIENCE_MS },
    (lines) => {
      const ofSize = fc.oneof(fc.constant(0), fc.integer({ min: 0, max: 45 }));
      const good = fc.array(ofSize, { minLength: 6 * lines, maxLength: 6 * lines });
      fc.assert(
        fc.property(randomJob(shape(lines)), used, good, (input, drawn, made) =>
          expectVariances(input, drawn, made),
        ),
        cases(60),
      );
    },
  );

  it('of the worked run, and by hand', () => {
    const input = clubOrder(DAY, DAY);
    const oracle = runOracle(input, perSheetOf(costed(input)));
    const wanted = varianceOracle(oracle, {
      ...{ blanks: 41, blanksMoney: 202.95, sheets: 58, sheetsMoney: 8.7, inkMl: 44, minutes: 504 },
    });
    // (4.8297 − 4.95) · 41, (39.52 − 41) · 4.83, (0.14 − 0.15) · 58, (52.9 − 58) · 0.14, (35.1 − 44) · 0.16, 0.862 h too many.
    expect(Object.entries(wanted).map(([name, amount]) => [name, amount.toFixed(2)])).toEqual([
      ['blanksPrice', '-4.93'],
      ['blanksUsage', '-7.15'],
      ['paperPrice', '-0.58'],
      ['paperUsage', '-0.71'],
      ['inkUsage', '-1.42'],
      ['labour', '-15.52'],
      ['overhead', '-3.62'],
    ]);
  });
});
