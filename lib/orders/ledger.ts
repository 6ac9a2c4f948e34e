import { noSums, sumsWithChanges } from '@/lib/quotes/saleSums';
import type { AgreedSale } from './agreedSale';
import { billedChanges, billsOf, creditedOf, isOfGoods } from './bills';
import { cameMinor } from './money/payments';
import type { Happening, NotedOf, OutOf } from './orderFacts';

/** Money in another currency than the order's: told, and never added to it. */
interface OtherMoney {
  readonly id: string;
  readonly kind: Happening['kind'];
  readonly amountMinor: number;
  readonly currency: string;
}

/** What was charged for a change, as written, tax not looked at. */
interface Change {
  readonly id: string;
  readonly amountMinor: number;
}

/** What was agreed, billed and paid of one order so far, in whole minor units of its one currency. */
export interface Ledger {
  readonly currency: string;
  readonly changes: readonly Change[];
  /**
   * Invoices and credit notes in force. Those of another device may stand before what they are about: a credit note
   * before its invoice, an invoice before a change that it bills.
   */
  readonly papers: readonly (OutOf<'invoice'> | OutOf<'creditNote'>)[];
  /** Payments less refunds and reversals. */
  readonly receivedMinor: number;
  readonly other: readonly OtherMoney[];
}

export const emptyLedger = (currency: string): Ledger => ({
  currency,
  changes: [],
  papers: [],
  receivedMinor: 0,
  other: [],
});

/** @returns the ledger after one more thing happened. */
export function entered(ledger: Ledger, one: Happening): Ledger {
  switch (one.kind) {
    case 'payment':
      return paymentEntered(ledger, one);
    case 'orderEvent': {
      const { step } = one.body;
      if (step.what !== 'change') return ledger;
      if (step.currency !== ledger.currency) return withOther(ledger, one, step.amountMinor, step.currency);
      return {
        ...ledger,
        changes: [...ledger.changes, { id: one.id, amountMinor: step.amountMinor }],
      };
    }
    case 'invoice':
      return billEntered(ledger, one);
    case 'creditNote': {
      const { currency, sums } = one.body;
      if (one.withdrawn) return ledger;
      if (currency !== ledger.currency) return withOther(ledger, one, sums.total, currency);
      return { ...ledger, papers: [...ledger.papers, one] };
    }
    default:
      return ledger;
  }
}

/**
 * What the customer owes in all: what was billed less what of that was credited, and the changes that no bill names;
 * what was agreed, too, while no bill is of the goods.
 *
 * @returns null where the goods were neither agreed nor billed yet
 */
export function totalMinor(ledger: Ledger, agreed: AgreedSale | null): number | null {
  const bills = billsOf(ledger.papers);
  const { billedMinor, creditedMinor } = billing(ledger);
  const askedMinor = (billedMinor ?? 0) - creditedMinor;
  const billed = billedChanges(bills);
  const unbilled = ledger.changes.filter(({ id }) => !billed.has(id));
  if (bills.some(isOfGoods)) return askedMinor + taxed(agreed, unbilled, noSums);
  return agreed === null ? null : askedMinor + agreed.sums.total + taxed(agreed, unbilled);
}

/** @returns what was billed by invoices in force, null where none is, and what of it was credited. */
export function billing({ papers }: Pick<Ledger, 'papers'>): {
  readonly billedMinor: number | null;
  readonly creditedMinor: number;
} {
  const bills = billsOf(papers);
  return {
    billedMinor: bills.length === 0 ? null : bills.reduce((sum, { paper }) => sum + paper.body.sums.total, 0),
    creditedMinor: bills.reduce((sum, bill) => sum + creditedOf(bill).total, 0),
  };
}

/** @returns what changes added to what was agreed, with their tax. */
export const changesTotalMinor = ({ changes }: Ledger, agreed: AgreedSale | null): number =>
  taxed(agreed, changes);

// Helpers

/**
 * Nobody knows the tax of changes to what was never agreed: they count as written.
 *
 * @param onto what stands on the paper before them; nothing for changes that come on a paper of their own
 * @returns what changes add
 */
function taxed(agreed: AgreedSale | null, changes: readonly Change[], onto = agreed?.sums ?? noSums): number {
  if (agreed === null) return changes.reduce((sum, { amountMinor }) => sum + amountMinor, 0);
  const { tax, currency } = agreed.quote.body;
  const charges = changes.map(({ amountMinor }) => ({ what: '', amount: amountMinor }));
  return sumsWithChanges({ sums: onto, tax, currency }, charges).total - onto.total;
}

function paymentEntered(ledger: Ledger, one: NotedOf<'payment'>): Ledger {
  const { amountMinor, currency } = one.body;
  if (currency !== ledger.currency) return withOther(ledger, one, amountMinor, currency);
  return { ...ledger, receivedMinor: ledger.receivedMinor + cameMinor(one.body) };
}

function billEntered(ledger: Ledger, one: OutOf<'invoice'>): Ledger {
  const { currency, sums } = one.body;
  if (one.withdrawn) return ledger;
  if (currency !== ledger.currency) return withOther(ledger, one, sums.total, currency);
  return {
    ...ledger,
    papers: [...ledger.papers, one],
  };
}

const withOther = (
  ledger: Ledger,
  { id, kind }: Pick<Happening, 'id' | 'kind'>,
  amountMinor: number,
  currency: string,
): Ledger => ({ ...ledger, other: [...ledger.other, { id, kind, amountMinor, currency }] });
