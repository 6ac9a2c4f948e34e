import type { Where } from '@/shared/finding';
import type { Rate } from '@/shared/schemas/rate';
import type { TypicalRate } from '@/shared/tables/typicalRates';

/** One rate of the job, as the documents have it. */
export interface UsedRate {
  /** Null where it is missing. */
  readonly rate: Rate | null;
  readonly typical: TypicalRate;
  /** The field it is kept in, or would be written to. */
  readonly where: Where;
  /** Name of the machine, blank or placement it belongs to; empty for the workshop as a whole. */
  readonly of: string;
  /** Whether any sum of this job needs it. */
  readonly needed: boolean;
  /** What its absence means. */
  readonly whenMissing: 'stop' | 'caution';
}

/** Enters a rate in the ledger of those used and gives back the one to count with, typical where missing. */
export type TakeRate = (used: UsedRate) => Rate;
