import type { Plain, Variant } from './findingCase';

/** `size` is the one that lacks most; `others` are the further ones that lack something, empty for none. */
interface Sold {
  readonly line: string;
  readonly size: string;
  readonly others: string;
  /** All three as the channel writes prices, with tax inside or without. */
  readonly price: number;
  readonly taxInside: boolean;
  /** What the price lacks. */
  readonly short: number;
}

/** Facts of the findings about prices. Money in currency units, shares 0 to 1. */
export interface PriceFacts {
  'RATE-06': Plain<{ readonly channel: string; readonly fees: number; readonly margin: number }>;
  'RATE-08':
    | Variant<'nothing', { readonly line: string; readonly size: string; readonly price: number }>
    | Variant<
        'ownBelowCost',
        {
          readonly line: string;
          readonly size: string;
          /** First quantity of the break, and the one at which most is lost. */
          readonly from: number;
          readonly at: number;
          /** Both as the channel writes prices. */
          readonly price: number;
          readonly short: number;
        }
      >
    | Variant<'belowFloor', Sold & { readonly floor: number }>
    /** `cost` with the fees that the price pays, where it pays any. */
    | Variant<'belowCost', Sold & { readonly cost: number; readonly hasFees: boolean }>;
}
