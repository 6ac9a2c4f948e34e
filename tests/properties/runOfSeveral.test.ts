import fc from 'fast-check';
import { expect, test } from 'vitest';
import { runMoves } from '@/lib/stock/runMoves';
import type { PricesPaid } from '@/lib/variances/runActuals';
import { runDone } from '@/lib/variances/runDone';
import { type RunResult, runResult } from '@/lib/variances/runResult';
import { fromMinor } from '@/shared/money';
import type { RunStandard } from '@/shared/schemas/making/runPapers';
import { actual, hour, noFacts } from '@/tests/fixtures/clubStandard';
import { allGood, drawnPressings, drawnStandard } from '@/tests/fixtures/drawnStandard';
import { cases } from '@/tests/tools/cases';

/* Runs of several jobs of several lines, some ordered and some to stock, of which anything may come or not. */

const run = drawnStandard.chain((standard) =>
  fc.record({
    standard: fc.constant(standard),
    pressings: drawnPressings(standard),
    blanks: fc.option(
      fc.tuple(fc.integer({ min: 0, max: 90 }), fc.option(fc.integer({ min: 0, max: 90_000 }))),
    ),
    mL: fc.option(fc.double({ min: 0, max: 200, noNaN: true })),
    minutes: fc.option(fc.double({ min: 0, max: 900, noNaN: true })),
    dearer: fc.option(fc.double({ min: -1, max: 5, noNaN: true })),
  }),
);
type Run = typeof run extends fc.Arbitrary<infer Of> ? Of : never;

/** Every size and sheet so much dearer than planned; null where no delivery tells. */
const paidAt = ({ works }: RunStandard, dearer: number | null): PricesPaid => ({
  blank: (blankId, size) => {
    const line = works.flatMap(({ lines }) => lines).find((one) => one.blankId === blankId);
    const price = line?.sizes.find((one) => one.size === size)?.price;
    return dearer === null || price === undefined ? null : price + dearer;
  },
  sheet: (sheetId) => {
    const price = works.find(({ sheets }) => sheets.sheetId === sheetId)?.sheets.price;
    return dearer === null || price === undefined ? null : price + dearer;
  },
});

const factsOf = ({ pressings, blanks, mL, minutes }: Omit<Run, 'standard' | 'dearer'>) => ({
  ...noFacts,
  pressings,
  actuals: [
    ...(blanks === null ? [] : [actual({ of: 'blanks', quantity: blanks[0], amountMinor: blanks[1] })]),
    ...(mL === null ? [] : [actual({ of: 'ink', mL })]),
  ],
  hours: minutes === null ? [] : [hour(minutes, 'rest')],
});

const resultOf = ({ standard, dearer, ...noted }: Run): RunResult =>
  runResult({ body: standard }, { facts: factsOf(noted), paid: paidAt(standard, dearer), orderHours: [] });

const close = (found: number, wanted: number): void =>
  expect(Math.abs(found - wanted)).toBeLessThanOrEqual(1e-7 * Math.max(1, Math.abs(wanted)));

test('gaps add up to what a run left less what its standard would have', () => {
  fc.assert(
    fc.property(run, (drawn) => {
      const result = resultOf(drawn);
      const { blanks, sheets, ink, labour, freight, otherCost, fees, reprints, revenue } = result.actuals;
      const used = [blanks, sheets, ink, labour].reduce((sum, { cost }) => sum + cost, 0);
      const spent = [freight, otherCost, fees, reprints].reduce((sum, { amount }) => sum + amount, 0);
      const overhead = labour.quantity * result.budget.overheadPerHour;
      const left = (revenue?.amount ?? 0) + result.spares.cost - used - overhead - spent;
      const quoted = drawn.standard.works.reduce(
        (sum, work) => sum + (work.revenue ?? 0) - work.fees - work.fullCost,
        0,
      );
      close(
        result.bars.reduce((sum, { amount }) => sum + amount, 0),
        left - quoted,
      );
    }),
    cases(500),
  );
});

test('bars add up to the cent, each within a cent of its own', () => {
  fc.assert(
    fc.property(run, (drawn) => {
      const { bars, bridge, sum } = resultOf(drawn);
      expect(bars.reduce((all, { minor }) => all + minor, 0)).toBe(sum);
      expect((bridge?.from ?? 0) + sum).toBe(bridge?.to);
      for (const { minor, amount } of bars)
        expect(Math.abs(fromMinor(minor, 'USD') - amount)).toBeLessThanOrEqual(0.010_000_001);
    }),
    cases(500),
  );
});

test('prices that were planned leave no price bar, whichever sizes of whichever jobs came', () => {
  fc.assert(
    fc.property(run, (drawn) => {
      const typed = drawn.blanks === null ? null : ([drawn.blanks[0], null] as [number, null]);
      const same = resultOf({ ...drawn, blanks: typed, dearer: 0 });
      for (const line of ['blanksPrice', 'paperPrice'] as const)
        close(same.bars.find((bar) => bar.line === line)?.amount ?? Number.NaN, 0);
      // All a coin dearer cost a coin on each.
      const more = resultOf({ ...drawn, blanks: typed, dearer: 1 });
      close(
        more.bars.find(({ line }) => line === 'blanksPrice')?.amount ?? Number.NaN,
        -more.actuals.blanks.quantity,
      );
    }),
    cases(300),
  );
});

test('what came as planned has no bar of more or fewer pieces', () => {
  fc.assert(
    fc.property(drawnStandard, (standard) => {
      const result = runResult(
        { body: standard },
        { facts: { ...noFacts, pressings: allGood(standard) }, paid: paidAt(standard, null), orderHours: [] },
      );
      close(result.bars.find(({ line }) => line === 'output')?.amount ?? Number.NaN, 0);
      expect(result.spares).toEqual({ pieces: 0, seconds: 0, cost: 0 });
    }),
    cases(200),
  );
});

test('spares and seconds are worth in the bridge what they lie in stock at', () => {
  fc.assert(
    fc.property(run, (drawn) => {
      const { standard } = drawn;
      const result = resultOf(drawn);
      const { moves } = runMoves(
        runDone({ ...factsOf(drawn), runId: 'run' }, { body: standard }, result, []),
      );
      const isOrdered = (jobId: string) =>
        standard.works.find((work) => work.jobId === jobId)?.orderId !== null;
      const kept = moves.filter(
        ({ item, grade }) => item.kind === 'finished' && (grade === 'second' || isOrdered(item.jobId)),
      );
      const minor = kept.reduce((sum, { quantity, unitCost }) => sum + quantity * (unitCost?.minor ?? 0), 0);
      expect(Math.round(result.spares.cost * 100)).toBe(minor);
    }),
    cases(200),
  );
});
