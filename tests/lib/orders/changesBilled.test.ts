import { describe, expect, it } from 'vitest';
import { billsOf, doubledBills } from '@/lib/orders/bills';
import { orderStanding } from '@/lib/orders/orderStanding';
import { toBill } from '@/lib/orders/toBill';
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
  withdraw,
} from '@/tests/fixtures/orderLog';

/* 761.31 agreed; a change of 50.00 is 53.50 with 7 % tax, one of 10.00 is 10.70. */

const [phone, tablet] = [{ device: 'phone000' }, { device: 'tablet00' }];
const sleeves = { what: 'change', wish: 'names on the sleeve', amountMinor: 5000, currency: 'USD' } as const;
const bags = { what: 'change', wish: 'a bag each', amountMinor: 1000, currency: 'USD' } as const;

function agreedLog(): OrderLog {
  const log = anOrderLog();
  const quote = quoteOut(log, {}, { at: 0 });
  tell(log, steps.accepted(quote.id), { at: 1 });
  return log;
}
const total = (log: OrderLog) => orderStanding(factsOf(log)).money.totalMinor;
const next = (log: OrderLog) => {
  const facts = factsOf(log);
  const { isOfGoods, changes, givenBack, earlierMinor } = toBill(facts.happened, orderStanding(facts));
  const wishes = (some: typeof changes) => some.map(({ wish }) => wish);
  return { isOfGoods, changes: wishes(changes), givenBack: wishes(givenBack), earlierMinor };
};
const doubled = (log: OrderLog) => doubledBills(billsOf(factsOf(log).happened)).map(({ paper }) => paper.id);

describe('a change', () => {
  it('stays owed where another device billed without knowing it, in whatever order both are told', () => {
    for (const [changedAt, billedAt] of [
      [10, 20],
      [20, 10],
    ]) {
      const log = agreedLog();
      tell(log, sleeves, { ...tablet, at: changedAt ?? 0 });
      invoiceOut(log, 76131, { ...phone, at: billedAt ?? 0 });
      expect(total(log)).toBe(76131 + 5350);
      expect(next(log)).toEqual({
        ...{ isOfGoods: false, changes: ['names on the sleeve'], givenBack: [], earlierMinor: 76131 },
      });
    }
  });

  it('is owed once where its bill stands before it, by a clock that is late', () => {
    const log = agreedLog();
    const { id } = tell(log, sleeves, { ...phone, at: 20 });
    invoiceOut(log, 81481, { ...tablet, at: 10, changeIds: [id] });
    expect(total(log)).toBe(81481);
    expect(next(log)).toMatchObject({ isOfGoods: false, changes: [] });
  });

  it('that came after the invoice goes on one of its own, beside which the first stays', () => {
    const log = agreedLog();
    invoiceOut(log, 76131);
    const { id } = tell(log, sleeves);
    expect(total(log)).toBe(81481);
    const own = invoiceOut(log, 5350, { isOfGoods: false, changeIds: [id] });
    expect(total(log)).toBe(81481);
    expect(next(log)).toMatchObject({ isOfGoods: false, changes: [], earlierMinor: 81481 });
    expect(doubled(log)).toEqual([]);
    withdraw(log, own.id);
    expect(total(log)).toBe(81481);
    expect(next(log)).toMatchObject({ changes: ['names on the sleeve'], givenBack: [] });
  });

  it('is billed again with the whole invoice that was given back', () => {
    const log = agreedLog();
    const { id } = tell(log, sleeves);
    const first = invoiceOut(log, 81481, { changeIds: [id] });
    creditOut(log, first.id, 81481);
    expect(total(log)).toBe(0);
    const { id: later } = tell(log, bags);
    expect(total(log)).toBe(1070);
    expect(next(log)).toEqual({
      ...{ isOfGoods: true, changes: ['names on the sleeve', 'a bag each'] },
      ...{ givenBack: ['names on the sleeve'], earlierMinor: 0 },
    });
    // 711.50, 50.00 and 10.00 are 771.50; with 7 % 825.505, half a cent up.
    invoiceOut(log, 82551, { changeIds: [id, later] });
    expect(total(log)).toBe(82551);
  });

  it('given back with its own invoice is owed no more, and told where it would be billed again', () => {
    const log = agreedLog();
    invoiceOut(log, 76131);
    const { id } = tell(log, sleeves);
    const own = invoiceOut(log, 5350, { isOfGoods: false, changeIds: [id] });
    creditOut(log, own.id, 5350);
    expect(total(log)).toBe(76131);
    expect(next(log)).toMatchObject({ changes: ['names on the sleeve'], givenBack: ['names on the sleeve'] });
  });

  it('in another currency, or for which nothing is asked, is on no invoice of this one', () => {
    const log = agreedLog();
    invoiceOut(log, 76131);
    tell(log, { ...sleeves, currency: 'EUR' });
    tell(log, { ...sleeves, amountMinor: 0 });
    expect(next(log)).toMatchObject({ isOfGoods: false, changes: [] });
  });
});

describe('the goods', () => {
  it('stay owed as agreed where only changes of them are billed any more', () => {
    const log = agreedLog();
    const first = invoiceOut(log, 76131);
    const { id } = tell(log, sleeves);
    invoiceOut(log, 5350, { isOfGoods: false, changeIds: [id] });
    withdraw(log, first.id);
    expect(total(log)).toBe(81481);
    expect(next(log)).toMatchObject({ isOfGoods: true, changes: [], earlierMinor: 5350 });
    pay(log, 81481);
    expect(orderStanding(factsOf(log)).money.isPaid).toBe(true);
  });

  it('that nobody knows the price of are not taken for free beside a bill of changes', () => {
    const log = anOrderLog();
    invoiceOut(log, 5350, { isOfGoods: false, changeIds: ['gone-1'] });
    expect(total(log)).toBeNull();
  });
});

describe('two invoices of the same, as two devices write them', () => {
  it('are told until one is given back whole, and then nothing is owed twice and no change is lost', () => {
    const log = agreedLog();
    const one = invoiceOut(log, 76131, { ...phone, at: 10 });
    const { id } = tell(log, sleeves, { ...tablet, at: 10 });
    const other = invoiceOut(log, 81481, { ...tablet, at: 11, changeIds: [id] });
    expect(doubled(log)).toEqual([one.id, other.id]);
    creditOut(log, other.id, 1000, { at: 12 });
    expect(doubled(log)).toEqual([one.id, other.id]);
    creditOut(log, other.id, 80481, { at: 13 });
    expect(doubled(log)).toEqual([]);
    // The change was on the one that was given back, which was one too many.
    expect(total(log)).toBe(81481);
    expect(next(log)).toMatchObject({ isOfGoods: false, changes: ['names on the sleeve'] });
  });

  it('may be three, each with something of the next: none of their changes is lost', () => {
    const log = agreedLog();
    invoiceOut(log, 76131, { at: 2 });
    const ids = [1, 2, 3].map((at) => tell(log, { ...bags, amountMinor: at * 1000 }, { at: 3 }).id);
    const own = (device: string, totalMinor: number, changeIds: readonly string[]) =>
      invoiceOut(log, totalMinor, { device, at: 10, isOfGoods: false, changeIds });
    // 10.00 and 20.00, 20.00 and 30.00, and 30.00, each with 7 %.
    const first = own('phone000', 3210, ids.slice(0, 2));
    const second = own('tablet00', 5350, ids.slice(1));
    const third = own('laptop00', 3210, ids.slice(2));
    expect(doubled(log).toSorted()).toEqual([first.id, second.id, third.id].toSorted());
    creditOut(log, first.id, 3210, { at: 11 });
    creditOut(log, second.id, 5350, { at: 12 });
    expect(doubled(log)).toEqual([]);
    // 60.00 of changes with 7 %.
    expect(total(log)).toBe(76131 + 6420);
  });

  it('may be of the same change alone', () => {
    const log = agreedLog();
    invoiceOut(log, 76131, { at: 2 });
    const { id } = tell(log, sleeves, { at: 3 });
    const one = invoiceOut(log, 5350, { ...phone, at: 10, isOfGoods: false, changeIds: [id] });
    const other = invoiceOut(log, 5350, { ...tablet, at: 10, isOfGoods: false, changeIds: [id] });
    expect(doubled(log)).toEqual([one.id, other.id]);
    withdraw(log, one.id);
    expect(doubled(log)).toEqual([]);
    expect(total(log)).toBe(81481);
  });
});
