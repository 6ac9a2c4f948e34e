import type { Claim } from '@/shared/schemas/habits';
import type { Job } from '@/shared/schemas/job';
import type { NoFacts, Plain, Variant } from './findingCase';

/** Power that one brings along. */
export type OwnPower = 'battery' | 'generator';

/** Facts of the findings about electricity, safety and law. */
export interface SafetyFacts {
  /** Watts of all that may run at once, of the breaker (`full`) and of four fifths of it (`mark`). */
  'ELE-01':
    | Variant<'shared', { readonly watts: number }>
    | Variant<'over', { readonly watts: number; readonly full: number }>
    | Variant<
        'near',
        {
          readonly watts: number;
          readonly mark: number;
          readonly full: number;
          readonly volts: number;
          readonly amps: number;
        }
      >;
  'ELE-02': Plain<NoFacts>;
  /** Of a stall day. Watts of all presses used there together, and of the source without a break. */
  'ELE-03':
    | Variant<'noSource' | 'askSource' | 'pressGone', NoFacts>
    | Variant<'noPower', { readonly presses: string }>
    | Variant<'askWatts', { readonly source: OwnPower; readonly watts: number }>
    | Variant<
        'tooLittle',
        { readonly source: OwnPower; readonly watts: number; readonly guaranteed: number }
      >;
  'ELE-04': Variant<
    'presses' | 'hours' | 'sheets',
    { readonly machine: string; readonly planned: number; readonly rated: number }
  >;
  'SAF-01': Variant<'foodOven' | 'closed', NoFacts>;
  'SAF-02': Plain<{ readonly placement: string; readonly minutes: number; readonly most: number }>;
  'SAF-03': Plain<NoFacts>;
  'LAW-01': Variant<Exclude<Job['sewnLabel'], 'kept' | 'unknown'>, NoFacts>;
  /** `denied` is said not to be for children, in sizes that are. */
  'LAW-02':
    | Variant<'meant', { readonly blank: string }>
    | Variant<'denied', { readonly blank: string; readonly sizes: string }>;
  /** What was said of it, as the names of the choices parted by semicolons; or sizes that tell. */
  'LAW-03':
    | Variant<'said', { readonly blank: string; readonly risks: string }>
    | Variant<'sizes' | 'denied', { readonly blank: string; readonly sizes: string }>;
  'LAW-04':
    | Variant<'near', { readonly placement: string; readonly mm: number; readonly wantedMm: number }>
    | Variant<'inside', { readonly placement: string }>;
  'LAW-05': Plain<{ readonly channel: string }>;
  /** Of a stall day; it `ends` on a day before the last one of selling. */
  'LAW-06':
    | Variant<'permit' | 'insurance' | 'both', NoFacts>
    | Variant<'permitEnds' | 'insuranceEnds', { readonly until: string; readonly lastDay: string }>;
  'LAW-07': Plain<{ readonly claim: Claim }>;
  /** Spares with which every size comes out whole with that chance. */
  'LAW-08': Plain<{ readonly blank: string; readonly spare: number; readonly confidence: number }>;
  /** Names in children's sizes and addresses; either may be 0, not both. */
  'LAW-09': Variant<'needed' | 'over', { readonly childRows: number; readonly addresses: number }>;
}
