import { describe, expect, it } from 'vitest';
import { foldTaps } from '@/lib/stall/count/foldTaps';
import type { TappedEntry } from '@/lib/stall/count/tappedEntry';
import { closeBody } from '@/lib/stall/evening/closeBody';
import { closedRows, closeMoves, isBookedTwice } from '@/lib/stall/evening/closeMoves';
import { type EveningAnswers, noAnswers } from '@/lib/stall/evening/eveningAnswers';
import { lostAtPace, lostStretches } from '@/lib/stall/evening/lostSales';
import { type Evening, reconcile } from '@/lib/stall/evening/reconcile';
import { dayCloseSchema, type StallPlan } from '@/shared/schemas/stallPapers';
import { fairPlan } from '@/tests/fixtures/stallPlan';
import { goods, StallStock } from '@/tests/lib/stall/stallStock';
import { TEST_DAY } from '@/tests/tools/clock/testDay';
import { fairClock } from './fairEvening';

/* Fern L was in the first plan of the fair and is not in the second; two were sold for 28.00 in cash before. */

const withoutFern: StallPlan = {
  ...fairPlan,
  goods: fairPlan.goods.filter(({ lineId }) => lineId !== 'fern'),
};

const taps: readonly TappedEntry[] = [620, 640].map((minute, at) => ({
  ...{ id: `phone-${at + 1}`, device: 'phonephone', count: at + 1, at: minute * 60_000 },
  body: {
    ...{ stallDayId: fairPlan.stallDayId, planId: 'plan-1', currency: 'USD' },
    tap: { what: 'sale', goods, minor: 2800, pay: 'cash' },
  },
}));

/** The float of 120.00 and 56.00. */
const counted: EveningAnswers = {
  ...noAnswers,
  cash: { ...noAnswers.cash, counted: 17_600 },
  stock: { ...noAnswers.stock, isRestAsReckoned: true },
};

const evening = (earlier: readonly { readonly id: string; readonly body: StallPlan }[]): Evening =>
  reconcile(withoutFern, foldTaps(withoutFern, taps, fairClock, earlier), counted, fairClock, earlier);

const closeOf = (of: Evening) =>
  closeBody(of, {
    ...{ number: { count: 1, letter: 'A' }, issuedOn: TEST_DAY, planId: 'plan-2', answers: counted },
    clock: fairClock,
  });

/** Twelve at home, nine loaded by the first plan and home again by the second. */
const refixed = (): StallStock => {
  const stock = new StallStock();
  stock.count(12);
  stock.load('spring', 9);
  stock.load('spring', 0);
  return stock;
};

describe('goods that only an earlier plan names', () => {
  const before = evening([{ id: 'plan-1', body: fairPlan }]);
  const row = before.rows.find(({ key }) => key === 'fair-shirts/fern/L');

  it('have a row: as many were brought as went, nobody is asked for them, and they cost what they cost', () => {
    expect(row).toMatchObject({ brought: 2, sold: 2, reckoned: 0, counted: 0, left: 0, missing: 0 });
    expect([before.strays, before.unsettled, before.pieces]).toEqual([[], [], 2]);
    // 56.00 with 7 % tax inside, less packaging and cost of two.
    expect(before.result.contribution).toBeCloseTo(56 / 1.07 - 2 * 0.19 - 2 * 6.543, 2);
  });

  it('did not sell out: they were taken off the table', () => {
    if (row === undefined) throw new Error('no Fern L');
    expect(lostAtPace(lostStretches(withoutFern, row, fairClock))).toBe(0);
  });

  it('leave the stock with the close, and are in its paper', () => {
    const close = closeOf(before);
    expect(close.goods.find(({ lineId }) => lineId === 'fern')).toMatchObject({
      brought: 2,
      sold: 2,
      revenue: 5600,
    });
    const stock = refixed();
    for (const one of closedRows(close).filter((closed) => closed.goods.lineId === 'fern'))
      stock.close('spring', one, 'close-1');
    expect(stock.lying).toEqual({ 'home first': 10, 'van first': 0 });
  });
});

describe('goods that no plan here names', () => {
  const strange = evening([]);

  it('stay told, are kept by the close, and leave the stock with it', () => {
    expect(strange.strays).toMatchObject([{ lineId: 'fern', sold: 2 }]);
    const close = dayCloseSchema.parse(closeOf(strange));
    expect(close.strays).toEqual([
      { ...goods, brought: 2, sold: 2, given: 0, damaged: 0, seconds: 0, counted: 0 },
    ]);
    const stock = refixed();
    const [stray] = closedRows({ goods: [], strays: close.strays ?? [] });
    if (stray === undefined) throw new Error('no stray');
    stock.close('spring', stray, 'close-1');
    expect(stock.lying).toEqual({ 'home first': 10, 'van first': 0 });
    expect(isBookedTwice({ goods: [], strays: close.strays ?? [] }, stock.closeStock('spring'))).toBe(false);
  });

  it('are in no paper where there are none', () => {
    expect(Object.keys(closeOf(evening([{ id: 'plan-1', body: fairPlan }])))).not.toContain('strays');
  });
});

describe('what was loaded for a day and no row names', () => {
  it('comes home with the close, for it would lie in the car of a closed day for ever', () => {
    const stock = new StallStock();
    stock.count(12);
    stock.load('spring', 9);
    const moves = closeMoves([], stock.closeStock('spring'), 'close-1');
    expect(moves.map(({ place, quantity }) => [place.kind, quantity])).toEqual([
      ['van', -9],
      ['home', 9],
    ]);
  });
});
