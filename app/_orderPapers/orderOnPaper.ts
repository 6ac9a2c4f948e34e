import { namedInput } from '@/app/_documents/namedInput';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { OrderBook } from '@/app/_orderBook/useOrderBook';
import { type Formatter, formatterFor } from '@/app/_words/formatter';
import type { BoardOrder } from '@/lib/orders/board/todayList';
import type { GoodsAsked } from '@/lib/quotes/following/goodsPapers';
import type { Customer } from '@/shared/schemas/customer';
import type { Order } from '@/shared/schemas/order';

/** One order as its papers are made of it. */
export interface OrderOnPaper extends Pick<BoardOrder, 'facts' | 'standing'> {
  readonly workspace: ReadyWorkspace;
  readonly orderId: string;
  readonly order: Order;
  readonly customer: Customer | null;
  readonly today: string;
  readonly formatter: Formatter;
  readonly locale: string;
  /** What papers about the goods are made of. */
  readonly goods: GoodsAsked;
}

export function orderOnPaper(
  workspace: ReadyWorkspace,
  { jobOf, today }: OrderBook,
  { facts, standing }: BoardOrder,
): OrderOnPaper {
  const { orderId, order } = facts;
  const { workshop, blanks, artworks, onHand, approvedVersions, customers } = workspace;
  const customer = order.customerId === null ? null : (customers[order.customerId] ?? null);
  const jobs = order.jobIds.flatMap((jobId) => {
    const job = jobOf(jobId)?.job;
    if (job === undefined) return [];
    const input = { asOf: today, workshop, blanks, artworks, job, onHand, approvedVersions };
    return [{ jobId, input: namedInput(input) }];
  });
  const orderNumber = standing.number;
  return {
    ...{ facts, standing, workspace, orderId, order, customer, today },
    formatter: formatterFor(workshop),
    locale: workshop.locale,
    goods: { orderId, order, orderNumber, customer, jobs, workshop },
  };
}
