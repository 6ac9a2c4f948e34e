import type { BoardOrder } from '@/lib/orders/board/todayList';
import { dayToKeep } from '@/lib/orders/dayToKeep';
import { firstDayOf } from '@/lib/stall/sellingDays';
import type { Job } from '@/shared/schemas/job';
import type { RunWork } from '@/shared/schemas/making/run';
import type { StallDay } from '@/shared/schemas/stallDay';

interface WantedBy {
  readonly orderOf: (orderId: string) => BoardOrder | null;
  readonly stallDays: Readonly<Record<string, StallDay>>;
  readonly jobOf: (jobId: string) => Pick<Job, 'wantedOn'> | undefined;
}

/** @returns the day to keep for a work of a run: of its order, its stall day, else its job; null where nobody waits */
export function wantedDayOf(
  { jobId, orderId, stallDayId }: RunWork,
  { orderOf, stallDays, jobOf }: WantedBy,
): string | null {
  const order = orderId === null ? null : orderOf(orderId);
  if (order !== null) return dayToKeep(order.facts.order, order.standing.agreed);
  const day = stallDayId === null ? undefined : stallDays[stallDayId];
  return (day === undefined ? jobOf(jobId)?.wantedOn : firstDayOf(day)) ?? null;
}
