import { describe, expect, it } from 'vitest';
import { orderStanding } from '@/lib/orders/orderStanding';
import { shutGates } from '@/lib/orders/shutGates';
import {
  anOrderLog,
  creditOut,
  type FactsChange,
  factsOf,
  invoiceOut,
  type OrderLog,
  pay,
  quoteOut,
  steps,
  tell,
} from '@/tests/fixtures/orderLog';

const standing = (log: OrderLog, change?: FactsChange) => orderStanding(factsOf(log, change));
const gates = (log: OrderLog) => standing(log).gates;

/** Quoted at 761.31 and accepted. */
function acceptedLog() {
  const log = anOrderLog();
  tell(log, steps.enquired);
  const quote = quoteOut(log);
  tell(log, steps.quoted(quote.id));
  tell(log, steps.accepted(quote.id));
  return { log, quote };
}

/** Everything is agreed and made, and the deposit of 380.66 came. */
function madeLog() {
  const { log } = acceptedLog();
  pay(log, 38_066);
  tell(log, steps.approved());
  tell(log, steps.plain('packed'));
  return log;
}

const [AT_ONCE, LATER] = ['2026-12-09', '2027-01-08'];

describe('the gate of the balance, with an invoice on credit', () => {
  it('shuts again where that was given back whole, and the next is to be paid before the goods go out', () => {
    const log = madeLog();
    const mistaken = invoiceOut(log, 76_131, { dueOn: LATER });
    expect(gates(log).balance).toBe('open');
    creditOut(log, mistaken.id, 76_130);
    // A cent of it may still be paid later.
    expect(gates(log).balance).toBe('open');
    creditOut(log, mistaken.id, 1);
    invoiceOut(log, 76_131, { dueOn: AT_ONCE });
    // 761.31 less 380.66.
    expect(standing(log)).toMatchObject({ gates: { balance: 'shut' }, money: { dueMinor: 38_065 } });
    tell(log, steps.plain('delivered'));
    expect(standing(log)).toMatchObject({ state: 'packed', tooEarly: [{ waitsFor: ['balance'] }] });
    pay(log, 38_065);
    expect(standing(log).state).toBe('paid');
  });

  it('shuts again where that was taken back', () => {
    const log = madeLog();
    invoiceOut(log, 76_131, { dueOn: LATER, withdrawn: true });
    expect(gates(log).balance).toBe('shut');
  });

  it('waits for what another invoice asks for before the goods go out', () => {
    const log = madeLog();
    invoiceOut(log, 76_131, { dueOn: null });
    // A change of 53.50 may be paid later; what was billed for the goods may not.
    invoiceOut(log, 5350, { dueOn: LATER, isOfGoods: false });
    expect(gates(log).balance).toBe('shut');
    pay(log, 38_064);
    expect(gates(log).balance).toBe('shut');
    pay(log, 1);
    expect(standing(log)).toMatchObject({ gates: { balance: 'open' }, money: { dueMinor: 5350 } });
  });

  it('is not opened by an invoice of changes alone while nobody billed the goods', () => {
    const log = madeLog();
    invoiceOut(log, 50_000, { dueOn: LATER, isOfGoods: false });
    expect(gates(log).balance).toBe('shut');
    const goods = invoiceOut(log, 76_131, { dueOn: LATER });
    expect(gates(log).balance).toBe('open');
    creditOut(log, goods.id, 76_131);
    // 500.00 are owed, and 380.66 came.
    expect(gates(log).balance).toBe('shut');
  });

  it('is not opened by an invoice of nothing', () => {
    const log = madeLog();
    invoiceOut(log, 0, { dueOn: LATER });
    invoiceOut(log, 76_131, { dueOn: AT_ONCE });
    expect(gates(log).balance).toBe('shut');
  });
});

describe('a gate of money gone through without it', () => {
  /** A later quote of 4,000.00 with a deposit of 2,000.00. */
  const larger = { sums: { subtotal: 400_000, tax: 0, total: 400_000 }, deposit: 200_000, balance: 200_000 };

  it.each(['deposit', 'balance'] as const)(
    'is shut again for another quote that is accepted: the %s of that was never gone without',
    (gate) => {
      const { log } = acceptedLog();
      tell(log, steps.override(gate));
      expect(gates(log)[gate]).toBe('overridden');
      pay(log, 38_066);
      const next = quoteOut(log, larger);
      // Offered only: what was accepted counts.
      expect(gates(log)[gate]).toBe(gate === 'deposit' ? 'open' : 'overridden');
      tell(log, steps.accepted(next.id));
      expect(gates(log)[gate]).toBe('shut');
      // It stays told, and can be gone without anew.
      expect(standing(log).overrides).toHaveLength(1);
      tell(log, steps.override(gate));
      expect(gates(log)[gate]).toBe('overridden');
    },
  );

  it('asks for what is missing of the new deposit', () => {
    const { log } = acceptedLog();
    tell(log, steps.approved());
    tell(log, steps.override('deposit'));
    pay(log, 38_066);
    tell(log, steps.accepted(quoteOut(log, larger).id));
    // 2,000.00 less 380.66.
    expect(standing(log)).toMatchObject({ state: 'accepted', money: { depositOpenMinor: 161_934 } });
    tell(log, steps.plain('blanksOrdered'));
    expect(standing(log).tooEarly).toMatchObject([{ waitsFor: ['deposit'] }]);
  });

  it('is shut again for another choice of the same quote, and stays open where the same is noted twice', () => {
    const { log, quote } = acceptedLog();
    tell(log, steps.override('deposit'));
    tell(log, steps.accepted(quote.id));
    expect(gates(log).deposit).toBe('overridden');
    tell(log, steps.accepted(quote.id, 'three-more'));
    expect(gates(log).deposit).toBe('shut');
  });

  it('before anything was accepted stays open for whatever of that quote is, and for no other quote', () => {
    const log = anOrderLog();
    const quote = quoteOut(log);
    tell(log, steps.override('deposit'));
    tell(log, steps.accepted(quote.id, 'three-more'));
    expect(gates(log).deposit).toBe('overridden');
    const other = anOrderLog();
    quoteOut(other);
    tell(other, steps.override('deposit'));
    const next = quoteOut(other, larger);
    expect(gates(other).deposit).toBe('shut');
    tell(other, steps.accepted(next.id));
    expect(gates(other).deposit).toBe('shut');
  });

  it('asks nothing of blanks that were bought while it was here, and all of what is printed next', () => {
    const { log } = acceptedLog();
    pay(log, 40_000);
    tell(log, steps.approved());
    tell(log, steps.plain('blanksOrdered'));
    pay(log, 2000, { more: { kind: 'refund' } });
    tell(log, steps.plain('goodsIn'));
    // 380.66 less 380.00.
    expect(standing(log)).toMatchObject({
      ...{ state: 'goodsIn', tooEarly: [], gates: { deposit: 'shut' } },
      money: { depositOpenMinor: 66 },
    });
    expect(shutGates(standing(log), 'scheduled')).toEqual([]);
    expect(shutGates(standing(log), 'printed')).toEqual(['deposit']);
    tell(log, steps.plain('printed'));
    expect(standing(log)).toMatchObject({ state: 'goodsIn', tooEarly: [{ waitsFor: ['deposit'] }] });
    pay(log, 66);
    tell(log, steps.plain('pressed'));
    pay(log, 1, { more: { kind: 'reversal' } });
    tell(log, steps.plain('packed'));
    expect(standing(log)).toMatchObject({ state: 'packed', tooEarly: [], gates: { deposit: 'shut' } });
    expect(shutGates(standing(log), 'delivered')).toEqual(['balance']);
  });

  it('stays told at what follows of what was bought without it', () => {
    const { log } = acceptedLog();
    tell(log, steps.approved());
    tell(log, steps.override('deposit'));
    tell(log, steps.plain('blanksOrdered'));
    tell(log, steps.accepted(quoteOut(log, larger).id));
    tell(log, steps.plain('goodsIn'));
    expect(standing(log).state).toBe('goodsIn');
    expect(standing(log).steps.at(-1)?.overridden).toEqual(['deposit']);
  });

  it('keeps what was begun under it', () => {
    const { log } = acceptedLog();
    tell(log, steps.approved());
    tell(log, steps.override('deposit'));
    tell(log, steps.plain('blanksOrdered'));
    tell(log, steps.accepted(quoteOut(log, larger).id));
    expect(standing(log)).toMatchObject({ state: 'blanksOrdered', gates: { deposit: 'shut' } });
  });
});
