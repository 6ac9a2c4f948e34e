import type { ResolvedJob, ResolvedLine } from '@/lib/job/checkedJob';
import { onHandOf } from '@/lib/job/onHandOf';

/** Good pieces alone decide here; spares are the business of the buying list. A customer's own blanks are not ordered. */
export const isToOrder =
  (job: Pick<ResolvedJob, 'onHand'>) =>
  ({ line, sizes, blank }: ResolvedLine): boolean =>
    blank.suppliedBy === 'maker' &&
    sizes.some(({ size, quantity }) => quantity > (onHandOf(job, line.blankId, size) ?? 0));

/** @returns working days until the slowest blank that is to be ordered arrives; null where none is, or none is known. */
export function leadOf(job: Pick<ResolvedJob, 'onHand' | 'lines'>): number | null {
  const leads = job.lines.filter(isToOrder(job)).flatMap(({ blank }) => blank.leadWorkingDays ?? []);
  return leads.length === 0 ? null : Math.max(...leads);
}
