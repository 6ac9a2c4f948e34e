import type { Expense, PaymentWay } from '@/shared/schemas/orderEvents';

/** Whom or what some money or time was for. */
export type RowAbout =
  | { readonly kind: 'order' | 'stallDay' | 'shop' | 'supplier' | 'run'; readonly id: string }
  | { readonly kind: 'workshop' };

/** Why a row is told and in no sum. */
type LeftOut =
  /** Sums have one currency, that of the workshop. */
  | { readonly why: 'otherCurrency' }
  /** An expense with the same receipt says what was paid. */
  | { readonly why: 'paidBy'; readonly entryId: string }
  /** An expense in another currency: a delivery with the same receipt says it in that of the sums. */
  | { readonly why: 'deliverySays'; readonly entryId: string };

/** What a row is, beside kinds of expenses. */
type TakingKind = 'payment' | 'refund' | 'reversal' | 'stallTakings' | 'shopPayment';

interface AnyRow {
  /** The entry or paper that says so. One that says several things has a row for each. */
  readonly id: string;
  readonly day: string;
  readonly about: RowAbout;
  /** As it was noted; empty where its kind says all. */
  readonly what: string;
  /** How it was paid; null where nobody said. */
  readonly way: PaymentWay | null;
  /** Whole minor units, above 0 where it came, below where it went. */
  readonly amountMinor: number;
  readonly currency: string;
  /** Name of the file. */
  readonly receipt: string | null;
  readonly leftOut: LeftOut | null;
}

/** Money that came or went, as one entry or paper says. */
export type YearRow = AnyRow &
  (
    | {
        readonly flow: 'taking';
        readonly kind: TakingKind;
        /** Tax inside it, whole minor units, as papers and closes say; null where none says. */
        readonly taxMinor: number | null;
        /** The way of selling: the id of a channel, or where none is known what it was. */
        readonly sellingWay: string;
      }
    | { readonly flow: 'fee'; readonly kind: 'cardFee' | 'commission' }
    /** Rounded coins, and what a tin had more or less than it should. */
    | { readonly flow: 'tin'; readonly kind: 'tin' }
    | { readonly flow: 'expense'; readonly kind: Expense['kind'] }
  );

/** @returns the sum of those that count, whole minor units. */
export const sumOfRows = (rows: readonly YearRow[]): number =>
  rows.reduce((sum, { amountMinor, leftOut }) => (leftOut === null ? sum + amountMinor : sum), 0);

/** @returns why an amount is in no sum; null where it is. */
export const leftOutBy = (currency: string, own: string): LeftOut | null =>
  currency === own ? null : { why: 'otherCurrency' };
