import type { Pace } from '@/lib/calendar/pace';
import type { CostedJob } from '@/lib/grid/costJob';
import type { PressTurn, SizeTurn } from '@/lib/making/sequence/turns';
import type { Finding } from '@/shared/finding';
import type { Run, RunWork } from '@/shared/schemas/making/run';
import type { ClockPart } from '@/shared/schemas/making/runPapers';
import type { JobInput } from '@/shared/schemas/request';
import type { Workshop } from '@/shared/schemas/workshop';

/** A job of a run with its sums. */
export interface RunJob {
  readonly work: RunWork;
  /** Its `wantedOn` is the day on which this run's piece of work is to be there. */
  readonly input: JobInput;
  readonly costed: CostedJob;
}

/** What a work of a run comes to. */
export type FoundWork =
  | ({ readonly kind: 'costed'; readonly findings: readonly Finding[] } & RunJob)
  /** The job is not on this device, or cannot be read. */
  | { readonly kind: 'missing'; readonly work: RunWork }
  /** A stop stands; null where its sums give no number. */
  | {
      readonly kind: 'stopped';
      readonly work: RunWork;
      readonly input: JobInput;
      readonly why: Finding | null;
    };

/** What a run is planned from. */
export interface RunAsked {
  readonly run: Run;
  readonly found: readonly FoundWork[];
  readonly bench: Pick<Workshop, 'blocks' | 'daysOff'>;
  /** YYYY-MM-DD; nothing at the bench is planned before it. */
  readonly today: string;
  /** Minutes after its midnight by the wall clock, 0 to 1440: nothing is planned before then; left out the whole day is free. */
  readonly nowMinute?: number | undefined;
}

/** Heatings-up beside those that the jobs are priced for, and what they take. */
export interface MoreHeatings {
  readonly heatings: number;
  readonly minutes: number;
  readonly inkMl: number;
  /** Currency units: of the ink lost to cleaning alone, and with pay, overhead, power and allowance. */
  readonly inkCost: number;
  readonly cost: number;
}

export type RunTrouble =
  | { readonly kind: 'noWorks' }
  | { readonly kind: 'jobMissing'; readonly jobId: string }
  | { readonly kind: 'jobTwice'; readonly jobId: string }
  | {
      readonly kind: 'jobStopped';
      readonly jobId: string;
      readonly name: string;
      readonly why: Finding | null;
    }
  | { readonly kind: 'noPieces'; readonly jobId: string; readonly name: string }
  /** Nobody has said when the bench is free. */
  | { readonly kind: 'noBlocks' }
  /** No block holds a session even of one piece. */
  | { readonly kind: 'noBlock'; readonly neededMinutes: number; readonly longestMinutes: number }
  /** It is planned with more heatings-up than were accepted: what those take, told before they are. */
  | {
      readonly kind: 'moreHeatings';
      readonly accepted: number;
      readonly needed: number;
      readonly more: MoreHeatings;
      /** One session with all pieces. */
      readonly neededMinutes: number;
      /** The longest session of those accepted, which a longer block would have to hold. */
      readonly acceptedMinutes: number;
      readonly longestMinutes: number;
    }
  /** A block of its own that ends when it begins: whether it holds nothing or a whole day nobody can know. */
  | { readonly kind: 'blockEmpty'; readonly day: string; readonly fromMinute: number }
  /** Two blocks of its own share minutes, which count once, and the work finds no room. */
  | ({ readonly kind: 'blocksOverlap' } & BlocksOverlap)
  /** The run's own blocks, or two years of the week's, end before the work does. */
  | { readonly kind: 'blocksEnd'; readonly isOwn: boolean };

/** Two of a run's own blocks that share minutes: the later one, and that which it begins in. */
export interface BlocksOverlap {
  readonly day: string;
  readonly other: string;
}

/** One heating-up of the press. */
interface RunSession {
  readonly day: string;
  /** Minutes after midnight by the wall clock; it may run past the next midnight. */
  readonly fromMinute: number;
  readonly minutes: number;
  /** Good pieces. */
  readonly pieces: number;
}

export interface RunPlan {
  /** Every part in the order of the wall clock, from the first sheet to the last piece brought. */
  readonly clock: readonly ClockPart[];
  readonly sessions: readonly RunSession[];
  /** As the clock has each first pressed. */
  readonly turns: readonly Omit<PressTurn, 'sameSetting'>[];
  /** Sizes in the order in which they are pressed. */
  readonly sizes: readonly SizeTurn[];
  readonly heatings: number;
  /** Those that the jobs are priced for, each by itself. */
  readonly pricedHeatings: number;
  /** Accepted ones beyond the priced; null where there are none. */
  readonly more: MoreHeatings | null;
  /** Finished and packed in the block in which it is pressed. */
  readonly isInOneBlock: boolean;
  readonly firstDay: string;
  readonly lastDay: string;
  /** Null where no piece is made. */
  readonly pace: RunPace | null;
  readonly notes: readonly RunPlanNote[];
}

type Stage = Pace['bottleneck'];

/** Something that would let more pieces be made in an hour at the press. */
export interface PaceGain {
  readonly what: 'preTaping' | 'secondPress' | 'printBefore';
  /** Share of more pieces an hour; 0 where something else is as slow. */
  readonly gain: number;
  /** What sets the pace then. */
  readonly next: Stage;
}

/** How fast the pressing goes. */
export interface RunPace extends Pace {
  /** Good pieces in an hour at the pace of the slowest. */
  readonly piecesPerHour: number;
  /** The largest first. */
  readonly gains: readonly PaceGain[];
  /** Of the whole run, what is done away from the press in it. */
  readonly wholeRun: Pace;
}

/** What of a plan is not as a reader would think. */
export type RunPlanNote =
  /** The run's own blocks begin before the day it is planned on. */
  | { readonly kind: 'past'; readonly day: string }
  /** The run's own blocks have no room for the sheets: they come out of the printer on the evening before. */
  | { readonly kind: 'printedBefore'; readonly day: string; readonly isPast: boolean }
  /** Too little time is left before the run's own blocks to print at all: the sheets are taken as printed. */
  | { readonly kind: 'sheetsTaken' }
  /** Two of its own blocks share minutes, which count once. */
  | ({ readonly kind: 'blocksOverlap' } & BlocksOverlap)
  /** The run's own blocks have no room for the way to the customer. */
  | { readonly kind: 'notDelivered'; readonly minutes: number }
  /** Heated up less often than the jobs are priced for, since they are made together. */
  | { readonly kind: 'fewerHeatings'; readonly heatings: number; readonly priced: number };

export type RunPlanned =
  | { readonly kind: 'planned'; readonly plan: RunPlan }
  | { readonly kind: 'troubled'; readonly troubles: readonly RunTrouble[] };
