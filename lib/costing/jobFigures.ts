import { wholeJob } from '@/lib/grid/costSheet';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { priceLines } from '@/lib/price/priceTable';
import { type Finding, isStanding } from '@/shared/finding';
import type { JobInput } from '@/shared/schemas/request';
import { offeredJob } from './offeredJob';
import { judgeJob } from './priceJob';

/** What a list of jobs says of one: what it earns, or the stop that takes its price away. */
export type JobFigures =
  | {
      readonly kind: 'priced';
      readonly margin: number;
      /** Currency units, unrounded. */
      readonly payPerHour: number;
    }
  /** The first stop; null where its sums give no number. */
  | { readonly kind: 'stopped'; readonly why: Finding | null };

/**
 * The figures of a job as its own screen has them, small enough to be had of every job there is. Lists are made only
 * where no price is decided.
 */
export function jobFigures(input: JobInput, grid: Grid): JobFigures {
  const { answer, priced } = judgeJob(input, grid);
  if (priced === null) return { kind: 'stopped', why: answer.findings.find(isStanding) ?? null };
  const { costed } = priced;
  const isDecided = input.job.lines.every(({ askedPrice }) => askedPrice !== null);
  const { sheet } = isDecided ? costed : offeredJob(costed, priceLines(costed, grid).suggested, grid);
  return { kind: 'priced', margin: wholeJob(sheet, 'margin'), payPerHour: wholeJob(sheet, 'payPerHour') };
}
