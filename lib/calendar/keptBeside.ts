import type { Calendar } from './calendar';
import { behindLoad, loadOf, type OrderLoad } from './load';
import type { Planned } from './planWork';

interface Beside {
  /** Whether it is ready on the day it is wanted, and makes no other late; also where no day is agreed. */
  readonly isKept: boolean;
  /** Its plan in its place among the others where it is kept, else behind all of them: the earliest honest day. */
  readonly planned: Planned;
}

/**
 * Whether the day an order is wanted can be promised beside all that was accepted: it takes its place by that day, as it
 * would once it is accepted.
 *
 * @param from the first day at the bench
 */
export function keptBeside(
  calendar: Calendar,
  accepted: readonly OrderLoad[],
  order: OrderLoad,
  from: string,
): Beside {
  const before = loadOf(calendar, accepted, from);
  const behind = behindLoad(calendar, before, order);
  if (order.wantedOn === null) return { isKept: true, planned: behind };
  const after = loadOf(calendar, [...accepted, order], from).orders;
  const own = after.find(({ id }) => id === order.id);
  const isKept =
    own?.planned.kind === 'planned' &&
    own.daysLate === 0 &&
    before.orders.every((one) => {
      const then = after.find(({ id }) => id === one.id);
      return then?.planned.kind === one.planned.kind && then.daysLate <= one.daysLate;
    });
  return { isKept, planned: isKept && own !== undefined ? own.planned : behind };
}
