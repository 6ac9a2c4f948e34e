import type { JobAnswer } from '@/lib/costing/priceJob';
import type { Finding } from '@/shared/finding';
import type { JobInput } from '@/shared/schemas/request';

/** What every section of a docket is given. */
export interface SectionProps {
  readonly jobId: string;
  /** The documents as they stand now. */
  readonly input: JobInput;
  /** The answer to show: the newest that has this section's figures; null before the first. */
  readonly answer: JobAnswer | null;
  /** The documents that answer was made of: last good figures are named after those. */
  readonly madeOf: JobInput;
  /** True while a stop withholds newer figures, so that the shown ones are the last good ones. */
  readonly stale: boolean;
  /** Findings of the newest answer of all, which has no figures while a stop stands. */
  readonly findings: readonly Finding[];
}
