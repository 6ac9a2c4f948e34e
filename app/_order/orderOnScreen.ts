import type { JobRecord } from '@/app/_documents/documentsByKind';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { Bench } from '@/app/_orderBook/useBench';
import { type Formatter, formatterFor } from '@/app/_words/formatter';
import { contactOf } from '@/app/_words/orders/contactOf';
import { usableLocale } from '@/app/_words/usableLocale';
import type { BoardOrder } from '@/lib/orders/board/todayList';
import type { JobBlanks } from '@/shared/jobBlanks';
import type { Customer, Person } from '@/shared/schemas/customer';
import type { Order } from '@/shared/schemas/order';

/** One order as its screen has it: what is kept of it, what that comes to, and who stands behind it. */
export interface OrderOnScreen extends BoardOrder {
  readonly workspace: ReadyWorkspace;
  readonly orderId: string;
  readonly order: Order;
  readonly today: string;
  readonly customer: Customer | null;
  readonly person: Person | null;
  /** Whom to write to, as rows name them. */
  readonly who: string;
  /** Its jobs that are here. */
  readonly jobs: readonly JobRecord[];
  readonly formatter: Formatter;
  readonly locale: string;
  /** Of a job, by the sums that price it; null while they are not known. */
  readonly blanksOf: (jobId: string) => JobBlanks | null;
}

export function orderOnScreen(
  workspace: ReadyWorkspace,
  { facts, standing, turn }: BoardOrder,
  today: string,
  workOf: Bench['workOf'],
): OrderOnScreen {
  const { orderId, order } = facts;
  const jobs = order.jobIds.flatMap((id) => workspace.jobs.find((job) => job.id === id) ?? []);
  return {
    ...{ facts, standing, turn, workspace, orderId, order, today, jobs },
    ...contactOf(order, workspace.customers),
    formatter: formatterFor(workspace.workshop),
    locale: usableLocale(workspace.workshop.locale),
    blanksOf: (jobId) => workOf(jobId)?.blanks ?? null,
  };
}
