import type { SellingRule } from '@/shared/schemas/sellingRule';
import type { ResolvedJob, ResolvedLine } from './checkedJob';

/** @returns how orders of a line are reckoned: as it says, or as its workshop sells what is made for orders or stock. */
export const lineRule = (
  { job, workshop }: Pick<ResolvedJob, 'job' | 'workshop'>,
  { line }: Pick<ResolvedLine, 'line'>,
): SellingRule => line.selling ?? (job.madeFor === 'stock' ? 'onePrice' : workshop.policy.listRule);
