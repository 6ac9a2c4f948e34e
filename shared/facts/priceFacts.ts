import type { Plain, Variant } from './findingCase';

/** `size` is the one that lacks most; `others` are the further ones that lack something, empty for none. */
interface Sold {
  readonly line: string;
  readonly size: string;
  readonly others: string;
  readonly price: number;
  /** What a piece lacks. */
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
          readonly price: number;
          readonly short: number;
        }
      >
    | Variant<'belowFloor', Sold & { readonly floor: number }>
    | Variant<'belowCost', Sold & { readonly cost: number }>;
}
