import { jobFacts } from '@/lib/drafts/jobFacts';
import type { Customer } from '@/shared/schemas/customer';
import type { Job } from '@/shared/schemas/job';
import type { Order } from '@/shared/schemas/order';

/**
 * A quote says whom it is for and what it is of.
 *
 * @param customer null where none is chosen
 * @param jobs those of the order that are here
 * @returns what has to be there before it can be written; null where all is
 */
export function quoteLacks(
  { jobIds }: Pick<Order, 'jobIds'>,
  customer: Pick<Customer, 'erasedOn'> | null,
  jobs: readonly Job[],
): 'customer' | 'job' | 'pieces' | null {
  if (customer === null || customer.erasedOn !== null) return 'customer';
  if (jobIds.length === 0) return 'job';
  return jobs.every((job) => jobFacts(job).pieces === 0) ? 'pieces' : null;
}
