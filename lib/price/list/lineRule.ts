import type { ResolvedJob, ResolvedLine } from '@/lib/job/checkedJob';
import type { SellingRule } from '@/shared/schemas/sellingRule';

/** @returns how orders of a line are reckoned: as it says, or as its workshop sells what is made for orders or stock. */
export const lineRule = ({ job, workshop }: ResolvedJob, { line }: ResolvedLine): SellingRule =>
  line.selling ?? (job.madeFor === 'stock' ? 'onePrice' : workshop.policy.listRule);
