import type { PastDay } from '@/lib/stall/plan/demand/pastDay';
import type { JobInput } from '@/shared/schemas/request';
import type { StallDay, StallGoods } from '@/shared/schemas/stallDay';
import type { Workshop } from '@/shared/schemas/workshop';

/** Everything a stall day is planned from. Plain data, so that a worker can be asked. */
export interface StallAsked {
  /** The day on which it is asked, YYYY-MM-DD. */
  readonly day: string;
  readonly stallDay: StallDay;
  readonly workshop: Workshop;
  /** Every job that a range names, with what it is costed from. */
  readonly jobs: readonly { readonly jobId: string; readonly input: JobInput }[];
  /** Finished pieces of first grade, at home and in the car for the day; goods nobody counted are left out, which is not 0. */
  readonly atHome: readonly (StallGoods & { readonly pieces: number })[];
  /** Pieces pressed for the day, wherever they lie: what they cost is of the day, noted or not. */
  readonly madeForDay: readonly (StallGoods & { readonly pieces: number })[];
  /** Days that were closed, the one that is planned left out. */
  readonly past: readonly PastDay[];
}
