import { describe, expect, it } from 'vitest';
import { confirmationOf, paymentRequestOf, receiptOf } from '@/lib/quotes/following/followingPapers';
import { changesInvoiceOf, invoiceOf } from '@/lib/quotes/following/invoiceOf';
import { quoteBody } from '@/lib/quotes/quoteBody';
import { sumsWithChanges } from '@/lib/quotes/saleSums';
import { paymentSchema } from '@/shared/schemas/orderEvents';
import {
  confirmationSchema,
  invoiceSchema,
  paymentRequestSchema,
  type Quote,
  receiptSchema,
} from '@/shared/schemas/orderPapers';
import { clubWith } from '@/tests/fixtures/clubJob';
import { clubAlternatives, ready } from '@/tests/lib/quotes/quoteTools';

const quote = quoteBody(
  ready({ order: { alternatives: clubAlternatives } }),
  { count: 1, letter: 'A' },
  ({ id }) => id,
);
const issued = { number: { count: 7, letter: 'A' as const }, day: '2026-11-27' };
const accepted = { alternativeId: null, by: 'Alex Placeholder', on: '2026-11-26' };

const confirmed = (alternativeId: string | null = null) => {
  const paper = confirmationOf({ paperId: 'paper-1', quote }, { ...accepted, alternativeId }, issued);
  if (!paper.ok) throw new Error(paper.problem.kind);
  return paper.value;
};

const headings = (terms: Quote['terms']) => terms.map(({ heading }) => heading);
const payment = (terms: Quote['terms']) => terms.find(({ heading }) => heading === 'Payment')?.text;

describe('a confirmation', () => {
  it('says what was quoted, and bears nothing of its maker’s side', () => {
    const paper = confirmed();
    expect(confirmationSchema.parse(paper)).toEqual(paper);
    expect(paper.sums).toEqual(quote.sums);
    expect([paper.number, paper.issuedOn, paper.quote]).toEqual([
      issued.number,
      issued.day,
      { paperId: 'paper-1', number: { count: 1, letter: 'A' } },
    ]);
    expect(JSON.stringify(paper)).not.toContain('fullCost');
  });

  it('of an alternative says what that was, with its own deposit', () => {
    const paper = confirmed('forty');
    // 801.43, of which half is 400.715.
    expect([paper.sums.total, paper.deposit, paper.balance]).toEqual([80_143, 40_072, 40_071]);
    expect(paper.goods[0]?.sizes.filter(({ size }) => size === 'L')).toEqual([
      { size: 'L', quantity: 11, each: 1900, total: 20_900 },
      { size: 'L', quantity: 3, each: 1250, total: 3750 },
    ]);
    expect(paper.accepted.choice).toBe('40 × Club shirt');
    expect(payment(paper.terms)).toMatch(/^To pay now: 400\.72 USD\. Before the goods go out: 400\.71 USD\./);
    expect(confirmed('backOnly').goods[0]?.prints.map(({ placementId }) => placementId)).toEqual(['back']);
  });

  it('of an alternative that was never offered is none', () => {
    const paper = confirmationOf(
      { paperId: 'paper-1', quote },
      { ...accepted, alternativeId: 'other' },
      issued,
    );
    expect(paper).toEqual({ ok: false, problem: { kind: 'noSuchAlternative' } });
  });
});

describe('a payment request', () => {
  const ask = (what: 'deposit' | 'balance', paid: number) =>
    paymentRequestOf(confirmed(), { what, paid, dueOn: null }, issued);

  it('asks for the deposit, for the rest of it, and for the rest of all', () => {
    const amountOf = (asked: ReturnType<typeof ask>) => (asked.ok ? asked.value.amount : asked.problem.kind);
    expect(amountOf(ask('deposit', 0))).toBe(38_066);
    expect(amountOf(ask('deposit', 30_000))).toBe(8066);
    expect(amountOf(ask('balance', 38_066))).toBe(38_065);
  });

  it('asks for nothing that has come already, or more than that', () => {
    expect(ask('deposit', 38_066)).toEqual({ ok: false, problem: { kind: 'nothingDue' } });
    expect(ask('balance', 80_000)).toEqual({ ok: false, problem: { kind: 'nothingDue' } });
  });

  it('is what its schema reads', () => {
    const paper = ask('balance', 100);
    if (paper.ok) expect(paymentRequestSchema.parse(paper.value)).toEqual(paper.value);
    expect(paper.ok).toBe(true);
  });
});

type Charged = Parameters<typeof invoiceOf>[1]['changes'];

describe('an invoice', () => {
  const terms = {
    ...{ paid: 38_066, earlier: 0, suppliedOn: '2026-12-10', dueOn: null },
    terms: quote.owner.terms,
  };
  const saysToPay = (more: Partial<typeof terms> | { readonly dueOn: string }, changes: Charged = []) =>
    payment(invoiceOf(confirmed(), { ...terms, suppliedOn: null, ...more, changes }, issued).terms);

  it('is of what was confirmed, less what came', () => {
    const paper = invoiceOf(confirmed(), { ...terms, changes: [] }, issued);
    expect(invoiceSchema.parse(paper)).toEqual(paper);
    expect([paper.sums.total, paper.paid, paper.due]).toEqual([76_131, 38_066, 38_065]);
  });

  it('has what was changed since, taxed as all the rest', () => {
    // 711.50 and 15.00 are 726.50; × 0.07 is 50.855.
    const paper = invoiceOf(
      confirmed(),
      { ...terms, changes: [{ entryId: 'phone-4', what: 'Other colour of the badge', amount: 1500 }] },
      issued,
    );
    expect(paper.sums).toEqual({ subtotal: 72_650, tax: 5086, total: 77_736 });
    expect([paper.due, paper.changeIds]).toEqual([39_670, ['phone-4']]);
    expect(sumsWithChanges(confirmed(), [{ what: 'Other colour', amount: 1500 }])).toEqual(paper.sums);
  });

  it('asks in its terms for what is still to pay, and no more', () => {
    // Before anything came: 380.66 first, and the rest before the goods go out.
    expect(saysToPay({ paid: 0 })).toBe('To pay now: 380.66 USD. Before the goods go out: 380.65 USD.');
    // The deposit came; 16.05 with tax was changed since (777.36 less 380.66).
    const change = [{ entryId: 'phone-4', what: 'Other colour', amount: 1500 }];
    expect(saysToPay({}, change)).toBe('Before the goods go out: 396.70 USD.');
    expect(saysToPay({ paid: 76_131 })).toBeUndefined();
    // A day of its own is the one that counts.
    expect(saysToPay({ dueOn: '2026-12-11' })).toBe('To pay within 14 days of the invoice.');
  });

  it('says of the terms how to pay, how to complain and what comes of paying late, and no more', () => {
    const own = [{ id: 'yard', language: null, heading: 'Parking', text: 'In the yard.' }];
    const papers = { page: null, words: [], terms: [], ownTerms: own };
    const asked = { order: { agreed: 'Ready on a Friday.' }, input: clubWith({ 'workshop.papers': papers }) };
    const { terms: quoted, owner } = ready(asked).body;
    expect(headings(quoted)).toEqual(expect.arrayContaining(['Delivery', 'Proof', 'Changes', 'Rights']));
    expect(headings(quoted).slice(-2)).toEqual(['Parking', 'Agreed besides']);
    const bill = invoiceOf(confirmed(), { ...terms, terms: owner.terms, changes: [], paid: 0 }, issued);
    expect(headings(bill.terms)).toEqual(['Payment', 'Something wrong?', 'Paid or fetched late']);
    // Its due day says the rest.
    const onCredit = invoiceOf(confirmed(), { ...terms, changes: [], dueOn: '2026-12-11' }, issued);
    expect(onCredit.terms.map(({ text }) => text)).toEqual([
      'To pay within 14 days of the invoice.',
      'Please tell us within 14 days, and keep the goods until we have seen them.',
      'If you cannot fetch or pay in time, tell us and we find a way.',
    ]);
  });

  it('takes tax of each change where it is rounded on each line, and no discount of it', () => {
    // 10.55 × 0.07 is 0.7385 and 3.45 × 0.07 is 0.2415, beside the 49.81 of what was agreed.
    const byLine = { ...confirmed(), tax: { ...quote.tax, rounding: 'line' as const } };
    const changes = [1055, 345].map((amount) => ({ what: 'Change', amount }));
    expect(sumsWithChanges(byLine, changes)).toEqual({
      subtotal: 72_550,
      tax: 4981 + 74 + 24,
      total: 77_629,
    });
  });

  it('says what is to go back where too much came', () => {
    expect(invoiceOf(confirmed(), { ...terms, paid: 80_000, changes: [] }, issued).due).toBe(-3869);
  });
});

describe('an invoice of changes alone', () => {
  const change = { entryId: 'phone-4', what: 'Other colour of the badge', amount: 1050 };
  const other = { entryId: 'tablet-1', what: 'Names', amount: 350 };
  const bill = (paid: number, byLine = false, dueOn: string | null = null) =>
    changesInvoiceOf(
      byLine ? { ...confirmed(), tax: { ...quote.tax, rounding: 'line' } } : confirmed(),
      // 761.31 is billed before it, and nothing of that was given back.
      {
        ...{ paid, dueOn, earlier: 76_131, suppliedOn: null, terms: quote.owner.terms },
        changes: [change, other],
      },
      issued,
    );

  it('names no goods, and each change with the tax of the quote', () => {
    const paper = bill(76_131);
    expect(invoiceSchema.parse(paper)).toEqual(paper);
    expect([paper.goods, paper.discount, paper.changeIds]).toEqual([[], null, ['phone-4', 'tablet-1']]);
    expect(paper.charges).toEqual([
      { what: 'Other colour of the badge', amount: 1050 },
      { what: 'Names', amount: 350 },
    ]);
    // 10.50 and 3.50 are 14.00; × 0.07 is 0.98.
    expect(paper.sums).toEqual({ subtotal: 1400, tax: 98, total: 1498 });
    // Each for itself: 0.735 is 0.74, and 0.245 is 0.25.
    expect(bill(76_131, true).sums).toEqual({ subtotal: 1400, tax: 99, total: 1499 });
  });

  it('is paid by what came beyond the invoices before it, from nothing to all of it', () => {
    const paid = (came: number) => [bill(came).paid, bill(came).due];
    expect(paid(0)).toEqual([0, 1498]);
    expect(paid(76_130)).toEqual([0, 1498]);
    expect(paid(76_631)).toEqual([500, 998]);
    expect(paid(77_629)).toEqual([1498, 0]);
    expect(paid(90_000)).toEqual([1498, 0]);
  });

  it('asks in its terms for its own money and no deposit', () => {
    expect(payment(bill(0).terms)).toBe('Before the goods go out: 14.98 USD.');
    expect(payment(bill(0, false, '2026-12-11').terms)).toBe('To pay within 14 days of the invoice.');
  });
});

describe('a receipt', () => {
  it('says what came, what came in all, and what is left', () => {
    const payment = paymentSchema.parse({
      ...{ orderId: 'club', day: '2026-11-28', kind: 'payment', amountMinor: 20_000, currency: 'USD' },
      way: 'transfer',
    });
    const paper = receiptOf(confirmed(), { entryId: 'device-9', payment, paid: 58_066 }, issued);
    expect(receiptSchema.parse(paper)).toEqual(paper);
    expect([paper.payment.amount, paper.paid, paper.left]).toEqual([20_000, 58_066, 18_065]);
  });
});
