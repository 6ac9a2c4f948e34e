import { expect, it } from 'vitest';
import { paidForRun } from '@/lib/variances/pricesPaid';
import { runResult } from '@/lib/variances/runResult';
import { sinceClosed } from '@/lib/variances/sinceClosed';
import type { SupplyItem } from '@/shared/schemas/making/supply';
import { goodsInSchema } from '@/shared/schemas/making/supplyEvents';
import { actual, clubPressings, clubStandard, noFacts, noteOf } from '@/tests/fixtures/clubStandard';

const CLOSED_ON = '2026-12-12';
const M: SupplyItem = { kind: 'blank', blankId: 'white-shirt', size: 'M' };

const delivery = (day: string, item: SupplyItem = M, currency = 'USD') =>
  noteOf(
    'goodsIn',
    goodsInSchema.parse({
      ...{ day, currency, supplierId: null },
      rows: [{ item, ordered: null, counted: 10, faulty: 0, amountMinor: 6_000 }],
    }),
  );
const close = () =>
  noteOf('runStep', {
    ...{ runId: 'run', standardId: null, day: CLOSED_ON },
    step: { what: 'closed' as const, note: '' },
  });

type Noted = ReturnType<typeof delivery>;

/** Notes are made one after another: those given later are later. */
function since(goodsIn: readonly Noted[], more: Partial<Parameters<typeof sinceClosed>[0]>) {
  const standard = { body: clubStandard() };
  const told = { steps: [], actuals: [], isClosed: true, ...more };
  const facts = { ...noFacts, pressings: clubPressings(), steps: told.steps, actuals: told.actuals };
  const paid = paidForRun(
    goodsIn.map(({ body }) => body),
    'USD',
    told,
  );
  return sinceClosed(told, standard, runResult(standard, { facts, paid, orderHours: [] }), goodsIn);
}

it('counts the delivery noted after the close whose price the run takes, and none noted before it', () => {
  const before = delivery('2026-12-01');
  const steps = [close()];
  expect(since([before], { steps })).toEqual({ deliveries: 0, amounts: 0 });
  // Of the day of the close, or before it: its price counts.
  expect(since([before, delivery(CLOSED_ON)], { steps })).toEqual({ deliveries: 1, amounts: 0 });
});

it('counts no delivery that moves nothing of the run', () => {
  const steps = [close()];
  const none = { deliveries: 0, amounts: 0 };
  const told = delivery('2026-12-10');
  const at = [
    delivery('2026-12-13'),
    delivery('2026-12-10', { ...M, blankId: 'mug' }),
    delivery('2026-12-10', M, 'EUR'),
  ];
  for (const one of at) expect(since([one], { steps })).toEqual(none);
  // An older one beside a newer: only one tells the price.
  expect(since([delivery('2026-12-02'), told], { steps })).toEqual({ deliveries: 1, amounts: 0 });
  // What the blanks cost in all was typed before: no delivery tells it.
  const typed = actual({ of: 'blanks', quantity: 41, amountMinor: 20_295 });
  const later = [close()];
  expect(since([delivery('2026-12-10')], { steps: later, actuals: [typed] })).toEqual(none);
});

it('counts amounts typed since, each kind once, and nothing of a run that is open', () => {
  const early = actual({ of: 'fees', amountMinor: 300 });
  const steps = [close()];
  const freight = [400, 500].map((amountMinor) => actual({ of: 'freight', amountMinor }));
  const actuals = [early, ...freight];
  expect(since([], { steps, actuals })).toEqual({ deliveries: 0, amounts: 1 });
  expect(since([], { steps, actuals, isClosed: false })).toEqual({ deliveries: 0, amounts: 0 });
});
