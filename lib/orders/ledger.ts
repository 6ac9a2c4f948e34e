import { sumsWithChanges } from '@/lib/quotes/saleSums';
import type { SaleSums } from '@/shared/schemas/paperParts';
import type { AgreedSale } from './agreedSale';
import { billsOf, creditedOf } from './bills';
import { cameMinor } from './money/payments';
import type { Happening, NotedOf, OutOf } from './orderFacts';

/** Money in another currency than the order's: told, and never added to it. */
interface OtherMoney {
  readonly id: string;
  readonly kind: Happening['kind'];
  readonly amountMinor: number;
  readonly currency: string;
}

/** What was agreed, billed and paid of one order so far, in whole minor units of its one currency. */
export interface Ledger {
  readonly currency: string;
  /** As written, tax not looked at. */
  readonly changesMinor: readonly number[];
  readonly changesSinceBillMinor: readonly number[];
  /** Invoices and credit notes in force. A credit note of another device may stand before its invoice. */
  readonly papers: readonly (OutOf<'invoice'> | OutOf<'creditNote'>)[];
  /** An invoice in force that is due later than it was written: the goods may go out before. */
  readonly isOnCredit: boolean;
  /** Payments less refunds and reversals. */
  readonly receivedMinor: number;
  readonly other: readonly OtherMoney[];
}

export const emptyLedger = (currency: string): Ledger => ({
  currency,
  changesMinor: [],
  changesSinceBillMinor: [],
  papers: [],
  isOnCredit: false,
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
        changesMinor: [...ledger.changesMinor, step.amountMinor],
        changesSinceBillMinor: [...ledger.changesSinceBillMinor, step.amountMinor],
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
 * What the customer owes in all: what was billed less what of that was credited, and the changes since; else what was
 * agreed with all changes.
 *
 * @returns null where nothing was agreed or billed yet
 */
export function totalMinor(ledger: Ledger, agreed: AgreedSale | null): number | null {
  const { billedMinor, creditedMinor } = billing(ledger);
  if (billedMinor !== null)
    return billedMinor + taxed(agreed, ledger.changesSinceBillMinor, nothing) - creditedMinor;
  return agreed === null ? null : agreed.sums.total + taxed(agreed, ledger.changesMinor);
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
export const changesTotalMinor = ({ changesMinor }: Ledger, agreed: AgreedSale | null): number =>
  taxed(agreed, changesMinor);

// Helpers

const nothing: SaleSums = { subtotal: 0, tax: 0, total: 0 };

/**
 * Nobody knows the tax of changes to what was never agreed: they count as written.
 *
 * @param onto what stands on the paper before them; nothing for changes that come on a paper of their own
 * @returns what changes add
 */
function taxed(
  agreed: AgreedSale | null,
  changes: readonly number[],
  onto = agreed?.sums ?? nothing,
): number {
  if (agreed === null) return changes.reduce((sum, amount) => sum + amount, 0);
  const { tax, currency } = agreed.quote.body;
  const charges = changes.map((amount) => ({ what: '', amount }));
  return sumsWithChanges({ sums: onto, tax, currency }, charges).total - onto.total;
}

function paymentEntered(ledger: Ledger, one: NotedOf<'payment'>): Ledger {
  const { amountMinor, currency } = one.body;
  if (currency !== ledger.currency) return withOther(ledger, one, amountMinor, currency);
  return { ...ledger, receivedMinor: ledger.receivedMinor + cameMinor(one.body) };
}

function billEntered(ledger: Ledger, one: OutOf<'invoice'>): Ledger {
  const { currency, sums, dueOn, issuedOn } = one.body;
  if (one.withdrawn) return ledger;
  if (currency !== ledger.currency) return withOther(ledger, one, sums.total, currency);
  return {
    ...ledger,
    papers: [...ledger.papers, one],
    changesSinceBillMinor: [],
    isOnCredit: ledger.isOnCredit || (dueOn !== null && dueOn > issuedOn),
  };
}

const withOther = (
  ledger: Ledger,
  { id, kind }: Pick<Happening, 'id' | 'kind'>,
  amountMinor: number,
  currency: string,
): Ledger => ({ ...ledger, other: [...ledger.other, { id, kind, amountMinor, currency }] });
