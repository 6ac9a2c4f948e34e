import type { Finding } from '@/shared/finding';

/** A line of an order, as an obstacle names it. */
interface OfLine {
  readonly jobId: string;
  readonly lineId: string;
  readonly name: string;
}

/** Why an alternative cannot be offered. */
export type AlternativeProblem =
  /** Its line, its print or its size is not there. */
  | { readonly kind: 'gone' }
  /** It asks for as many as the order does. */
  | { readonly kind: 'same' }
  /** Without its only print nothing is made. */
  | { readonly kind: 'onlyPrint' }
  /** A price list promises nothing of such an order. */
  | { readonly kind: 'notListed' }
  /** Its price would come to nothing. */
  | { readonly kind: 'noPrice' }
  /** What is taken off is more than it comes to. */
  | { readonly kind: 'discountOver' }
  /** It comes to more than is kept exact to the last coin. */
  | { readonly kind: 'tooLarge' }
  | { readonly kind: 'stopped'; readonly why: Finding | null }
  /** Under what it costs in full, and nobody has said why; currency units. */
  | { readonly kind: 'underCost'; readonly loss: number };

/** What stands in the way of a quote. Whole minor units where nothing else is said. */
export type QuoteObstacle =
  | { readonly kind: 'noCustomer' }
  | { readonly kind: 'nothingOrdered' }
  | { readonly kind: 'jobGone'; readonly jobId: string }
  /** Nobody has chosen anything of the job yet, so that goods nobody asked for would be quoted. */
  | ({
      readonly kind: 'asBegun';
      readonly job: string;
      readonly pieces: number;
      /** What the picture is called that it would be printed with. */
      readonly picture: string;
    } & OfLine)
  /** What the job itself stops for. */
  | { readonly kind: 'stopped'; readonly jobId: string; readonly name: string; readonly why: Finding | null }
  | ({ readonly kind: 'noPrice' } & OfLine)
  /** The way of selling that the order names is not in the workshop. */
  | { readonly kind: 'noChannel' }
  /** Nobody has said how tax stands to prices there. */
  | { readonly kind: 'noTaxMode'; readonly channel: string }
  /** Some prices are written with tax inside and others without: on one paper nobody could tell. */
  | { readonly kind: 'mixedChannels'; readonly channels: readonly string[] }
  /** No tax is to be taken, and the customer has given no certificate. */
  | { readonly kind: 'noCertificate' }
  | { readonly kind: 'certificateExpired'; readonly on: string }
  | ({ readonly kind: 'listGone' } & OfLine)
  | ({ readonly kind: 'listExpired'; readonly on: string } & OfLine)
  | ({ readonly kind: 'listWithdrawn' } & OfLine)
  /** The list is in another money, or its prices stand otherwise to tax. */
  | ({ readonly kind: 'listOtherTerms' } & OfLine)
  | ({ readonly kind: 'sizeNotListed'; readonly size: string } & OfLine)
  | ({ readonly kind: 'underFirstBreak'; readonly from: number; readonly pieces: number } & OfLine)
  | { readonly kind: 'discountOver'; readonly discount: number; readonly before: number }
  /** More lines than a paper holds. */
  | { readonly kind: 'tooManyLines'; readonly lines: number; readonly most: number }
  /** It comes to more than is kept exact to the last coin. */
  | { readonly kind: 'tooLarge' }
  /** Discounts and credits leave nothing to pay. */
  | { readonly kind: 'asksNothing' }
  /** Currency units. */
  | { readonly kind: 'underCost'; readonly fullCost: number; readonly profit: number }
  | { readonly kind: 'wantedInPast'; readonly wantedOn: string }
  | { readonly kind: 'alternative'; readonly alternativeId: string; readonly problem: AlternativeProblem };
