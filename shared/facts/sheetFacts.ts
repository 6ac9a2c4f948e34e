import type { Plain, Variant } from './findingCase';

interface OfPrint {
  readonly placement: string;
  readonly widthMm: number;
  readonly heightMm: number;
}

interface OnSheet extends OfPrint {
  readonly sheet: string;
}

/** The largest print of this shape with room for tape. */
interface Largest {
  readonly largestWidthMm: number;
  readonly largestHeightMm: number;
}

/** What the printer reaches of the sheet. */
interface Reach {
  readonly printableWidthMm: number;
  readonly printableHeightMm: number;
}

interface FullSheet {
  readonly placement: string;
  readonly sheet: string;
  /** Share of a full sheet that stays empty. */
  readonly empty: number;
}

interface Spare {
  readonly placement: string;
  readonly perSheet: number;
  readonly pieces: number;
  readonly sheets: number;
  /** Free places of the last sheet, and all places. */
  readonly spare: number;
  readonly full: number;
}

/** Facts of the findings about sheets. Shares are 0 to 1. */
export interface SheetFacts {
  'LAY-01':
    | Plain<OnSheet & Reach & Largest>
    | Variant<'nothing', OnSheet>
    | Variant<'speck', OfPrint & { readonly leastMm: number }>;
  'LAY-02': Plain<OnSheet>;
  'LAY-03': Variant<'unsupported' | 'supported', OnSheet & Largest>;
  /** `outer`: of prints that are cut apart, the ones along the edge of the paper. */
  'LAY-04': Variant<
    'none' | 'narrow' | 'outer',
    { readonly placement: string; readonly marginMm: number; readonly wantedMm: number }
  >;
  'LAY-05': Plain<{
    readonly placement: string;
    readonly blank: string;
    readonly edgeMm: number;
    readonly wantedMm: number;
  }>;
  'LAY-06': Variant<
    'none' | 'narrow',
    { readonly placement: string; readonly gutterMm: number; readonly wantedMm: number }
  >;
  'LAY-07':
    | Variant<'empty', FullSheet>
    | Variant<
        'smaller',
        FullSheet & {
          readonly perSheet: number;
          readonly betterPerSheet: number;
          /** Size at which a sheet carries more. */
          readonly widthMm: number;
          readonly heightMm: number;
        }
      >;
  'LAY-08': Plain<Spare> | Variant<'strip', Spare>;
  'LAY-09': Plain<{ readonly printer: string }>;
  'LAY-10':
    | Plain<OnSheet & Reach & Largest>
    | Variant<'nothing', { readonly placement: string; readonly sheet: string }>
    | Variant<
        'longSheet' | 'longPrint',
        {
          readonly sheet: string;
          readonly printer: string;
          readonly lengthMm: number;
          /** Longest page of the printer. */
          readonly longestMm: number;
        }
      >;
  'LAY-11':
    | Variant<'other', { readonly sheet: string }>
    | Variant<
        'light',
        {
          readonly sheet: string;
          readonly placement: string;
          /** Grams a square metre. */
          readonly grams: number;
          readonly wantedGrams: number;
          readonly coverage: number;
        }
      >;
  'LAY-12': Variant<
    'long' | 'short',
    {
      readonly placement: string;
      readonly size: string;
      readonly widthMm: number;
      readonly roomMm: number;
      readonly apartMm: number;
    }
  >;
  'LAY-13': Variant<
    'steep' | 'lean',
    { readonly placement: string; readonly size: string; readonly degrees: number }
  >;
  'LAY-14': Variant<'mirror' | 'recipe', { readonly placement: string; readonly other: string }>;
}
