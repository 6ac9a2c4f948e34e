import { describe, expect, it } from 'vitest';
import { boardOrders } from '@/lib/orders/board/orderBoard';
import { purses } from '@/lib/orders/board/purse';
import { settlement } from '@/lib/orders/money/settlement';
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
