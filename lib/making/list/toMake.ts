import { benchClaim } from '@/lib/orders/bench/orderLoad';
import type { BoardOrder } from '@/lib/orders/board/todayList';
import { dayToKeep } from '@/lib/orders/dayToKeep';
import { placeOf } from '@/lib/orders/stepOrder';
import type { StallDayRow } from '@/lib/stall/days/stallCalendar';
import { firstDayOf } from '@/lib/stall/sellingDays';
import { compareText } from '@/shared/compareText';
import { compareDays } from '@/shared/days';
import type { Run, RunWork } from '@/shared/schemas/making/run';

/** Something that waits to be made and stands in no run. */
export interface ToMake {
  readonly kind: 'order' | 'stallDay';
  /** Of the order or the stall day. */
  readonly id: string;
  readonly name: string;
  readonly works: readonly RunWork[];
  /** YYYY-MM-DD; null where no day is agreed. */
  readonly wantedOn: string | null;
}

/**
 * What waits to be made: accepted orders of which nothing is pressed, then stall days to come, in each the nearest day
 * first.
 *
 * @param coming stall days that may still be sold at
 * @param runs those that are not put away; what stands in one is made by it
 * @param isHere whether the job of that id is on this device
 */
export function toMake(
  board: readonly BoardOrder[],
  coming: readonly StallDayRow[],
  runs: readonly Run[],
  isHere: (jobId: string) => boolean,
): readonly ToMake[] {
  const taken = new Set(runs.flatMap(({ works }) => works.map(({ jobId }) => jobId)));
  const left = (jobIds: readonly string[]) =>
    [...new Set(jobIds)].filter((jobId) => !taken.has(jobId) && isHere(jobId));
  const orders = board.filter(isUnpressed).map(
    ({ facts: { orderId, order }, standing }): ToMake => ({
      ...{ kind: 'order', id: orderId, name: order.name },
      works: left(order.jobIds).map((jobId) => ({ jobId, orderId, stallDayId: null })),
      wantedOn: dayToKeep(order, standing.agreed),
    }),
  );
  const days = coming.map(
    ({ id, stallDay }): ToMake => ({
      ...{ kind: 'stallDay', id, name: stallDay.name },
      works: left(stallDay.ranges.flatMap(({ designs }) => designs.map(({ jobId }) => jobId))).map(
        (jobId) => ({
          ...{ jobId, orderId: null, stallDayId: id },
        }),
      ),
      wantedOn: firstDayOf(stallDay),
    }),
  );
  return [...orders.toSorted(byDay), ...days.toSorted(byDay)].filter(({ works }) => works.length > 0);
}

// Helpers

/** @returns whether an order is accepted and nothing of it pressed. */
export const isUnpressed = (order: BoardOrder): boolean =>
  benchClaim(order) === 'sure' &&
  !order.standing.steps.some(
    ({ step, holdsSince }) => holdsSince !== null && placeOf(step.what) >= placeOf('pressed'),
  );

const byDay = (one: ToMake, other: ToMake): number =>
  compareDays(one.wantedOn, other.wantedOn) ||
  compareText(one.name, other.name) ||
  compareText(one.id, other.id);
