import type { Audience } from '@/shared/schemas/job';
import type { Plain, Variant } from './findingCase';

/** Facts of the findings about quantities and sizes. */
export interface QuantityFacts {
  'QTY-01': Plain<{ readonly line: string; readonly total: number; readonly ordered: number }>;
  'QTY-02':
    | Variant<'fraction', { readonly line: string; readonly size: string; readonly quantity: number }>
    | Variant<'none', { readonly line: string }>
    | Variant<'many', { readonly line: string; readonly total: number; readonly most: number }>;
  'QTY-03': Plain<{ readonly pieces: number; readonly least: number }>;
  'QTY-04':
    | Variant<'noBlank', { readonly blank: string; readonly size: string; readonly sizes: string }>
    | Variant<'strayCharge', { readonly line: string; readonly size: string; readonly blank: string }>
    | Variant<'noPrice', { readonly blank: string; readonly sizes: string; readonly count: number }>
    | Variant<'noPrint', { readonly placement: string; readonly size: string }>;
  /** Shares of the line's pieces. */
  'QTY-05': Variant<
    'more' | 'fewer',
    {
      readonly line: string;
      readonly size: string;
      readonly share: number;
      readonly usual: number;
      readonly audience: Audience;
    }
  >;
  'QTY-06': Plain<{ readonly line: string; readonly blank: string; readonly sizes: string }>;
  /** Blanks a run takes, spares among them: pieces that are missing, and by size. `uncounted` where nobody counted. */
  'QTY-07': Variant<
    'short' | 'uncounted',
    { readonly blank: string; readonly pieces: number; readonly each: string }
  >;
  'QTY-08':
    | Plain<{
        readonly blank: string;
        readonly size: string;
        readonly pack: number;
        readonly needed: number;
        readonly buy: number;
        readonly left: number;
        /** What the pieces left over cost, in currency units. */
        readonly worth: number;
        /** What lies at home; null where nobody counted. */
        readonly counted: number | null;
      }>
    /** Blanks that the customer is to bring, in all and by size. */
    | Variant<
        'ask',
        {
          readonly blank: string;
          readonly pieces: number;
          readonly ask: number;
          readonly each: string;
          readonly confidence: number;
        }
      >;
}
