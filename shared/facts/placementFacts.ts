import type { Plain, Variant } from './findingCase';

/** One print size over a run of sizes; `size` is the one whose width it covers so much of. */
interface OneForAll {
  readonly placement: string;
  readonly share: number;
  readonly size: string;
}

interface OnPlaten {
  readonly placement: string;
  readonly press: string;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly platenWidthMm: number;
  readonly platenHeightMm: number;
}

interface Losses {
  readonly line: string;
  readonly presses: number;
  /** Share of the pieces lost over all presses. */
  readonly lost: number;
  /** Shares lost at each press, parted by semicolons. */
  readonly each: string;
  readonly first: string;
}

/** Pieces planned for one press. */
interface Planned {
  readonly placement: string;
  readonly press: string;
  readonly planned: number;
}

/** Facts of the findings about placements and presses. Shares are 0 to 1. */
export interface PlacementFacts {
  'PLC-01': Variant<
    'over' | 'near',
    {
      readonly placement: string;
      readonly sizes: string;
      readonly widthMm: number;
      readonly heightMm: number;
      readonly mostWidthMm: number;
      readonly mostHeightMm: number;
    }
  >;
  'PLC-02':
    | Variant<'wide', OneForAll & { readonly smallest: string }>
    | Variant<'tiny', OneForAll & { readonly largest: string }>
    | Variant<'both', { readonly placement: string; readonly smallest: string; readonly largest: string }>;
  'PLC-03': Variant<
    'high' | 'low',
    {
      readonly placement: string;
      readonly dropMm: number;
      readonly usualMm: number;
      /** The least where it sits high, the most where it sits low. */
      readonly limitMm: number;
    }
  >;
  /** The longer side, and the usual ones. */
  'PLC-04': Variant<
    'large' | 'small',
    { readonly placement: string; readonly mm: number; readonly leastMm: number; readonly mostMm: number }
  >;
  'PLC-05':
    | Variant<'over', OnPlaten>
    /** `edgeMm` is the outer part that runs cooler. */
    | Variant<'edge', OnPlaten & { readonly edgeMm: number }>;
  /** `single` is a press that wraps round one piece. */
  'PLC-06':
    | Variant<'platen', Planned & { readonly fit: number; readonly apartMm: number }>
    | Variant<'single', Planned>;
  'PLC-07': Variant<'compounded', Losses> | Variant<'order', Losses & { readonly saving: number }>;
  'PLC-08': Plain<{ readonly placement: string; readonly finished: string }>;
  'PLC-09':
    | Variant<'other', { readonly press: string; readonly blank: string; readonly better: string }>
    | Variant<'none', { readonly press: string; readonly blank: string }>;
  'PLC-10': Plain<{
    readonly press: string;
    readonly blank: string;
    readonly thicknessMm: number;
    readonly openingMm: number;
  }>;
}
