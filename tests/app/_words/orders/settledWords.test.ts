import { describe, expect, it } from 'vitest';
import { orderAmountWords } from '@/app/_words/orders/board/orderAmountWords';
import { moneyAnswer } from '@/app/_words/orders/money/orderMoneyWords';
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

const context = {
  locale: 'en-US',
  currency: 'USD',
  units: { length: 'in', temperature: 'F', pressure: 'psi', volume: 'mL', distance: 'mi' },
} as const;

/** What the order's own page and its row on the board say. */
function said(log: OrderLog): readonly string[] {
  const standing = orderStanding(factsOf(log));
  const { key, after } = moneyAnswer(standing.money, settlement(standing), 'en-US');
  return [`${key}${after}`, orderAmountWords(standing, context).owed];
}

function cancelledLog(came = 38_066): OrderLog {
  const log = anOrderLog();
  tell(log, steps.accepted(quoteOut(log).id));
  if (came > 0) pay(log, came);
  tell(log, steps.plain('cancelled'));
  return log;
}

describe('the money of an order that is called off', () => {
  it('is told as held, and never as to come', () => {
    expect(said(cancelledLog())).toEqual([
      '380.66 USD came and is held: give it back, or bill it and credit what you do not keep',
      '380.66 held',
    ]);
    // All of it came, and more: that is held too, not paid.
    expect(said(cancelledLog(80_000))[1]).toBe('800.00 held');
  });

  it('is told as kept where that was billed, and the rest as held', () => {
    const log = cancelledLog();
    creditOut(log, invoiceOut(log, 76_131).id, 66_131);
    expect(said(log)).toEqual([
      '280.66 USD of 380.66 USD that came and is held: give it back, or bill it and credit what you do not keep',
      '280.66 held',
    ]);
    pay(log, 28_066, { more: { kind: 'refund' } });
    expect(said(log)).toEqual(['Nothing spent, 100.00 USD kept as billed', '100.00 kept']);
  });

  it('is told as billed where an invoice in force asks for more', () => {
    const log = cancelledLog();
    invoiceOut(log, 76_131);
    expect(said(log)).toEqual(['380.65 USD billed and not paid: ask for it, or credit it', '380.65 billed']);
  });

  it('says that nothing is held where nothing came', () => {
    expect(said(cancelledLog(0))).toEqual(['Nothing spent, nothing held', '']);
  });
});
