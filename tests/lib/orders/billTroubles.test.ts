import { describe, expect, it } from 'vitest';
import { billTroubles } from '@/lib/orders/billTroubles';
import { orderStanding } from '@/lib/orders/orderStanding';
import {
  anOrderLog,
  creditOut,
  factsOf,
  invoiceOut,
  type OrderLog,
  quoteOut,
  steps,
  tell,
  withdraw,
} from '@/tests/fixtures/orderLog';

const [phone, tablet] = [{ device: 'phone000' }, { device: 'tablet00' }];

function agreedLog(): OrderLog {
  const log = anOrderLog();
  const quote = quoteOut(log, {}, { at: 0 });
  tell(log, steps.accepted(quote.id), { at: 1 });
  return log;
}

describe('what was given back', () => {
  const troubles = (log: OrderLog) => {
    const facts = factsOf(log);
    const { overGiven, isNothingOwed } = billTroubles(facts.happened, orderStanding(facts));
    return { overGiven: overGiven.map(({ paper }) => paper.id), isNothingOwed };
  };

  it('is told where it is more than its invoice asked for', () => {
    const log = agreedLog();
    const one = invoiceOut(log, 76131, { at: 2 });
    creditOut(log, one.id, 76131, { ...phone, at: 10 });
    expect(troubles(log).overGiven).toEqual([]);
    const again = creditOut(log, one.id, 76131, { ...tablet, at: 10 });
    expect(troubles(log).overGiven).toEqual([one.id]);
    withdraw(log, again.id);
    expect(troubles(log).overGiven).toEqual([]);
  });

  it('is told where nothing is owed for the goods any more, unless the order is over', () => {
    const log = agreedLog();
    expect(troubles(log).isNothingOwed).toBe(false);
    const one = invoiceOut(log, 76131, { ...phone, at: 2 });
    const other = invoiceOut(log, 76131, { ...tablet, at: 2 });
    creditOut(log, one.id, 76131, { ...phone, at: 10 });
    expect(troubles(log).isNothingOwed).toBe(false);
    creditOut(log, other.id, 76131, { ...tablet, at: 10 });
    expect(troubles(log).isNothingOwed).toBe(true);
    tell(log, steps.plain('cancelled'), { at: 11 });
    expect(troubles(log).isNothingOwed).toBe(false);
  });
});
