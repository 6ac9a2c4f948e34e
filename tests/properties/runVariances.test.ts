import fc from 'fast-check';
import { expect, test } from 'vitest';
import { entriesInForce } from '@/lib/stored/entriesInForce';
import { runResult } from '@/lib/variances/runResult';
import { fromMinor } from '@/shared/money';
import type { Pressing } from '@/shared/schemas/making/runEvents';
import { actual, clubPressings, clubStandard, hour, noFacts } from '@/tests/fixtures/clubStandard';
import { cases } from '@/tests/tools/cases';

const money = fc.integer({ min: 0, max: 200_000 });
const figure = fc.double({ min: 0, max: 500, noNaN: true });

const runs = fc.record({
  // All good, two pieces are beyond the order.
  kept: fc.oneof(
    fc.array(fc.constantFrom<Pressing['result']>('good', 'good', 'second', 'scrap'), { maxLength: 80 }),
    fc.constant(Array.from({ length: 80 }, (): Pressing['result'] => 'good')),
  ),
  blanks: fc.option(fc.tuple(fc.integer({ min: 0, max: 90 }), fc.option(money))),
  sheets: fc.option(fc.tuple(figure, fc.option(money))),
  ink: fc.option(figure),
  amounts: fc.array(fc.tuple(fc.constantFrom('freight', 'otherCost', 'fees', 'reprints', 'revenue'), money), {
    maxLength: 6,
  }),
  hours: fc.array(
    fc.tuple(
      fc.double({ min: 0, max: 900, noNaN: true }),
      fc.constantFrom('presses', 'sheets', 'rest', 'office'),
    ),
    { maxLength: 5 },
  ),
  paid: fc.option(figure),
});

const facts = (run: typeof runs extends fc.Arbitrary<infer Run> ? Run : never) => ({
  ...noFacts,
  pressings: clubPressings().flatMap((entry, at) => {
    const result = run.kept[at];
    return result === undefined ? [] : [{ ...entry, body: { ...entry.body, result } }];
  }),
  actuals: [
    ...(run.blanks === null
      ? []
      : [actual({ of: 'blanks', quantity: run.blanks[0], amountMinor: run.blanks[1] })]),
    ...(run.sheets === null
      ? []
      : [actual({ of: 'sheets', quantity: run.sheets[0], amountMinor: run.sheets[1] })]),
    ...(run.ink === null ? [] : [actual({ of: 'ink', mL: run.ink })]),
    ...run.amounts.map(([of, amountMinor]) => actual({ of, amountMinor })),
  ],
  hours: run.hours.map(([minutes, element]) => hour(minutes, element)),
});

const asked = (run: Parameters<typeof facts>[0]) => ({
  facts: facts(run),
  paid: { blank: () => run.paid, sheet: () => run.paid },
  orderHours: [],
});

/** What a run left, from its actuals alone. */
function leftBy({ actuals, spares }: ReturnType<typeof runResult>): number {
  const { blanks, sheets, ink, labour, freight, otherCost, fees, reprints, revenue } = actuals;
  const used = [blanks, sheets, ink, labour].reduce((sum, { cost }) => sum + cost, 0);
  const spent = [freight, otherCost, fees, reprints].reduce((sum, { amount }) => sum + amount, 0);
  // What came beyond the order lies in stock and is not gone.
  return (revenue?.amount ?? 0) + spares.cost - used - labour.quantity * 4.2 - spent;
}

test('the gaps of a run add up to what it left less the profit of its standard', () => {
  fc.assert(
    fc.property(runs, (run) => {
      const result = runResult({ body: clubStandard() }, asked(run));
      const all = result.bars.reduce((sum, { amount }) => sum + amount, 0);
      // The parts of the standard are written to six places.
      expect(all).toBeCloseTo(leftBy(result) - 288.368032, 3);
    }),
    cases(1_000),
  );
});

test('the bars of a bridge add up to the cent, each within a cent of its own', () => {
  fc.assert(
    fc.property(runs, (run) => {
      const { bars, bridge, sum } = runResult({ body: clubStandard() }, asked(run));
      expect(bars.reduce((all, { minor }) => all + minor, 0)).toBe(sum);
      expect(bridge).toEqual({ from: 28_837, to: 28_837 + sum });
      for (const { minor, amount } of bars) {
        expect(Math.abs(fromMinor(minor, 'USD') - amount)).toBeLessThanOrEqual(0.010_000_001);
      }
    }),
    cases(1_000),
  );
});

test('what was noted comes to the same in any order', () => {
  fc.assert(
    fc.property(runs, fc.integer({ min: 0, max: 1_000 }), (run, turn) => {
      const { facts: noted, ...rest } = asked(run);
      const turned = <Of extends Parameters<typeof entriesInForce>[0][number]>(entries: readonly Of[]) =>
        entriesInForce([
          ...entries.slice(turn % (entries.length + 1)),
          ...entries.slice(0, turn % (entries.length + 1)),
        ]);
      const other = {
        ...noted,
        ...{ pressings: turned(noted.pressings), actuals: turned(noted.actuals), hours: turned(noted.hours) },
      };
      expect(runResult({ body: clubStandard() }, { facts: other, ...rest })).toEqual(
        runResult({ body: clubStandard() }, { facts: noted, ...rest }),
      );
    }),
    cases(100),
  );
});
