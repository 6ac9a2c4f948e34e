import { describe, expect, it } from 'vitest';
import { lateDays } from '@/lib/orders/money/dueDays';
import { exposureOfAll } from '@/lib/orders/money/exposure';
import { paymentsOf } from '@/lib/orders/money/payments';
import { orderStanding } from '@/lib/orders/orderStanding';
import type { Expense } from '@/shared/schemas/orderEvents';
import type { StockMove } from '@/shared/schemas/stock';
import {
  anOrderLog,
  creditOut,
  type FactsChange,
  factsOf,
  invoiceOut,
  note,
  type OrderLog,
  pay,
  payOut,
  quoteOut,
  requestOut,
  steps,
  tell,
} from '@/tests/fixtures/orderLog';

const moneyOf = (log: OrderLog, change?: FactsChange) => orderStanding(factsOf(log, change)).money;
const agreedLog = (quoted: Parameters<typeof quoteOut>[1] = {}) => {
  const log = anOrderLog();
  const quote = quoteOut(log, quoted);
  tell(log, steps.accepted(quote.id));
  return log;
};
const change = (amountMinor: number, currency = 'USD') =>
  ({ what: 'change', wish: 'names on the sleeve', amountMinor, currency }) as const;
const expense = (log: OrderLog, kind: Expense['kind'], amountMinor: number, day: string, currency = 'USD') =>
  note(log, 'expense', { orderId: 'order-1', day, what: kind, kind, amountMinor, currency, receipt: null });
const shirts = (
  log: OrderLog,
  quantity: number,
  cause: StockMove['cause'],
  minor: number | null,
  more: Partial<StockMove> = {},
) =>
  note(log, 'stockMove', {
    item: { kind: 'blank', blankId: 'shirt', size: 'L', lot: null },
    place: { kind: 'home' },
    grade: 'first',
    quantity,
    cause,
    reference: { kind: 'order', id: 'order-1' },
    unitCost: minor === null ? null : { minor, currency: 'USD' },
    ...more,
  });

describe('what a customer owes', () => {
  it('is paid in parts, more than asked, given back and taken back by the bank', () => {
    const log = agreedLog();
    pay(log, 38066);
    expect(moneyOf(log)).toMatchObject({
      receivedMinor: 38066,
      dueMinor: 38065,
      overpaidMinor: 0,
      depositOpenMinor: 0,
    });
    pay(log, 40000);
    expect(moneyOf(log)).toMatchObject({ dueMinor: 0, overpaidMinor: 1935, isPaid: true });
    pay(log, 1935, { more: { kind: 'refund' } });
    expect(moneyOf(log)).toMatchObject({ receivedMinor: 76131, dueMinor: 0, overpaidMinor: 0 });
    pay(log, 40000, { more: { kind: 'reversal' } });
    expect(moneyOf(log)).toMatchObject({
      receivedMinor: 36131,
      dueMinor: 40000,
      depositOpenMinor: 1935,
      isPaid: false,
    });
  });

  it('grows by changes with the tax of the quote', () => {
    const log = agreedLog();
    tell(log, change(1500));
    // 15.00 × 1.07 = 16.05.
    expect(moneyOf(log)).toMatchObject({ changesMinor: 1605, totalMinor: 77736 });
  });

  it('grows by a change as it is written where tax is inside, or not taken on a proof', () => {
    const inside = agreedLog({
      tax: { mode: 'inside', share: 0.07, rounding: 'document', exemption: null },
      sums: { subtotal: 76131, tax: 4981, total: 76131 },
    });
    tell(inside, change(1500));
    expect(moneyOf(inside).totalMinor).toBe(77631);
    const exempt = agreedLog({
      tax: { mode: 'none', share: 0, rounding: 'document', exemption: 'X-1' },
      sums: { subtotal: 71150, tax: 0, total: 71150 },
    });
    tell(exempt, change(1500));
    expect(moneyOf(exempt).totalMinor).toBe(72650);
  });

  it('bears tax of all of it at once where that is rounded once for a paper, else of each change', () => {
    // 711.50 + 0.50 + 0.50 = 712.50; × 1.07 = 762.375, so 762.38; each for itself: 0.535 is 0.54, so 762.39.
    const sale = (rounding: 'document' | 'line') => {
      const log = agreedLog({ tax: { mode: 'added', share: 0.07, rounding, exemption: null } });
      tell(log, change(50));
      tell(log, change(50));
      return moneyOf(log);
    };
    expect(sale('document')).toMatchObject({ totalMinor: 76238, changesMinor: 107 });
    expect(sale('line')).toMatchObject({ totalMinor: 76239, changesMinor: 108 });
  });

  it('is what was billed once an invoice went out, with the changes since and less what was credited', () => {
    const log = agreedLog();
    const { id } = tell(log, change(1500));
    const invoice = invoiceOut(log, 77736, { changeIds: [id] });
    expect(moneyOf(log)).toMatchObject({ billedMinor: 77736, totalMinor: 77736 });
    tell(log, change(1000));
    expect(moneyOf(log).totalMinor).toBe(77736 + 1070);
    creditOut(log, invoice.id, 2033);
    expect(moneyOf(log)).toMatchObject({ creditedMinor: 2033, totalMinor: 76773 });
    // A minus before it means the same.
    creditOut(log, invoice.id, -1000);
    expect(moneyOf(log)).toMatchObject({ creditedMinor: 3033, totalMinor: 75773 });
    const withdrawn = agreedLog();
    invoiceOut(withdrawn, 99999, { withdrawn: true });
    expect(moneyOf(withdrawn)).toMatchObject({ billedMinor: null, totalMinor: 76131 });
  });

  it('is not less by a credit note whose invoice was withdrawn, so that nothing is paid that nobody paid', () => {
    const log = agreedLog();
    const first = invoiceOut(log, 76131, { withdrawn: true });
    creditOut(log, first.id, 10000);
    expect(moneyOf(log)).toMatchObject({ billedMinor: null, creditedMinor: 0, totalMinor: 76131 });
    invoiceOut(log, 76131);
    expect(moneyOf(log)).toMatchObject({ creditedMinor: 0, dueMinor: 76131 });
    const whole = agreedLog();
    const wrong = invoiceOut(whole, 76131, { withdrawn: true });
    creditOut(whole, wrong.id, 76131);
    invoiceOut(whole, 76131);
    expect(moneyOf(whole)).toMatchObject({ totalMinor: 76131, isPaid: false });
    expect(orderStanding(factsOf(whole)).gates.balance).toBe('shut');
  });

  it('is less by a credit note that another device, whose clock is late, wrote before the invoice', () => {
    const log = agreedLog();
    const invoice = invoiceOut(log, 76131, { at: 9000 });
    creditOut(log, invoice.id, 10000, { device: 'laptop00', at: 5000 });
    expect(moneyOf(log)).toMatchObject({ creditedMinor: 10000, totalMinor: 66131 });
    creditOut(log, invoice.id, 6131, { withdrawn: true });
    expect(moneyOf(log).totalMinor).toBe(66131);
  });

  it('never adds another currency, and tells each amount in it', () => {
    const log = agreedLog();
    pay(log, 5000, { more: { currency: 'EUR' } });
    tell(log, change(700, 'EUR'));
    expense(log, 'blanks', 900, '2026-11-27', 'EUR');
    shirts(log, 2, 'bought', 400, { unitCost: { minor: 400, currency: 'EUR' } });
    const { receivedMinor, totalMinor, spentMinor, other } = moneyOf(log);
    expect([receivedMinor, totalMinor, spentMinor]).toEqual([0, 76131, 0]);
    expect(other.map(({ amountMinor, currency }) => [amountMinor, currency])).toEqual([
      [5000, 'EUR'],
      [700, 'EUR'],
      [900, 'EUR'],
      [800, 'EUR'],
    ]);
  });

  it('of a price for many is reckoned from all of it', () => {
    // 100 sheets for 13.50, of which 58 were used: 13.5 cents each, 7.83 in all.
    const sheets = {
      item: { kind: 'paper', sheetId: 'letter' },
      unitCost: { minor: 1350, currency: 'USD', per: 100 },
    } as const;
    const bought = agreedLog();
    shirts(bought, 100, 'bought', null, sheets);
    expect(moneyOf(bought).spentMinor).toBe(1350);
    const used = agreedLog();
    shirts(used, -58, 'used', null, sheets);
    expect(moneyOf(used).spentMinor).toBe(783);
  });

  it('of currencies with none and three digits is whole minor units like any other', () => {
    const log = agreedLog({
      currency: 'JPY',
      sums: { subtotal: 70000, tax: 7000, total: 77000 },
      deposit: 38500,
    });
    pay(log, 38500, { more: { currency: 'JPY' } });
    expect(moneyOf(log)).toMatchObject({ currency: 'JPY', dueMinor: 38500, depositOpenMinor: 0 });
  });
});

describe('money that came', () => {
  it('is told net of fees by where it is: bank, cash, on the way', () => {
    const log = agreedLog();
    payOut(log, pay(log, 38066).id, { reference: 'T-7' });
    // 380.65 by card at 2.9 % and 0.30: the fee is 11.34 (11.33885 rounded).
    pay(log, 38065, { more: { way: 'card', feeMinor: 1134 } });
    pay(log, 500, { more: { way: 'cash' } });
    expect(moneyOf(log)).toMatchObject({
      receivedMinor: 76631,
      feesMinor: 1134,
      netMinor: 75497,
      inBankMinor: 38066,
      toReachBankMinor: 36931,
      inCashMinor: 500,
      overpaidMinor: 500,
    });
  });
});

describe('a payment that reached the bank', () => {
  const paidOf = (log: OrderLog) =>
    paymentsOf(factsOf(log).happened).map(({ entry, place, netMinor }) => [entry.id, place, netMinor]);

  it('stays where it was in the order of things, with the last fee that was said', () => {
    const log = agreedLog();
    const first = pay(log, 38066, { more: { feeMinor: 500 } });
    const second = pay(log, 100);
    payOut(log, first.id, { feeMinor: 1134 });
    payOut(log, first.id, { feeMinor: 1134 });
    expect(paidOf(log)).toEqual([
      [first.id, 'bank', 36932],
      [second.id, 'onItsWay', 100],
    ]);
    expect(moneyOf(log)).toMatchObject({ feesMinor: 1134, receivedMinor: 38166, inBankMinor: 36932 });
  });

  it('throws no order back that was paid and delivered, though money went back meanwhile', () => {
    const log = agreedLog();
    tell(log, steps.approved());
    const whole = pay(log, 76131);
    tell(log, steps.plain('delivered'));
    pay(log, 1000, { more: { kind: 'refund' } });
    const before = orderStanding(factsOf(log));
    expect(before.state).toBe('delivered');
    payOut(log, whole.id);
    const { state, steps: walked } = orderStanding(factsOf(log));
    expect(state).toBe('delivered');
    expect(walked).toEqual(before.steps);
  });

  it('of no payment that is here counts for nothing', () => {
    const log = agreedLog();
    payOut(log, 'gone', { feeMinor: 9 });
    expect(moneyOf(log)).toMatchObject({ inBankMinor: 0, feesMinor: 0, receivedMinor: 0 });
  });
});

describe('money of one’s own in an order', () => {
  it('is told over time with its lowest point, and whether the deposit covers the blanks', () => {
    const log = agreedLog();
    expense(log, 'blanks', 22050, '2026-11-26');
    expense(log, 'freight', 950, '2026-11-26');
    pay(log, 38066, { day: '2026-11-28' });
    expense(log, 'packaging', 1200, '2026-12-02');
    const money = moneyOf(log);
    expect(money.exposure).toEqual({
      points: [
        { day: '2026-11-26', balanceMinor: -23000 },
        { day: '2026-11-28', balanceMinor: 15066 },
        { day: '2026-12-02', balanceMinor: 13866 },
      ],
      lowest: { day: '2026-11-26', balanceMinor: -23000 },
    });
    expect(money).toMatchObject({ spentMinor: 24200, blanksMinor: 23000, depositOverBlanksMinor: 15066 });
  });

  it('of several orders is that of their sum, day by day', () => {
    const one = {
      points: [
        { day: '2026-11-26', balanceMinor: -100 },
        { day: '2026-11-30', balanceMinor: 50 },
      ],
      lowest: null,
    };
    const other = { points: [{ day: '2026-11-28', balanceMinor: -30 }], lowest: null };
    expect(exposureOfAll([one, other])).toEqual({
      points: [
        { day: '2026-11-26', balanceMinor: -100 },
        { day: '2026-11-28', balanceMinor: -130 },
        { day: '2026-11-30', balanceMinor: 20 },
      ],
      lowest: { day: '2026-11-28', balanceMinor: -130 },
    });
  });

  it('counts stock that was bought for the order once, and used stock beyond it', () => {
    const log = agreedLog();
    shirts(log, 40, 'bought', 490);
    // 41 used: forty of them were bought for it, one lay here.
    shirts(log, -41, 'used', 490, { reference: { kind: 'job', id: 'job-1' } });
    expect(moneyOf(log)).toMatchObject({ spentMinor: 40 * 490 + 490, blanksMinor: 20090, unpriced: [] });
    // Two of the forty went back, so three of those used lay here: 41 shirts all the same.
    shirts(log, -2, 'returned', 490);
    expect(moneyOf(log).spentMinor).toBe(20090);
  });

  it('counts what was used beyond what stayed of the bought, once some went back', () => {
    const log = agreedLog();
    shirts(log, 45, 'bought', 500);
    shirts(log, -5, 'returned', 500);
    shirts(log, -42, 'used', 500, { reference: { kind: 'job', id: 'job-1' } });
    // 42 shirts at 5.00.
    expect(moneyOf(log)).toMatchObject({ spentMinor: 21000, blanksMinor: 21000 });
  });

  it('counts stock by its receipts alone where there are any, and says what those cover', () => {
    const log = agreedLog();
    shirts(log, 40, 'bought', 490);
    expense(log, 'blanks', 19600, '2026-11-27');
    expect(moneyOf(log)).toMatchObject({ spentMinor: 19600, blanksMinor: 19600, coveredMinor: 19600 });
    shirts(log, -1, 'used', null);
    expect(moneyOf(log).unpriced).toEqual([]);
  });

  it('rounds part of a sheet or of a millilitre once, and tells stock nobody priced', () => {
    const log = agreedLog();
    // 12.5 mL at 0.33: 4.125, half a cent up.
    shirts(log, -12.5, 'used', 33, { item: { kind: 'ink', printerId: 'printer', name: 'Ink' } });
    shirts(log, -1, 'used', null);
    const { spentMinor, unpriced } = moneyOf(log);
    expect(spentMinor).toBe(413);
    expect(unpriced).toHaveLength(1);
  });

  it('leaves out stock of other jobs and finished pieces', () => {
    const log = agreedLog();
    shirts(log, 40, 'bought', 490, { reference: { kind: 'job', id: 'job-2' } });
    shirts(log, 37, 'made', 1113, {
      item: { kind: 'finished', jobId: 'job-1', lineId: 'line-1', size: 'L' },
    });
    expect(moneyOf(log)).toMatchObject({ spentMinor: 0, unpriced: [] });
  });
});

describe('due days', () => {
  it('are those of the last paper that names one, else the quote’s day for answers', () => {
    const log = agreedLog();
    expect(moneyOf(log).due).toEqual({
      depositOn: '2026-11-30',
      depositAsked: false,
      balanceOn: null,
      balanceAsked: false,
    });
    requestOut(log, 'deposit', '2026-12-02');
    requestOut(log, 'balance', '2026-12-14');
    invoiceOut(log, 76131, { dueOn: '2026-12-28' });
    expect(moneyOf(log).due).toEqual({
      depositOn: '2026-12-02',
      depositAsked: true,
      balanceOn: '2026-12-28',
      balanceAsked: true,
    });
  });

  it('are late from the day after', () => {
    expect(lateDays('2026-11-20', '2026-11-20')).toBe(0);
    expect(lateDays('2026-11-20', '2026-11-26')).toBe(6);
    expect(lateDays('2026-12-01', '2026-11-26')).toBe(0);
    expect(lateDays(null, '2026-11-26')).toBe(0);
  });
});
