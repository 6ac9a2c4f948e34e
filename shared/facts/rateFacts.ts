import type { NoFacts, Plain, Variant } from './findingCase';

/** A rate and what it belongs to; `of` is empty for rates there is one of. */
interface OfRate {
  readonly rate: string;
  readonly of: string;
}

interface Measured extends OfRate {
  readonly value: number;
  readonly unit: string;
}

interface Typical extends OfRate {
  readonly typical: number;
  readonly unit: string;
}

/** An amount of the maker's own, and what can be paid of it. */
interface Finer {
  readonly line: string;
  readonly each: number;
  readonly payable: number;
  readonly currency: string;
}

/** The oldest of the figures of a document; `others` are the further ones of that age. */
interface Dated extends OfRate {
  /** YYYY-MM-DD */
  readonly date: string;
  readonly others: number;
}

/** Facts of the findings about rates. Money in currency units, shares 0 to 1. */
export interface RateFacts {
  'RATE-01':
    | Variant<'noTypical', OfRate>
    | Variant<'stop' | 'caution' | 'coverage', Typical>
    | Variant<'noFreight', NoFacts>
    /** Minutes that a delivery would count. */
    | Variant<'noDrive', { readonly minutes: number }>;
  'RATE-02': Variant<'future', Dated> | Variant<'stale' | 'old', Dated & { readonly days: number }>;
  'RATE-03':
    | Variant<'doubled' | 'outOfOrder', { readonly breaks: string }>
    | Variant<'ending', { readonly step: number; readonly coin: number; readonly currency: string }>
    | Variant<'ownFiner' | 'askedFiner' | 'startFiner', Finer>
    | Variant<'chargeFiner', Finer & { readonly size: string }>
    | Variant<
        'ownNoBreak',
        {
          readonly line: string;
          readonly from: number;
          readonly price: number;
          readonly breaks: string;
          /** Further ones of the line. */
          readonly others: number;
        }
      >
    /** Of a list that has one price, or a start and a price a piece. */
    | Variant<
        'ownUnused',
        { readonly line: string; readonly from: number; readonly price: number; readonly others: number }
      >
    /** A price each that rises from fewer pieces to more. */
    | Variant<
        'ownDearer',
        {
          readonly line: string;
          readonly fewer: number;
          readonly fewerPrice: number;
          readonly more: number;
          readonly morePrice: number;
        }
      >
    | Variant<'noPay', NoFacts>
    | Variant<'noInk', { readonly artwork: string }>
    /** Minutes of hands and of the press alone, beside the seconds it is closed. */
    | Variant<
        'underDwell',
        { readonly placement: string; readonly minutes: number; readonly seconds: number }
      >
    | Variant<
        'ownNothing',
        { readonly line: string; readonly size: string; readonly from: number; readonly price: number }
      >
    | Variant<
        'largerCheaper' | 'largerCharge',
        {
          /** The blank, or the line whose up-charges are typed. */
          readonly of: string;
          readonly size: string;
          readonly amount: number;
          readonly smaller: string;
          readonly smallerAmount: number;
        }
      >
    | Variant<'resale', { readonly machine: string; readonly price: number; readonly resale: number }>
    | Variant<'paperForm', { readonly sheet: string; readonly form: 'cut' | 'roll' }>
    | Variant<'tooLarge', { readonly most: number; readonly currency: string }>
    | Variant<'nothing', Measured>
    | Variant<'low' | 'high', Measured & { readonly least: number; readonly most: number }>;
  'RATE-04': Variant<'litre' | 'pack', Measured & { readonly typical: number; readonly times: number }>;
  'RATE-05': Plain<{ readonly placement: string; readonly typical: number }>;
  'RATE-07': Plain<{ readonly machine: string }>;
}
