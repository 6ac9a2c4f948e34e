import type { Job } from '@/shared/schemas/job';
import type { NoFacts, Plain, Variant } from './findingCase';

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
  'SAF-01': Variant<'foodOven' | 'closed', NoFacts>;
  'LAW-01': Variant<Exclude<Job['sewnLabel'], 'kept' | 'unknown'>, NoFacts>;
  'LAW-02': Plain<{ readonly blank: string }>;
  'LAW-05': Plain<{ readonly channel: string }>;
}
