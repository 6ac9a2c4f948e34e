import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { TappedEntry } from '@/lib/stall/count/tappedEntry';
import { stockReasons } from '@/shared/schemas/eveningReasons';
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
        reason: fc.constantFrom(null, ...stockReasons),
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

/** What of each goods lay finished at home, and how many seconds of it came along; a plan leaves out none. */
const finished = fc.array(
  fc.record({ fromHome: fc.integer({ min: 0, max: 12 }), seconds: fc.integer({ min: 0, max: 4 }) }),
  { minLength: fairPlan.goods.length, maxLength: fairPlan.goods.length },
);
const goodsWith = (drawn: readonly { readonly fromHome: number; readonly seconds: number }[]) =>
  fairPlan.goods.map((one, at) => {
    const { fromHome = 0, seconds = 0 } = drawn[at] ?? {};
    return { ...one, fromHome, ...(seconds === 0 ? {} : { seconds }) };
  });

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
    fc.property(answered, planned, finished, tapped, (answers, terms, drawn, some) => {
      const plan = { ...fairPlan, ...terms, secondsShare: 0.5, goods: goodsWith(drawn) };
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
