import { headingLike } from '@/lib/quotes/paperHeading';
import { saleSums } from '@/lib/quotes/saleSums';
import { failed, ok, type Result } from '@/shared/result';
import type { CreditNote, Invoice } from '@/shared/schemas/orderPapers';
import type { SaleSums } from '@/shared/schemas/paperParts';
import type { Issued } from './followingPapers';

interface Crediting {
  readonly paperId: string;
  readonly invoice: Invoice;
  /** What of the invoice no credit note in force gave back. */
  readonly left: SaleSums;
  readonly why: string;
  /** Whole minor units as prices are written, each above 0. */
  readonly lines: readonly { readonly what: string; readonly amount: number }[];
}

export type CreditProblem =
  | { readonly kind: 'nothing' }
  /** A line gives nothing back. */
  | { readonly kind: 'notAboveZero'; readonly what: string }
  /** More than is left of the invoice, as prices are written. */
  | { readonly kind: 'overInvoice'; readonly asked: number; readonly left: number };

/** Gives back a part of an invoice or all of it, taxed as the invoice was. */
export function creditNoteOf(
  { paperId, invoice, left, why, lines }: Crediting,
  issued: Issued,
): Result<CreditNote, CreditProblem> {
  if (lines.length === 0) return failed({ kind: 'nothing' });
  const none = lines.find(({ amount }) => amount <= 0);
  if (none !== undefined) return failed({ kind: 'notAboveZero', what: none.what });
  const asked = lines.reduce((sum, { amount }) => sum + amount, 0);
  if (asked > left.subtotal) return failed({ kind: 'overInvoice', asked, left: left.subtotal });
  return ok({
    ...headingLike(invoice, issued),
    invoice: { paperId, number: invoice.number, issuedOn: invoice.issuedOn },
    why,
    lines: [...lines],
    tax: invoice.tax,
    sums: creditSums(lines, invoice, left),
  });
}

// Helpers

function creditSums(lines: Crediting['lines'], { tax, currency }: Invoice, left: SaleSums): SaleSums {
  const sums = saleSums({ lines: [], charges: lines }, 0, tax, currency);
  // All that is left gives back all the tax that is left, however the parts before were rounded.
  if (sums.subtotal === left.subtotal) return left;
  const taken = Math.max(0, Math.min(sums.tax, left.tax));
  return { ...sums, tax: taken, total: tax.mode === 'added' ? sums.subtotal + taken : sums.subtotal };
}
