import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { TappedEntry } from '@/lib/stall/count/tappedEntry';
import { drawnTap } from '@/tests/fixtures/drawnTaps';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { asSaidOf, fairAnswers, fairEvening, fairTaps } from '@/tests/lib/stall/evening/fairEvening';
import { cases } from '@/tests/tools/cases';

const amount = fc.integer({ min: 0, max: 200_000 });

const answered = fc.record({
  cash: fc.record({
    counted: fc.option(amount),
    coins: fc.constant(null),
    reason: fc.constantFrom(null, 'notKnown' as const),
    reasonFor: fc.constant(null),
  }),
  card: fc.record({
    total: fc.option(amount),
    tickets: fc.option(fc.integer({ min: 0, max: 80 })),
    payout: fc.constant(null),
    isRight: fc.boolean(),
  }),
  hours: fc.option(fc.double({ min: 0, max: 40, noNaN: true })),
  weatherId: fc.constantFrom(null, 'dry', 'wet', 'hail'),
  stock: fc.record({
    counted: fc.dictionary(
      fc.constantFrom(...fairEvening().rows.map(({ key }) => key)),
      fc.record({
        pieces: fc.option(fc.integer({ min: 0, max: 20 })),
        reason: fc.constantFrom(
          ...([null, 'damaged', 'given', 'soldNotTapped', 'tappedTwice', 'notKnown'] as const),
        ),
        reasonFor: fc.constant(null),
        pay: fc.constantFrom('cash', 'card'),
      }),
    ),
    isRestAsReckoned: fc.boolean(),
    isRestUnknown: fc.constant(true),
  }),
});

const planned = fc.record({
  taxMode: fc.constantFrom('inside', 'added', 'none'),
  taxRounding: fc.constantFrom('document', 'line'),
  commission: fc.double({ min: 0, max: 0.5, noNaN: true }),
  commissionBase: fc.constantFrom('withTax', 'withoutTax'),
  currency: fc.constantFrom('USD', 'CAD', 'DKK'),
} as const);

/** Some taps of the fair, and on another phone whatever can be tapped. */
const tapped = fc
  .record({ some: fc.subarray([...fairTaps]), others: fc.array(drawnTap, { maxLength: 40 }) })
  .map(({ some, others }): readonly TappedEntry[] => [
    ...some,
    ...others.map((tap, at) => ({
      ...{ id: `other-${at + 1}`, device: 'otherphone', count: at + 1, at: (650 + at) * 60_000 },
      body: { stallDayId: fairPlan.stallDayId, planId: 'plan-1', currency: fairPlan.currency, tap },
    })),
  ]);

test('the bridge from plan to day adds up, whatever was tapped and counted', () => {
  fc.assert(
    fc.property(answered, planned, tapped, (answers, terms, some) => {
      const plan = { ...fairPlan, ...terms };
      const taps = some.map((tap) => ({ ...tap, body: { ...tap.body, currency: plan.currency } }));
      const said = { ...fairAnswers, ...answers };
      const { bridge, result } = fairEvening(asSaidOf(fairEvening(said, plan, taps), said), plan, taps);
      fc.pre(bridge !== null);
      const sum = (bridge?.steps ?? []).reduce((running, { by }) => running + by, bridge?.from ?? 0);
      expect(sum).toBeCloseTo(result.profit ?? Number.NaN, 6);
    }),
    cases(150),
  );
});
