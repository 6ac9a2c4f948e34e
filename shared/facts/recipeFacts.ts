import type { Recipe } from '@/shared/schemas/job';
import type { Plain, Variant } from './findingCase';

interface Heat {
  readonly placement: string;
  readonly substrate: string;
  readonly temperatureC: number;
  /** The usual range. */
  readonly lowC: number;
  readonly highC: number;
}

interface Pressed {
  readonly placement: string;
  readonly usual: Recipe['pressure'];
}

/** Facts of the findings about the recipe. */
export interface RecipeFacts {
  /** Above `limitC` nothing is costed. */
  'REC-01': Variant<'melts', Heat & { readonly limitC: number }> | Variant<'cold' | 'hot', Heat>;
  'REC-02': Variant<
    'short' | 'long',
    {
      readonly placement: string;
      readonly substrate: string;
      readonly seconds: number;
      readonly shortest: number;
      readonly longest: number;
    }
  >;
  /** By the gauge where that is off, by the word of the recipe where it is not. */
  'REC-03': Variant<
    'hard' | 'soft',
    Pressed & ({ readonly kpa: number } | { readonly pressure: Recipe['pressure'] })
  >;
  'REC-04': Variant<
    'C' | 'F',
    {
      readonly placement: string;
      readonly typed: number;
      readonly unit: 'C' | 'F';
      readonly meant: 'C' | 'F';
    }
  >;
  'REC-05': Plain<{ readonly placement: string; readonly blank: string; readonly seconds: number }>;
  'REC-06': Variant<Exclude<Recipe['protectivePaper'], 'freshPlain'>, { readonly placement: string }>;
  'REC-07': Plain<{ readonly line: string }>;
  'REC-08': Plain<{ readonly line: string }>;
  'REC-09':
    | Variant<'cloth', { readonly line: string; readonly seconds: number; readonly wanted: number }>
    | Variant<'hard', { readonly line: string }>;
  /** From the last sheet printed to the first press; from there to when the last is pressed. */
  'REC-10':
    | Variant<'wet', { readonly minutes: number; readonly least: number }>
    /** Nobody has said whether they lie sealed where it is `untold`. */
    | Variant<'unsealed' | 'untold', { readonly hours: number; readonly most: number }>;
  /** Relative humidity, 0 to 1; `said` where it was judged without a meter. */
  'REC-11':
    | Variant<'dry' | 'damp', { readonly humidity: number; readonly least: number; readonly most: number }>
    | Variant<'said', { readonly least: number; readonly most: number }>;
  'REC-12': /** The share that is set to be lost. */
    | Variant<'never', { readonly blank: string; readonly scrap: number }>
    | Variant<'seldom', { readonly blank: string; readonly proven: number; readonly few: number }>;
}
