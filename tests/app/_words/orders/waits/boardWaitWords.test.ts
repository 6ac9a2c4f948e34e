import { expect, it } from 'vitest';
import { boardWaitWords } from '@/app/_words/orders/waits/boardWaitWords';
import { boardOrders } from '@/lib/orders/board/orderBoard';
import { anOrderLog, factsOf, quoteOut, steps, tell } from '@/tests/fixtures/orderLog';

const TODAY = '2026-11-26';
const context = {
  locale: 'en-GB',
  currency: 'USD',
  units: { length: 'in', temperature: 'F', pressure: 'psi', volume: 'mL', distance: 'mi' },
} as const;

it('names the day an order was promised for once its quote is accepted, and else the day it is wanted', () => {
  const log = anOrderLog();
  const dates = { orderBlanksBy: null, approveBy: null, ready: '2026-12-24', leadDays: 18 };
  const quote = quoteOut(log, { wantedOn: '2026-12-04', dates });
  tell(log, steps.quoted(quote.id));
  const second = (wantedOn: string) =>
    boardOrders([factsOf(log, { order: { wantedOn } })], TODAY).map(
      (order) => boardWaitWords(order, TODAY, context).second,
    );
  expect(second('2026-12-04')).toEqual(['wanted Fri 4 Dec']);
  tell(log, steps.accepted(quote.id));
  expect(second('2026-12-04')).toEqual(['promised for Thu 24 Dec']);
  expect(second('2026-12-16')).toEqual(['wanted Wed 16 Dec']);
});

it('names no day of the bench, of which the board knows only when all is to be ready', () => {
  const log = anOrderLog();
  const quote = quoteOut(log, { wantedOn: '2026-12-18' });
  tell(log, steps.accepted(quote.id));
  for (const gate of ['deposit', 'approval'] as const) tell(log, steps.override(gate));
  tell(log, steps.plain('goodsIn'));
  const words = (today: string) =>
    boardOrders([factsOf(log, { order: { wantedOn: '2026-12-18' } })], today).map((order) =>
      boardWaitWords(order, today, context),
    );
  // Promised for the 9th.
  expect(words(TODAY)).toEqual([{ first: 'Print', second: 'promised for Wed 9 Dec', isLate: false }]);
  expect(words('2026-12-11')).toEqual([
    { first: 'Two days late', second: 'print, due Wed 9 Dec', isLate: true },
  ]);
});
