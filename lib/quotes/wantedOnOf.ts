import type { Job } from '@/shared/schemas/job';
import type { Order } from '@/shared/schemas/order';

/** @returns the day an order is wanted: its own, else the first of its jobs; null where no day is agreed. */
export function wantedOnOf(
  order: Pick<Order, 'wantedOn'>,
  jobs: readonly Pick<Job, 'wantedOn'>[],
): string | null {
  const [first = null] = jobs.flatMap(({ wantedOn }) => wantedOn ?? []).toSorted();
  return order.wantedOn ?? first;
}
