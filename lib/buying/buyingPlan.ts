import type { CoverChoice } from '@/lib/job/coversOf';
import type { SupplyItem } from '@/shared/schemas/making/supply';
import type { BuyingTrouble } from './buyingTrouble';
import type { RateUse } from './rateUse';

/** What things are counted in: pieces of a blank, sheets, metres, millilitres, or what a consumable is counted in. */
export type BuyingUnit = 'piece' | 'sheet' | 'm' | 'roll' | 'mL';

/** A cover as the list would be bought at it. */
export interface CoverOffer extends CoverChoice {
  /** All of the list with freight: what lies free is not paid again, and the maker's own numbers stand. */
  readonly toPayMinor: number;
  /** Things without any price: they are in no sum. */
  readonly unpriced: number;
  /** Nor is freight that some supplier asks and nobody has told. */
  readonly isFreightUntold: boolean;
  /** How likely every size comes out whole with what lies free and what would be bought, 0 to 1. */
  readonly everySizeWithAll: number;
}

/** What of a thing lies at home. Missing is not 0. */
export type StockFor =
  | { readonly kind: 'counted'; readonly onHand: number; readonly reserved: number; readonly free: number }
  | { readonly kind: 'notCounted'; readonly reserved: number };

/** An offer as it would be bought. */
export interface Purchase {
  /** Null where no supplier is known and the job's own price stands in. */
  readonly supplierId: string | null;
  readonly offerId: string | null;
  /** What is bought: the thing needed, or what the maker chose in its place. */
  readonly item: SupplyItem;
  readonly articleNumber: string;
  readonly quantity: number;
  /** Both null where nobody has said how it is sold: just so much is meant then. */
  readonly packSize: number | null;
  readonly packs: number | null;
  /** Currency units; null where no price is known. */
  readonly each: number | null;
  readonly amountMinor: number | null;
  /** Why there is more of it than the packs ask for. */
  readonly more: 'tier' | 'minimum' | 'freight' | null;
  /** Typical where nobody has told a price. */
  readonly priceIs: 'offered' | 'own' | 'typical' | 'none';
  readonly leadWorkingDays: number | null;
  /** The last working day on which to order; null where no press is planned or the lead is not known. */
  readonly orderBy: string | null;
  /** Whether it is here in time where it is ordered at once; null where nobody knows. */
  readonly inTime: boolean | null;
}

/** One thing that is needed. */
export interface BuyingRow {
  readonly item: SupplyItem;
  /** Of the blank, paper, ink or consumable; its size apart. */
  readonly name: string;
  readonly unit: BuyingUnit;
  /** Good pieces of a blank, sheets for good pieces; null elsewhere. */
  readonly good: number | null;
  /** Spares, tests, rejects and what is to spare in it. */
  readonly need: number;
  /** What the works are expected to use, unrounded. */
  readonly expected: number;
  /** Of a blank: how likely the size comes out whole with `need`, 0 to 1; null elsewhere. */
  readonly chance: number | null;
  /** Of a blank: the same with what is bought and what lies free. */
  readonly chanceWithAll: number | null;
  /** Expected use by work, as works are given. */
  readonly byWork: readonly number[];
  readonly stock: StockFor;
  /** Need less what lies free. */
  readonly toBuy: number;
  /** The maker's own number; null where the sums decide. */
  readonly held: number | null;
  /** Null where nothing is to be bought. */
  readonly purchase: Purchase | null;
  /** All it can be had at, as it would be bought alone, the cheapest first; what comes too late last. */
  readonly offers: readonly Purchase[];
  /** What may stand in for it, offered where it cannot be had or comes too late. */
  readonly substitutes: readonly Purchase[];
  /**
   * What lies here after the works, as expected: what is free and what is bought, less what they use. It is worth what
   * is paid for more of it; where nothing is bought, what the jobs reckon with. Null where no price is known.
   */
  readonly left: number;
  readonly leftWorthMinor: number | null;
}

/** What goes to one supplier. */
export interface SupplierPart {
  /** Null for what no supplier is known of. */
  readonly supplierId: string | null;
  readonly name: string;
  /** Rows by their place in the plan. */
  readonly rows: readonly number[];
  readonly goodsMinor: number;
  /** Null where nobody has said. */
  readonly freightMinor: number | null;
  readonly freightIsFree: boolean;
  /** The least an order comes to; null where there is no such. */
  readonly minimumMinor: number | null;
  /** What is lacking to it; 0 where it is reached. */
  readonly shortMinor: number;
  /** Freight of each work by the worth of what is bought for it; they add to it. Empty where it is not known. */
  readonly freightByWorkMinor: readonly number[];
  readonly orderBy: string | null;
}

/** What a customer brings, spares among them: asked of them, never bought. */
export interface AskedOfCustomer {
  readonly jobId: string;
  readonly orderId: string | null;
  readonly lineId: string;
  readonly blankId: string;
  readonly name: string;
  readonly sizes: readonly { readonly size: string; readonly pieces: number; readonly ask: number }[];
}

/** Ink of one printer. */
export interface InkOfPrinter {
  readonly printerId: string;
  readonly name: string;
  readonly mL: number;
  /** What no channel is known of: the coverage of some picture is told as a total. It is in `mL`, in no row. */
  readonly untoldMl: number;
}

/** What is to be bought, from whom and by when. */
export interface BuyingPlan {
  readonly currency: string;
  /** Whether the sums of each work stand. */
  readonly works: readonly { readonly jobId: string; readonly name: string; readonly isCosted: boolean }[];
  /** The three choices. */
  readonly covers: readonly CoverOffer[];
  /** The chosen cover with scrap as high as it may well be; null where nothing was logged. */
  readonly atUpperScrap: CoverChoice | null;
  readonly rows: readonly BuyingRow[];
  readonly asked: readonly AskedOfCustomer[];
  readonly ink: readonly InkOfPrinter[];
  readonly suppliers: readonly SupplierPart[];
  readonly cash: {
    readonly goodsMinor: number;
    readonly freightMinor: number;
    readonly totalMinor: number;
    /** Rows without any price: they are in no sum. */
    readonly unpriced: number;
    /** How much dearer it may be than the cheapest suppliers; 0 where no cheaper way exists. */
    readonly dearerAtMostMinor: number;
  };
  readonly left: { readonly worthMinor: number };
  /** What the jobs reckon with by a rate and no consumable stands for: it is in no row and no sum. */
  readonly notSetUp: readonly RateUse[];
  /** Bought for each work apart; null for a single work. Both without the maker's own numbers. */
  readonly apart: {
    readonly totalMinor: number;
    readonly togetherMinor: number;
    readonly savingMinor: number;
  } | null;
  readonly troubles: readonly BuyingTrouble[];
}
