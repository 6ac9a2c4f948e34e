import type { BenchWork } from '@/lib/calendar/benchWork';
import type { LyingPrint } from '@/lib/layout/lyingPrints';

/** What the sums tell that a finding needs. Minutes and money unrounded, for the whole job unless it says each. */
export interface CostFacts {
  /** All paid minutes. */
  readonly attendedMinutes: number;
  /** Paid minutes between the blanks' arrival and delivery: all without enquiry, artwork and proof. */
  readonly benchMinutes: number;
  /** What of them has to be done in which order, and what in one piece at the hot press. */
  readonly work: BenchWork;
  /** Sheets through the printer, those for spoiled pieces, rejects and tests among them. */
  readonly sheets: number;
  readonly cases: readonly CasePrice[];
  /** For each line that asks less than a piece of it takes out of the pocket. */
  readonly suggested: readonly SuggestedAsk[];
  readonly placements: readonly PlacementCount[];
  /** Where prints are laid on sheets together: how each lies. Elsewhere none, as the check has judged them. */
  readonly lying: readonly LyingPrint[];
  readonly pressOrders: readonly PressOrder[];
  /** The maker's own prices of breaks, at the quantity inside that earns least. */
  readonly ownPrices: readonly OwnPriceFact[];
  /** What stands in every break of a line that has own prices. */
  readonly breakPrices: readonly BreakPrice[];
}

/** A price of a size from a quantity on, as the channel writes prices. */
interface BreakPrice {
  readonly lineId: string;
  readonly size: string;
  readonly from: number;
  readonly written: number;
}

/** An own price of a size in a break, money a piece as the channel writes prices. */
interface OwnPriceFact {
  readonly lineId: string;
  readonly size: string;
  /** First quantity of the break. */
  readonly from: number;
  /** The quantity it was judged at. */
  readonly at: number;
  readonly written: number;
  /** What a piece leaves after fees, full cost and own pay; below 0 where it costs more than it brings. */
  readonly profit: number;
}

/** What a piece of one size of one line is sold for, beside what it must bring: each a piece, as the channel writes prices. */
interface CasePrice {
  readonly lineId: string;
  readonly size: string;
  /** Null where no price is decided. */
  readonly price: number | null;
  readonly outOfPocketFloor: number;
  /** Fees included. */
  readonly fullCost: number;
  /** Of card, stall or shop. */
  readonly fees: number;
}

/** What the sums suggest to ask for a line that asks too little. */
interface SuggestedAsk {
  readonly lineId: string;
  /** As the document of the job would hold them. */
  readonly askedPrice: number;
  readonly upCharges: readonly { readonly size: string; readonly amount: number }[];
}

/** One print size of one placement on its sheets. */
interface PlacementCount {
  readonly lineId: string;
  readonly placementId: string;
  /** Place of the print size in the placement's list. */
  readonly print: number;
  readonly perSheet: number;
  readonly pieces: number;
  /** Whole sheets for the good pieces, nothing spoiled. */
  readonly sheets: number;
  /** Free places on the last of them. */
  readonly spare: number;
}

/** Whether a line would cost less with its placements pressed in another order. */
interface PressOrder {
  readonly lineId: string;
  /** Ids of the placements in the cheapest order; null where the order is the cheapest already. */
  readonly cheaperOrder: readonly string[] | null;
  /** What the cheaper order saves on the whole job, 0 or more. */
  readonly saving: number;
}
