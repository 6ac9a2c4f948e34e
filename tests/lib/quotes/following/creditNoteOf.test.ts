import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { creditNoteOf } from '@/lib/quotes/following/creditNoteOf';
import { confirmationOf } from '@/lib/quotes/following/followingPapers';
import { invoiceOf } from '@/lib/quotes/following/invoiceOf';
import { quoteBody } from '@/lib/quotes/quoteBody';
import { saleSums } from '@/lib/quotes/saleSums';
import { type CreditNote, creditNoteSchema, type Invoice } from '@/shared/schemas/orderPapers';
import { ready } from '@/tests/lib/quotes/quoteTools';
import { cases } from '@/tests/tools/cases';

const issued = { number: { count: 1, letter: 'A' as const }, day: '2026-12-12' };
const quote = quoteBody(ready(), issued.number, ({ id }) => id);
const confirmed = confirmationOf(
  { paperId: 'quote-1', quote },
  { alternativeId: null, by: 'Alex Placeholder', on: '2026-11-26' },
  issued,
);
if (!confirmed.ok) throw new Error(confirmed.problem.kind);
const invoice = invoiceOf(
  confirmed.value,
  { changes: [], paid: 76_131, earlier: 0, suppliedOn: null, dueOn: null, terms: quote.owner.terms },
  issued,
);

function credit(amounts: readonly number[], earlier: readonly CreditNote[] = [], of: Invoice = invoice) {
  const less = (key: keyof Invoice['sums']) =>
    earlier.reduce((rest, { sums }) => rest - sums[key], of.sums[key]);
  return creditNoteOf(
    {
      paperId: 'invoice-1',
      invoice: of,
      left: { subtotal: less('subtotal'), tax: less('tax'), total: less('total') },
      why: 'Faulty pieces',
      lines: amounts.map((amount) => ({ what: 'Club shirt', amount })),
    },
    issued,
  );
}

function noteOf(given: ReturnType<typeof credit>): CreditNote {
  if (!given.ok) throw new Error(JSON.stringify(given.problem));
  return given.value;
}

describe('a credit note', () => {
  it('gives back a part, taxed as the invoice was', () => {
    // Two shirts at 19.00: 38.00 × 0.07 is 2.66.
    const note = noteOf(credit([3800]));
    expect(note.sums).toEqual({ subtotal: 3800, tax: 266, total: 4066 });
    expect(creditNoteSchema.parse(note)).toEqual(note);
  });

  it('of all gives back all, to the cent', () => {
    expect(noteOf(credit([71_150])).sums).toEqual(invoice.sums);
  });

  it('never gives back more than the invoice, those before it counted', () => {
    expect(credit([71_151])).toEqual({
      ok: false,
      problem: { kind: 'overInvoice', asked: 71_151, left: 71_150 },
    });
    expect(credit([100], [noteOf(credit([71_100]))])).toEqual({
      ok: false,
      problem: { kind: 'overInvoice', asked: 100, left: 50 },
    });
  });

  it('gives back something in every line', () => {
    expect(credit([])).toEqual({ ok: false, problem: { kind: 'nothing' } });
    expect(credit([100, 0])).toEqual({
      ok: false,
      problem: { kind: 'notAboveZero', what: 'Club shirt' },
    });
  });

  it('after any number of others comes to the invoice in the end and to no more on the way', () => {
    fc.assert(
      fc.property(
        fc.record({
          sizes: fc.array(fc.oneof(fc.integer({ min: 1, max: 9999 }), fc.constant(1935)), {
            minLength: 1,
            maxLength: 6,
          }),
          parts: fc.array(fc.double({ min: 0.01, max: 1, noNaN: true }), { maxLength: 8 }),
          share: fc.integer({ min: 0, max: 2500 }),
          mode: fc.constantFrom('added' as const, 'inside' as const, 'none' as const),
          rounding: fc.constantFrom('line' as const, 'document' as const),
        }),
        ({ sizes, parts, share, mode, rounding }) => {
          const tax = { mode, share: share / 10_000, rounding, exemption: null };
          const lines = [
            {
              sizes: sizes.map((each) => ({ size: `at ${each}`, quantity: 1, each, total: each })),
              start: 0,
            },
          ];
          const of = { ...invoice, tax, sums: saleSums({ lines, charges: [] }, 0, tax, 'USD') };
          const notes: CreditNote[] = [];
          const left = (key: 'subtotal' | 'tax' | 'total') =>
            notes.reduce((rest, { sums }) => rest - sums[key], of.sums[key]);
          for (const part of [...parts, 1]) {
            if (left('subtotal') === 0) break;
            notes.push(noteOf(credit([Math.max(1, Math.round(left('subtotal') * part))], notes, of)));
            for (const key of ['subtotal', 'tax', 'total'] as const)
              expect(left(key)).toBeGreaterThanOrEqual(0);
          }
          expect([left('subtotal'), left('tax'), left('total')]).toEqual([0, 0, 0]);
        },
      ),
      cases(300),
    );
  });
});
