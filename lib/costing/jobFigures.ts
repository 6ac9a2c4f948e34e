import type { Grid } from '@/lib/grid/evaluateGrid';
import { type Finding, isStanding } from '@/shared/finding';
import type { JobInput } from '@/shared/schemas/request';
import { type JobAnswer, priceJob } from './priceJob';

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

/** @returns the figures of a job as its own screen has them, small enough to be had of every job there is. */
export const jobFigures = (input: JobInput, grid: Grid): JobFigures => figuresOf(priceJob(input, grid));

function figuresOf({ findings, prices }: JobAnswer): JobFigures {
  if (prices === null) return { kind: 'stopped', why: findings.find(isStanding) ?? null };
  return { kind: 'priced', margin: prices.margin, payPerHour: prices.payPerHour };
}
