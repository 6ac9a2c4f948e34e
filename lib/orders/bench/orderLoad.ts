import type { BenchWork } from '@/lib/calendar/benchWork';
import type { DatedOrder } from '@/lib/calendar/load';
import { workLeft } from '@/lib/calendar/pace';
import type { AgreedSale } from '@/lib/orders/agreedSale';
import type { BoardOrder } from '@/lib/orders/board/todayList';
import { isOpen } from '@/lib/orders/board/turnOf';
import { dayToKeep } from '@/lib/orders/dayToKeep';
import { placeOf, type StepName } from '@/lib/orders/stepOrder';
import { addDays, addWorkingDays } from '@/shared/days';

/** What a job asks of the bench, and of the supplier of its blanks. */
interface JobWork {
  readonly work: BenchWork;
  /** Working days until its blanks arrive; null where none are ordered, or nobody knows. */
  readonly lead: number | null;
}

/** An order as the calendar sees it, with what nothing is known of. */
export interface OrderBench {
  readonly load: DatedOrder;
  /** Jobs of which the work is not known: they are left out. */
  readonly unknown: readonly string[];
  /** Jobs of which it is not known any more: they take what the accepted quote reckoned with. */
  readonly quoted: readonly string[];
}

/** Whether an order takes time of the bench: for sure, perhaps, or not any more. */
export function benchClaim({
  facts,
  standing,
}: Pick<BoardOrder, 'facts' | 'standing'>): 'sure' | 'open' | 'none' {
  if (!isOpen(facts, standing) || standing.side.side !== 'open') return 'none';
  switch (standing.state) {
    case 'enquiry':
    case 'quoted':
      return 'open';
    case 'delivered':
    case 'paid':
    case 'closed':
      return 'none';
    default:
      return 'sure';
  }
}

/**
 * What is left of an order at the bench.
 *
 * @param workOf of a job; null where it is not known
 * @param today on which blanks that are still to be ordered could be, YYYY-MM-DD
 */
export function orderBench(
  { facts: { orderId, order }, standing: { steps, agreed } }: Pick<BoardOrder, 'facts' | 'standing'>,
  workOf: (jobId: string) => JobWork | null,
  today: string,
): OrderBench {
  const held = steps.filter(({ holdsSince }) => holdsSince !== null);
  const isPast = (what: StepName) => held.some(({ step }) => placeOf(step.what) >= placeOf(what));
  const done = {
    printed: isPast('printed'),
    pressed: isPast('pressed'),
    packed: isPast('packed'),
    delivered: isPast('delivered'),
  };
  const known = order.jobIds.map((jobId) => {
    const now = workOf(jobId);
    return { jobId, isNow: now !== null, found: now ?? agreedWork(agreed, jobId) };
  });
  const leads = known.flatMap(({ found }) => found?.lead ?? []);
  const lead = leads.length === 0 || isPast('goodsIn') ? null : Math.max(...leads);
  const orderedOn = held.find(({ step }) => step.what === 'blanksOrdered')?.day ?? null;
  // Today, or Monday on a weekend.
  const ordered = orderedOn ?? addWorkingDays(addDays(today, -1), 1);
  return {
    load: {
      id: orderId,
      wantedOn: dayToKeep(order, agreed),
      works: known.flatMap(({ found }) => (found === null ? [] : [workLeft(found.work, done)])),
      blanks: lead === null ? null : { ordered, lead },
      lead: orderedOn === null ? lead : null,
    },
    unknown: known.flatMap(({ jobId, found }) => (found === null ? [jobId] : [])),
    quoted: known.flatMap(({ jobId, isNow, found }) => (isNow || found === null ? [] : [jobId])),
  };
}

// Helpers

/** @returns what a job was to take when the customer said yes; null where the quote knows nothing of it. */
function agreedWork(agreed: AgreedSale | null, jobId: string): JobWork | null {
  const ofJob = agreed?.quote.body.owner.work.filter((one) => one.jobId === jobId) ?? [];
  return (
    ofJob.find(({ alternativeId }) => alternativeId === agreed?.alternativeId) ??
    ofJob.find(({ alternativeId }) => alternativeId === null) ??
    null
  );
}
