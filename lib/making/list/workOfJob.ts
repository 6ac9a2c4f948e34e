import type { RunWork } from '@/shared/schemas/making/run';
import type { Order } from '@/shared/schemas/order';

/**
 * A job as a work of a run, made for the order it stands in: else its pieces would count as stock, and the order would wait
 * for a run that is under way.
 *
 * @param orders all by their ids; of several one that is not put away
 */
export function workOfJob(jobId: string, orders: Readonly<Record<string, Order>>): RunWork {
  const owners = Object.entries(orders).filter(([, { jobIds }]) => jobIds.includes(jobId));
  const [orderId = null] = owners.find(([, { archivedOn }]) => archivedOn === null) ?? owners[0] ?? [];
  return { jobId, orderId, stallDayId: null };
}
