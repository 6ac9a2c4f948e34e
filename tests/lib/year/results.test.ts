import { describe, expect, it } from 'vitest';
import { orderStanding } from '@/lib/orders/orderStanding';
import { designResults } from '@/lib/year/designResults';
import { fairResults } from '@/lib/year/fairResults';
import { yearSpan } from '@/lib/year/yearSpan';
import type { Quote } from '@/shared/schemas/orderPapers';
import type { DayClose } from '@/shared/schemas/stallPapers';
import { anOrderLog, clubQuote, factsOf, quoteOut, steps, tell } from '@/tests/fixtures/orderLog';
import { aYear, closed, entry } from './aYear';

const span = yearSpan(2026, 1);

const line = (lineId: string, quantity: number, total: number, start = 0): Quote['goods'][number] => ({
  ...{ jobId: 'job-1', lineId, name: `Shirt ${lineId}`, says: '', shape: 'garment', prints: [], start },
  sizes: [{ size: 'L', quantity, each: total / quantity, total }],
});

/** An order of 711.50 without tax, of which two lines were priced 600.00 and 200.00. */
function orderOf(
  more: { readonly alternativeId?: string; readonly day?: string; readonly isOff?: boolean } = {},
) {
  const log = anOrderLog();
  const quote = quoteOut(log, {
    goods: [line('crest', 30, 50000, 10000), line('plain', 10, 20000)],
    owner: { ...clubQuote().owner, fullCost: 51150 },
  });
  tell(log, steps.accepted(quote.id, more.alternativeId ?? null), { day: more.day ?? '2026-11-24' });
  if (more.isOff) tell(log, steps.plain('cancelled'));
  const facts = factsOf(log);
  return { facts, standing: orderStanding(facts) };
}

const goods = (
  lineId: string,
  sold: number,
  revenue: number,
  cost: number | null,
): DayClose['goods'][number] => ({
  ...{ jobId: 'job-1', lineId, size: 'M', design: `Fair ${lineId}`, brought: 20, sold, given: 0, damaged: 0 },
  ...{ seconds: 0, counted: 20 - sold, reason: null, asked: 0, lost: 0, revenue, cost },
});

const left = (results: ReturnType<typeof designResults>) =>
  results.map(({ lineId, left: money, pieces }) => [
    lineId,
    money === null ? null : Number(money.toFixed(4)),
    pieces,
  ]);

describe('designs', () => {
  it('of an order share what it left by what they sell for', () => {
    // 711.50 − 511.50 = 200.00, three quarters and one of it.
    expect(left(designResults(aYear({ orders: [orderOf()] }), span))).toEqual([
      ['crest', 150, 30],
      ['plain', 50, 10],
    ]);
  });

  it('of an order that is off, of another year, or in another currency are left out', () => {
    const none = (order: ReturnType<typeof orderOf>) => designResults(aYear({ orders: [order] }), span);
    expect(none(orderOf({ isOff: true }))).toEqual([]);
    expect(none(orderOf({ day: '2027-01-01' }))).toEqual([]);
    expect(designResults(aYear({ currency: 'EUR', orders: [orderOf()] }), span)).toEqual([]);
  });

  it('of a stall day are its takings without tax and fees, less what they cost to make', () => {
    const close = closed('c', { goods: [goods('crest', 10, 32100, 6), goods('plain', 8, 21400, null)] });
    // 500.00 net, of it 60 % is crest: 300.00 − 6.30 of fees − 10 × 6.00.
    expect(left(designResults(aYear({ closes: [close] }), span))).toEqual([
      ['crest', 233.7, 10],
      ['plain', null, 8],
    ]);
  });

  it('at a shop cost what a close said last, and bear tax as the shop writes prices', () => {
    const close = closed('c', { days: ['2025-06-13'], goods: [goods('crest', 10, 53500, 6)] });
    const statement = entry('shopStatement', 'a-1', {
      ...{
        shopId: 'corner',
        day: '2026-02-01',
        currency: 'USD',
        commissionShare: 0.4,
        commissionBase: 'withTax',
      },
      rows: [
        {
          goods: { jobId: 'job-1', lineId: 'crest', size: 'M' },
          ...{ grade: 'first', sold: 2, missing: 0, eachMinor: 2140 },
        },
      ],
      dueMinor: 2568,
    });
    const noted = aYear({ closes: [close], statements: [statement], taxInside: () => 0.07 / 1.07 });
    // 42.80: 25.68 are due, 2.80 is tax, 12.00 is what two cost.
    expect(left(designResults(noted, span))).toEqual([['crest', 10.88, 2]]);
    expect(designResults({ ...noted, taxInside: () => null }, span)[0]?.left).toBeNull();
  });

  it('sold in several ways are one', () => {
    const close = closed('c', { goods: [goods('crest', 10, 53500, 6)] });
    const results = designResults(aYear({ orders: [orderOf()], closes: [close] }), span);
    // 150.00 of the order; 500.00 − 10.50 − 60.00 of the fair.
    expect(left(results)).toEqual([
      ['crest', 579.5, 40],
      ['plain', 50, 10],
    ]);
  });
});

describe('fairs', () => {
  it('are as their closes say, the best pay first and what is not known last', () => {
    const result = closed('c').body.result;
    const closes = [
      closed('c', { stallDayId: 'a', result: { ...result, profit: null, payPerHour: null } }),
      closed('d', { stallDayId: 'b', title: 'Autumn', result: { ...result, payPerHour: 12 } }),
      closed('e'),
      closed('f', { stallDayId: 'old', days: ['2025-12-31'] }),
    ];
    expect(fairResults(closes, span).map(({ stallDayId, payPerHour }) => [stallDayId, payPerHour])).toEqual([
      ['spring-fair', 22.5],
      ['b', 12],
      ['a', null],
    ]);
  });

  it('that paid alike on one day are told by their ids, on whichever device', () => {
    const closes = [closed('c', { stallDayId: 'b' }), closed('d', { stallDayId: 'a' })];
    for (const all of [closes, closes.toReversed()])
      expect(fairResults(all, span).map(({ stallDayId }) => stallDayId)).toEqual(['a', 'b']);
  });
});
