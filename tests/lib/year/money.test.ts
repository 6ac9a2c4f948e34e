import { describe, expect, it } from 'vitest';
import { paymentsOf } from '@/lib/orders/money/payments';
import { orderStanding } from '@/lib/orders/orderStanding';
import { expenseRows } from '@/lib/year/expenseRows';
import { sumOfRows } from '@/lib/year/yearRow';
import { yearOfDay, yearSpan } from '@/lib/year/yearSpan';
import { type YearNoted, yearStanding } from '@/lib/year/yearStanding';
import {
  anOrderLog,
  factsOf,
  happenedIn,
  invoiceOut,
  type OrderLog,
  pay,
  payOut,
  quoteOut,
  steps,
  takeBack,
  tell,
} from '@/tests/fixtures/orderLog';
import { aYear, closed, delivered, entry, fairPlans, spent, worked } from './aYear';

const span = yearSpan(2026, 1);
const yearOf = (noted: Partial<YearNoted>) => yearStanding(aYear(noted), span, '2026-12-31');
const lies = (minor: number, unknownThings: number) => ({
  ...{ paid: [{ currency: 'USD', minor }], unknown: unknownThings, unknownThings, shortThings: 0 },
});
const soldIn = (log: OrderLog): Partial<YearNoted> => {
  const facts = factsOf(log);
  const told = { facts, standing: orderStanding(facts) };
  return {
    payments: paymentsOf(happenedIn(log)),
    orderOf: (id) => (id === 'order-1' ? told : null),
    orders: [told],
  };
};

describe('a year', () => {
  it('has twelve months from whichever month it begins in', () => {
    expect(span).toMatchObject({ from: '2026-01-01', to: '2026-12-31' });
    const taxYear = yearSpan(2027, 4);
    expect([taxYear.from, taxYear.to]).toEqual(['2027-04-01', '2028-03-31']);
    // 2028 is a leap year.
    expect(taxYear.months[10]).toEqual({ from: '2028-02-01', to: '2028-02-29' });
    expect(yearSpan(2026, 12).months[1]).toEqual({ from: '2027-01-01', to: '2027-01-31' });
    expect([yearOfDay('2028-03-31', 4), yearOfDay('2028-04-01', 4), yearOfDay('2028-01-01', 1)]).toEqual([
      2027, 2028, 2028,
    ]);
  });
});

describe('takings', () => {
  const agreed = () => {
    const log = anOrderLog();
    tell(log, steps.accepted(quoteOut(log).id));
    return log;
  };

  it('come on the day of their payment, less the fee, with the tax of what was agreed to the cent', () => {
    const log = agreed();
    // 49.81 × 380.66 ÷ 761.31 = 24.905; the rest of 49.81 is in the second.
    const first = pay(log, 38066, { day: '2026-11-25', more: { way: 'card', feeMinor: 900 } });
    payOut(log, first.id, { feeMinor: 1020 });
    pay(log, 38065, { day: '2027-01-04' });
    const year = yearOf(soldIn(log));
    expect(year).toMatchObject({
      takingsMinor: 38066,
      feesMinor: -1020,
      tax: { minor: 2491, untoldMinor: 0 },
    });
    expect(year.ways).toEqual([{ sellingWay: 'orders', minor: 38066 }]);
    const next = yearStanding(aYear(soldIn(log)), yearSpan(2027, 1), '2027-12-31');
    expect(next).toMatchObject({ takingsMinor: 38065, feesMinor: 0, tax: { minor: 2490 } });
    // A year that begins in April holds both.
    const both = yearStanding(aYear(soldIn(log)), yearSpan(2026, 4), '2027-12-31');
    expect(both).toMatchObject({ takingsMinor: 76131, tax: { minor: 4981 } });
  });

  it('go back with their tax, and what came beyond the papers bears none', () => {
    const log = agreed();
    pay(log, 80000);
    expect(yearOf(soldIn(log)).tax.minor).toBe(4981);
    pay(log, 3869, { more: { kind: 'refund' } });
    expect(yearOf(soldIn(log))).toMatchObject({ takingsMinor: 76131, tax: { minor: 4981 } });
    pay(log, 76131, { more: { kind: 'reversal' } });
    expect(yearOf(soldIn(log))).toMatchObject({ takingsMinor: 0, tax: { minor: 0 } });
  });

  it('follow the bill where one is out, and a change that none names by the share of the quote', () => {
    const log = agreed();
    tell(log, { what: 'change', wish: 'names', amountMinor: 1500, currency: 'USD' });
    // 15.00 and 7 % of it: 777.36 with 49.81 × 777.36 ÷ 761.31 = 50.86 of tax.
    pay(log, 77736);
    expect(yearOf(soldIn(log)).tax.minor).toBe(5086);
    // The bill says that there is no tax.
    invoiceOut(log, 77736);
    expect(yearOf(soldIn(log)).tax).toEqual({ minor: 0, untoldMinor: 0 });
  });

  it('of an order of which no paper says anything, or that is gone, are told as without tax', () => {
    const log = anOrderLog();
    pay(log, 5000);
    pay(log, 7000, { orderId: 'gone' });
    expect(yearOf(soldIn(log))).toMatchObject({ takingsMinor: 12000, tax: { minor: 0, untoldMinor: 12000 } });
  });

  it('that were taken back are not there', () => {
    const log = agreed();
    const payment = pay(log, 38066);
    takeBack(log, payment.id);
    expect(yearOf(soldIn(log))).toMatchObject({ takingsMinor: 0, rows: [] });
  });

  it('of a stall day are those of its close: tax, fees, tin and what was spent too', () => {
    const year = yearOf({
      closes: [closed('c', {}, { commission: 2000, cashRounding: 5 })],
      plans: fairPlans,
    });
    expect(year).toMatchObject({
      ...{ takingsMinor: 53500, feesMinor: -3050, tinMinor: -195, expensesMinor: 600 },
      tax: { minor: 3500, untoldMinor: 0 },
      ways: [{ sellingWay: 'stall', minor: 53500 }],
    });
    // The plan reckoned 145.60 for stall and drive, and 6.00 are noted.
    expect(year.stallUntoldMinor).toBe(13960);
    const paid = spent('a-1', 13960, { kind: 'stall', what: 'Stall and drive' });
    expect(yearOf({ closes: [closed('c')], plans: fairPlans, expenses: [paid] }).stallUntoldMinor).toBe(0);
  });

  it('of a day that was closed twice are those of the close in force, and of a withdrawn one none', () => {
    const second = closed('d', {}, { gross: 60000 });
    expect(yearOf({ closes: [closed('c'), second] }).takingsMinor).toBe(60000);
    expect(yearOf({ closes: [{ ...closed('c'), withdrawn: true }] }).takingsMinor).toBe(0);
  });

  it('of a shop are what it paid, and no paper says their tax', () => {
    const paid = entry('shopPayment', 'a-1', {
      ...{ shopId: 'corner', statementId: 'a-0', day: '2026-05-05', amountMinor: 3600, currency: 'USD' },
    });
    expect(yearOf({ shopPayments: [paid], channelOf: () => 'consignment' })).toMatchObject({
      ...{ takingsMinor: 3600, tax: { minor: 0, untoldMinor: 3600 } },
      ways: [{ sellingWay: 'consignment', minor: 3600 }],
    });
  });
});

describe('expenses', () => {
  const goods = (year: ReturnType<typeof yearOf>) =>
    Object.fromEntries(year.expenses.map(({ kind, minor }) => [kind, minor]));

  it('are what was noted and what deliveries cost, by kind', () => {
    const year = yearOf({ expenses: [spent('a-1', 50000)], goodsIn: [delivered('a-2')] });
    expect(goods(year)).toEqual({ rent: 50000, blanks: 20000, paper: 3000, freight: 1200 });
    expect(year.expensesMinor).toBe(74200);
  });

  it('count the bill of a delivery once, where an expense bears its receipt', () => {
    const bill = spent('a-1', 24200, { kind: 'blanks', file: 'a' });
    const year = yearOf({ expenses: [bill], goodsIn: [delivered('a-2', { file: 'a' })] });
    expect(goods(year)).toEqual({ blanks: 24200 });
    expect(year.rows.filter(({ leftOut }) => leftOut !== null).map(({ leftOut }) => leftOut)).toEqual(
      Array.from({ length: 3 }, () => ({ why: 'paidBy', entryId: 'a-1' })),
    );
    expect(year.doubtful).toEqual([]);
    // Another receipt is another bill.
    expect(yearOf({ expenses: [bill], goodsIn: [delivered('a-2', { file: 'b' })] }).expensesMinor).toBe(
      48400,
    );
  });

  it('in another currency with the receipt of a delivery leaves the delivery its sum, and is told as its', () => {
    const euros = { file: 'f', currency: 'EUR' };
    const goodsIn = [delivered('b-1', { file: 'f' })];
    const year = yearOf({ expenses: [spent('a-1', 22000, euros)], goodsIn });
    // Blanks 200.00, paper 30.00, freight 12.00.
    expect(year.expensesMinor).toBe(24200);
    expect(year.other).toEqual([]);
    expect(year.rows.find(({ id }) => id === 'a-1')?.leftOut).toEqual({
      ...{ why: 'deliverySays', entryId: 'b-1' },
    });
    // One in the currency of the sums beside it says what was paid.
    const both = [spent('a-1', 22000, euros), spent('a-2', 24500, { file: 'f' })];
    expect(yearOf({ expenses: both, goodsIn }).expensesMinor).toBe(24500);
    // A delivery that says no amount, or is in another currency as well, tells nothing.
    const silent = [delivered('b-1', { file: 'f', rows: [], freightMinor: null })];
    const foreign = [delivered('b-1', { ...euros })];
    for (const other of [silent, foreign]) {
      const told = yearOf({ expenses: [spent('a-1', 22000, euros)], goodsIn: other });
      expect(told.expensesMinor).toBe(0);
      expect(told.other).toEqual([{ currency: 'EUR', cameMinor: 0, wentMinor: 22000 }]);
    }
  });

  it('count all that one receipt is for, and both deliveries of one bill', () => {
    const two = [spent('a-1', 1000, { file: 'a' }), spent('a-2', 2000, { file: 'a', kind: 'ink' })];
    expect(yearOf({ expenses: two }).expensesMinor).toBe(3000);
    const both = [delivered('a-1', { file: 'a' }), delivered('a-2', { file: 'a' })];
    expect(yearOf({ goodsIn: both }).expensesMinor).toBe(48400);
  });

  it('tell what may be one bill, and count it all the same', () => {
    const day = '2026-06-12';
    const year = yearOf({
      expenses: [spent('a-1', 24200, { day, kind: 'blanks' })],
      goodsIn: [delivered('a-2')],
    });
    expect(year.expensesMinor).toBe(48400);
    expect(year.doubtful.map(({ first, second }) => [first.id, second.id])).toEqual([['a-1', 'a-2']]);
    const twice = [spent('a-1', 50000), spent('b-1', 50000)];
    expect(yearOf({ expenses: twice }).doubtful).toHaveLength(1);
    const other = [spent('a-1', 50000), spent('b-1', 50000, { what: 'Store room' })];
    expect(yearOf({ expenses: other }).doubtful).toEqual([]);
    expect(yearOf({ goodsIn: [delivered('a-1'), delivered('b-1')] }).doubtful).toHaveLength(1);
  });

  it('get less by what a supplier gave back', () => {
    const claim = entry('faultClaim', 'a-3', {
      ...{ goodsInId: 'a-2', day: '2026-07-01' },
      step: { what: 'refunded', amountMinor: 1500, currency: 'USD', note: '' },
    });
    // Nobody said for what: of 230.00 for goods 200.00 were blanks, so 13.04 of 15.00.
    expect(goods(yearOf({ goodsIn: [delivered('a-2')], claims: [claim] }))).toMatchObject({
      ...{ blanks: 18_696, paper: 2_804 },
    });
  });

  it('get less in the kind of what was claimed, parted by the bill where that is of several', () => {
    // 10 shirts for 100.00 and 100 sheets for 20.00.
    const row = { ordered: null, faulty: 0, fault: null, lot: null };
    const bill = (faulty: readonly [shirts: number, sheets: number]) =>
      delivered('a-2', {
        freightMinor: null,
        rows: [
          {
            ...{ ...row, item: { kind: 'blank', blankId: 'tee', size: 'L' }, counted: 10 },
            ...{ amountMinor: 10_000, faulty: faulty[0] },
          },
          {
            ...{ ...row, item: { kind: 'paper', sheetId: 'a4' }, counted: 100 },
            ...{ amountMinor: 2_000, faulty: faulty[1] },
          },
        ],
      });
    const refund = (amountMinor: number) =>
      entry('faultClaim', 'a-9', {
        ...{ goodsInId: 'a-2', day: '2026-07-01' },
        step: { what: 'refunded', amountMinor, currency: 'USD', note: '' },
      });
    const claimed = entry('faultClaim', 'a-8', {
      ...{ goodsInId: 'a-2', day: '2026-06-20' },
      step: { what: 'claimed', rows: [{ item: { kind: 'paper', sheetId: 'a4' }, pieces: 20 }], note: '' },
    });
    const kinds = (faulty: readonly [number, number], claims: YearNoted['claims']) =>
      goods(yearOf({ goodsIn: [bill(faulty)], claims }));
    // Claimed is paper; nothing claimed, faulty is paper; nothing of either, it is a part of the whole bill: 5 to 1.
    expect(kinds([2, 0], [claimed, refund(400)])).toEqual({ blanks: 10_000, paper: 1_600 });
    expect(kinds([0, 20], [refund(400)])).toEqual({ blanks: 10_000, paper: 1_600 });
    expect(kinds([0, 0], [refund(600)])).toEqual({ blanks: 9_500, paper: 1_900 });
    // One shirt for 10.00 and 20 sheets for 4.00: 7.01 of 14.00 is 5.01 and 2.00 to the cent.
    expect(kinds([1, 20], [refund(701)])).toEqual({ blanks: 10_000 - 501, paper: 2_000 - 200 });
  });

  it('of which the bill is not here yet are none, and never 0 as if they were free', () => {
    const row = delivered('a-1').body.rows[0];
    if (row === undefined) throw new Error('a row');
    const open = delivered('a-1', { rows: [{ ...row, amountMinor: null }], freightMinor: null });
    expect(expenseRows(aYear({ goodsIn: [open] }))).toEqual([]);
  });

  it('in another currency are told and in no sum', () => {
    const year = yearOf({ expenses: [spent('a-1', 900, { currency: 'EUR' }), spent('a-2', 100)] });
    expect(year.expensesMinor).toBe(100);
    expect(year.other).toEqual([{ currency: 'EUR', cameMinor: 0, wentMinor: 900 }]);
    expect(sumOfRows(year.rows)).toBe(-100);
  });

  it('stand in their month', () => {
    const { months } = yearOf({
      expenses: [spent('a-1', 50000, { day: '2026-06-30' })],
      closes: [closed('c')],
    });
    expect(months[5]).toEqual({
      ...{ from: '2026-06-01', to: '2026-06-30', takingsMinor: 53500, expensesMinor: 50600 },
    });
    expect(months[6]?.expensesMinor).toBe(0);
  });
});

describe('the pay of the year’s hour', () => {
  it('is takings less fees, tax, expenses and wear, with the stock’s change, over all hours', () => {
    const year = yearOf({
      closes: [closed('c')],
      expenses: [spent('a-1', 10000), spent('a-2', 40000, { kind: 'machine', what: 'Press' })],
      hours: [worked('a-3', 60)],
      stock: { atStart: lies(5000, 0), atEnd: lies(8000, 1), aloneMinor: 0 },
    });
    // 535.00 − 10.50 − 2.00 − 35.00 − (6.00 + 100.00) + 30.00 = 411.50, in 11 + 12 + 1 = 24 hours.
    expect(year).toMatchObject({
      ...{ expensesMinor: 10600, machinesMinor: 40000, stockMinor: 3000, stockUnknown: 1 },
      ...{ leftMinor: 41150, hoursWorked: 24, payMinor: 1715 },
    });
  });

  it('is not known without hours, and never 0', () => {
    expect(yearOf({ expenses: [spent('a-1', 10000)] })).toMatchObject({ leftMinor: -10000, payMinor: null });
  });
});
