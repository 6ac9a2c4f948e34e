import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { OrderBook } from '@/app/_orderBook/useOrderBook';
import { contactOf } from '@/app/_words/orders/contactOf';
import type { BoardOrder, todayList } from '@/lib/orders/board/todayList';
import { quoteLacks } from '@/lib/orders/quoteLacks';
import type { OpenItem, Order } from '@/shared/schemas/order';

type TodayItem = ReturnType<typeof todayList>[number];

/** A thing to do today, with the order and the missing thing it is about. */
interface TodayRow {
  readonly key: string;
  readonly item: TodayItem;
  /** Null where it is of no single order. */
  readonly order: BoardOrder | null;
  readonly openItem: OpenItem | null;
  /** Whom to write to; empty where it is of no single order. */
  readonly who: string;
  /** What has to be there before it can be quoted; null where all is. */
  readonly lacks: ReturnType<typeof quoteLacks>;
}

export function todayRows(
  items: readonly TodayItem[],
  { of, jobOf }: Pick<OrderBook, 'of' | 'jobOf'>,
  { customers }: Pick<ReadyWorkspace, 'customers'>,
): readonly TodayRow[] {
  const taken = new Set<string>();
  const besides = (order: Order) => {
    const { customer, who } = contactOf(order, customers);
    const jobs = order.jobIds.flatMap((id) => jobOf(id)?.job ?? []);
    return { who, lacks: quoteLacks(order, customer, jobs) };
  };
  return items.map((item) => {
    const order = item.orderId === null ? null : of(item.orderId);
    // Two things may be missing by the same day: each has a row of its own.
    const openItem =
      item.what !== 'openItem' || order === null
        ? null
        : (order.facts.order.openItems.find(
            ({ id, doneBy, doneOn }) =>
              doneOn === null && doneBy === item.on && !taken.has(`${item.orderId} ${id}`),
          ) ?? null);
    if (openItem !== null) taken.add(`${item.orderId} ${openItem.id}`);
    return {
      ...{ key: [item.what, item.orderId, openItem?.id].join(' '), item, order, openItem },
      ...(order === null ? { who: '', lacks: null } : besides(order.facts.order)),
    };
  });
}

/** @returns the place where a thing is done. */
export function todayAddress({ item: { what }, order, lacks }: TodayRow): string {
  if (order === null) return '/workshop#ink-run';
  const place = `/orders/${order.facts.orderId}`;
  switch (what) {
    case 'answer':
      if (lacks === null) return `${place}#order-papers`;
      return lacks === 'customer' ? `${place}#order-waits` : `${place}#order-jobs`;
    case 'balance':
    case 'deposit':
    case 'quoteEnds':
    case 'sendProof':
    case 'proofUnanswered':
      return `${place}#order-papers`;
    case 'giveBack':
      return `${place}#order-money`;
    case 'orderBlanks':
    case 'pack':
    case 'deliver':
    case 'openItem':
    case 'printerIdle':
      return `${place}#order-waits`;
    default:
      return what satisfies never;
  }
}
