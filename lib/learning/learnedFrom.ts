import type { RunFacts } from '@/lib/making/runFacts';
import type { PastDay } from '@/lib/stall/plan/demand/pastDay';
import type { PricePaid } from '@/lib/variances/pricesPaid';
import type { RunResult } from '@/lib/variances/runResult';
import type { Blank } from '@/shared/schemas/blank';
import type { Job } from '@/shared/schemas/job';
import type { RateTaken } from '@/shared/schemas/making/learnedEvents';
import type { RunStandard } from '@/shared/schemas/making/runPapers';
import type { GoodsIn } from '@/shared/schemas/making/supplyEvents';
import type { StallDay } from '@/shared/schemas/stallDay';
import type { Workshop } from '@/shared/schemas/workshop';

/** A run as learning sees it. */
export interface LearnedRun {
  readonly runId: string;
  readonly standard: RunStandard;
  readonly facts: Pick<RunFacts, 'pressings' | 'blankFaults' | 'sheetsPrinted' | 'hours' | 'actuals'>;
  readonly result: RunResult;
}

/** Documents that hold figures which runs measure. */
export interface LearningDocuments {
  readonly workshop: { readonly id: string; readonly body: Workshop } | null;
  readonly jobs: readonly { readonly id: string; readonly body: Job }[];
  readonly blanks: readonly { readonly id: string; readonly body: Blank }[];
  readonly stallDays: readonly { readonly id: string; readonly body: StallDay }[];
}

/** What lessons are folded from. */
export interface LearnedFrom {
  /** The first begun first: its standard is the one that all later ones are measured against. */
  readonly runs: readonly LearnedRun[];
  readonly prices: readonly PricePaid[];
  /** What suppliers sent, in the store's one order. */
  readonly goodsIn: readonly GoodsIn[];
  /** Closed stall days. */
  readonly past: readonly PastDay[];
  readonly documents: LearningDocuments;
  /** In force, in order. */
  readonly taken: readonly RateTaken[];
  /** YYYY-MM-DD, that of rates taken over. */
  readonly day: string;
}
