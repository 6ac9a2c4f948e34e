import type { Plain, Variant } from './findingCase';

interface OfBlank {
  readonly blank: string;
}

interface Polyester extends OfBlank {
  /** Share of polyester in the cloth. */
  readonly polyester: number;
  /** Share from which on it is full. */
  readonly least: number;
}

interface ClothColour extends OfBlank {
  readonly colour: string;
  /** L* and C*. */
  readonly lightness: number;
  readonly chroma: number;
}

/** Facts of the findings about what is printed on. Shares are 0 to 1. */
export interface SubstrateFacts {
  'SUB-01':
    | Variant<'unknown', OfBlank>
    | Variant<'sum', OfBlank & { readonly sum: number }>
    | Variant<'tooLittle' | 'faded' | 'muted', Polyester>;
  'SUB-02': Plain<OfBlank & { readonly fibres: string }>;
  'SUB-03': Variant<'stretch' | 'lowMelt', OfBlank & { readonly share: number; readonly most: number }>;
  'SUB-04': Variant<'dark' | 'tint' | 'nearWhite', ClothColour>;
  'SUB-05': Plain<OfBlank & { readonly artwork: string; readonly colour: string; readonly share: number }>;
  'SUB-06': Variant<'uncoated' | 'unknown', OfBlank>;
  'SUB-07': Plain<OfBlank>;
  'SUB-08': Variant<'claim' | 'unknown', OfBlank>;
  'SUB-09': Variant<'over' | 'near', OfBlank & { readonly temperatureC: number; readonly mostC: number }>;
  'SUB-10':
    | Variant<'performance', OfBlank & { readonly seconds: number }>
    | Variant<'heather' | 'followed', OfBlank>;
  'SUB-11': Variant<'dyed' | 'coloured' | 'followed', OfBlank & { readonly colour: string }>;
  'SUB-12': Variant<'inside' | 'bare' | 'relieved', { readonly placement: string }>;
  'SUB-13':
    | Variant<'first', OfBlank & { readonly lot: string }>
    | Variant<'otherLot', OfBlank & { readonly lot: string; readonly provenLot: string }>;
  'SUB-14': Variant<'two' | 'unknown', OfBlank & { readonly placement: string; readonly coverage: number }>;
}
