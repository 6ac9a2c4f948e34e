import { describe, expect, it } from 'vitest';
import { boardOrders } from '@/lib/orders/board/orderBoard';
import { purses } from '@/lib/orders/board/purse';
import { todayList } from '@/lib/orders/board/todayList';
import { settlement, toGiveBackMinor } from '@/lib/orders/money/settlement';
import { orderStanding } from '@/lib/orders/orderStanding';
import {
  anOrderLog,
  creditOut,
  factsOf,
  invoiceOut,
  type OrderLog,
  pay,
  quoteOut,
  steps,
  tell,
} from '@/tests/fixtures/orderLog';

/** Accepted at 761.31; the deposit of 380.66 came. */
function depositLog(): OrderLog {
  const log = anOrderLog();
  tell(log, steps.accepted(quoteOut(log).id));
  pay(log, 38_066);
  return log;
}

function cancelledLog(): OrderLog {
  const log = depositLog();
  tell(log, steps.plain('cancelled'));
  return log;
}

const left = (log: OrderLog) => settlement(orderStanding(factsOf(log)));
const purse = (log: OrderLog) => purses(boardOrders([factsOf(log)], '2026-11-27'), '2026-11-27');

describe('what is to be settled of an order that is called off', () => {
  it('is all that came, where nothing was billed', () => {
    expect(left(cancelledLog())).toEqual({ owedMinor: 0, heldMinor: 38_066, openMinor: 0 });
    const lost = depositLog();
    tell(lost, { what: 'lost', why: 'price', note: '' });
    expect(left(lost)?.heldMinor).toBe(38_066);
  });

  it('is what came beyond a bill, less what went back', () => {
    const log = cancelledLog();
    // 761.31 billed and 661.31 credited: 100.00 are kept of 380.66.
    creditOut(log, invoiceOut(log, 76_131).id, 66_131);
    expect(left(log)).toEqual({ owedMinor: 10_000, heldMinor: 28_066, openMinor: 0 });
    pay(log, 28_066, { more: { kind: 'refund' } });
    expect(left(log)).toEqual({ owedMinor: 10_000, heldMinor: 0, openMinor: 0 });
  });

  it('is what a bill in force still asks for', () => {
    const log = cancelledLog();
    invoiceOut(log, 76_131);
    expect(left(log)).toEqual({ owedMinor: 76_131, heldMinor: 0, openMinor: 38_065 });
  });

  it('asks for nothing where more went back than came', () => {
    const log = cancelledLog();
    pay(log, 38_067, { more: { kind: 'refund' } });
    expect(left(log)).toEqual({ owedMinor: 0, heldMinor: 0, openMinor: 0 });
  });

  it('is nothing while it goes on, is on hold, was opened again, or went out before', () => {
    expect(left(depositLog())).toBeNull();
    const held = depositLog();
    tell(held, steps.plain('held'));
    expect(left(held)).toBeNull();
    const reopened = cancelledLog();
    tell(reopened, steps.plain('reopened'));
    expect(left(reopened)).toBeNull();
    const delivered = depositLog();
    tell(delivered, steps.approved());
    pay(delivered, 38_065);
    tell(delivered, steps.plain('delivered'));
    tell(delivered, steps.plain('cancelled'));
    expect(left(delivered)).toBeNull();
  });
});

/** Paid 49.29 beyond the 761.31 of its invoice, of which 26.75 were credited; made, and gone out. */
function overpaidLog(): OrderLog {
  const log = depositLog();
  tell(log, steps.approved());
  const invoice = invoiceOut(log, 76_131);
  pay(log, 42_994, { day: '2026-11-20' });
  creditOut(log, invoice.id, 2675, { day: '2026-11-26' });
  return log;
}

const back = (log: OrderLog) => toGiveBackMinor(orderStanding(factsOf(log)));
const today = (log: OrderLog) =>
  todayList(boardOrders([factsOf(log)], '2026-11-27'), {
    ...{ today: '2026-11-27', idleDays: 5, lastPrintOn: null },
  }).map(({ what, on, days }) => [what, on, days]);

describe('what is to be given back', () => {
  it('is what came beyond all that is owed, until it went back', () => {
    const log = overpaidLog();
    // 810.60 less 734.56.
    expect(back(log)).toBe(7604);
    pay(log, 7604, { more: { kind: 'refund' } });
    expect(back(log)).toBe(0);
    expect(back(depositLog())).toBe(0);
    expect(back(anOrderLog())).toBe(0);
    expect(back(cancelledLog())).toBe(38_066);
  });

  it('is told by today once the goods are out, and by the purse, closed or not', () => {
    const log = overpaidLog();
    // More may be wanted until it is out.
    expect(today(log).map(([what]) => what)).not.toContain('giveBack');
    tell(log, steps.plain('delivered'));
    const [told, held] = [['giveBack', '2026-11-26', 1], [{ orderId: 'order-1', tooMuchMinor: 7604 }]];
    expect(today(log)).toContainEqual(told);
    tell(log, steps.plain('closed'));
    expect(today(log)).toEqual([told]);
    expect(purse(log)).toMatchObject([
      { currency: 'USD', toComeMinor: 0, inHandMinor: 0, tooMuch: held, held: [] },
    ]);
    pay(log, 7604, { more: { kind: 'refund' } });
    expect(today(log)).toEqual([]);
    expect(purse(log)).toEqual([]);
  });

  it('is told by today of an order that is called off', () => {
    expect(today(cancelledLog())).toEqual([['giveBack', '2026-11-25', 2]]);
    expect(purse(cancelledLog())).toMatchObject([{ tooMuch: [] }]);
  });
});

describe('the purse', () => {
  it('keeps what came of orders that are called off, until it went back or is billed', () => {
    const log = cancelledLog();
    expect(purse(log)).toMatchObject([
      {
        ...{ currency: 'USD', toComeMinor: 0, inHandMinor: 0, late: [], asked: [] },
        held: [{ orderId: 'order-1', heldMinor: 38_066 }],
      },
    ]);
    pay(log, 38_066, { more: { kind: 'refund' } });
    expect(purse(log)).toEqual([]);
  });

  it('holds nothing of an order that goes on', () => {
    expect(purse(depositLog())).toMatchObject([{ inHandMinor: 38_066, held: [] }]);
  });
});
