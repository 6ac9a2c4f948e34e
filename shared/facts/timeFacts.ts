import type { Variant } from './findingCase';

interface Needed {
  readonly neededHours: number;
  readonly wantedOn: string;
}

interface Work extends Needed {
  readonly freeHours: number;
}

interface Order {
  /** The last day on which blanks can be ordered. */
  readonly latest: string;
  /** Working days from order to arrival. */
  readonly lead: number;
  readonly wantedOn: string;
  /** Blanks of which nobody has counted what lies at home; empty where all are counted. */
  readonly uncounted: string;
}

/** Facts of the findings about time. Days as YYYY-MM-DD. */
export interface TimeFacts {
  'TIM-01':
    | Variant<'unknown', Needed>
    | Variant<'never', Work>
    /** `honest` is the earliest day that can be kept, or the first with room; empty where none is offered. */
    | Variant<'over' | 'busy' | 'blocks', Work & { readonly honest: string }>
    /** A session of a single piece beside the longest free block. */
    | Variant<
        'noBlock',
        { readonly wantedOn: string; readonly sessionHours: number; readonly longestHours: number }
      >
    /** How often the press is heated up, how often more than priced, and what that takes. */
    | Variant<
        'heatings',
        { readonly sessions: number; readonly more: number; readonly minutes: number; readonly inkMl: number }
      >
    /** A job of a run that is done so many days too late. */
    | Variant<
        'runLate',
        { readonly job: string; readonly days: number; readonly wantedOn: string; readonly doneOn: string }
      >;
  'TIM-02':
    | Variant<'unknown', { readonly blank: string }>
    /** `later` likewise; empty where none is offered. */
    | Variant<'passed' | 'soon', Order & { readonly later: string }>
    | Variant<'later', Order>;
  /** The last day for them, and the first that could be kept if they came now; empty where there is none. */
  'TIM-03': Variant<
    'approval' | 'deposit' | 'both',
    { readonly approveBy: string; readonly wantedOn: string; readonly ready: string }
  >;
  /** Waits that a run does not plan, and what is usual. */
  'TIM-05':
    | Variant<'dry' | 'cool', { readonly minutes: number }>
    /** Hours from the press to the customer. */
    | Variant<'wash', { readonly hours: number; readonly least: number }>;
  /** Hours in one piece. */
  'TIM-04': Variant<'long' | 'tooLong', { readonly hours: number; readonly most: number }>;
}
