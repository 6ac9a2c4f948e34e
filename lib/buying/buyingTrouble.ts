import type { SupplyItem } from '@/shared/schemas/making/supply';

/** What is wrong with a buying list or what it stands on. Nothing is changed for it. */
export type BuyingTrouble =
  /** A stop stands in the job, so nothing of it is in the list. */
  | { readonly what: 'uncosted'; readonly jobId: string; readonly name: string }
  /** Laid out by a run that has begun, or pressed: nothing of it is bought. */
  | { readonly what: 'made'; readonly name: string | null }
  /** A run that made it is closed; it is bought for once more. */
  | { readonly what: 'madeBefore'; readonly name: string | null }
  /** The list names a job that is not here. */
  | { readonly what: 'jobGone'; readonly jobId: string }
  /** More went out than was ever in: counted as none. */
  | { readonly what: 'negativeStock'; readonly item: SupplyItem; readonly onHand: number }
  /** Others have been promised more than lies here. */
  | {
      readonly what: 'reservedBeyond';
      readonly item: SupplyItem;
      readonly onHand: number;
      readonly reserved: number;
    }
  | { readonly what: 'noPrice'; readonly item: SupplyItem }
  | {
      readonly what: 'heldBelowNeed';
      readonly item: SupplyItem;
      readonly held: number;
      readonly toBuy: number;
    }
  /** The maker's own number fills no whole packs. */
  | { readonly what: 'heldNotPacks'; readonly item: SupplyItem; readonly held: number; readonly buy: number }
  /** Nothing in the list needs it, so it is not bought. */
  | { readonly what: 'heldUnneeded'; readonly item: SupplyItem; readonly held: number }
  /** The chosen offer is there no more, or of something else. */
  | { readonly what: 'chosenGone'; readonly item: SupplyItem; readonly supplierId: string }
  | { readonly what: 'late'; readonly item: SupplyItem; readonly orderBy: string }
  | { readonly what: 'freightUnknown'; readonly supplierId: string | null }
  | { readonly what: 'belowMinimum'; readonly supplierId: string; readonly shortMinor: number }
  /** Quantities of the tiers do not rise: they are read by quantity all the same. */
  | { readonly what: 'tiersNotRising'; readonly supplierId: string; readonly offerId: string }
  /** More of it costs more each. */
  | {
      readonly what: 'tierDearer';
      readonly supplierId: string;
      readonly offerId: string;
      readonly from: number;
    }
  /** Two prices from the same quantity: the lower is not taken for granted, the higher counts. */
  | {
      readonly what: 'tierTwice';
      readonly supplierId: string;
      readonly offerId: string;
      readonly from: number;
    }
  /** The offer names a size that its blank has not. */
  | {
      readonly what: 'offerUnknownSize';
      readonly supplierId: string;
      readonly offerId: string;
      readonly size: string;
    };
