import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { OrderBook } from '@/app/_orderBook/useOrderBook';
import type { Formatter } from '@/app/_words/formatter';
import { piecesOfJob } from '@/app/_words/jobs/jobListWords';
import { orderSearchText } from '@/lib/orders/board/orderBoard';
import type { BoardOrder } from '@/lib/orders/board/todayList';
import { dayToKeep } from '@/lib/orders/dayToKeep';

/** @returns how many pieces of what; as they said it while no job says it, empty where nobody said. */
export function piecesOfOrder(
  { facts: { order } }: Pick<BoardOrder, 'facts'>,
  { jobOf }: Pick<OrderBook, 'jobOf'>,
  { blanks }: Pick<ReadyWorkspace, 'blanks'>,
  formatter: Formatter,
): string {
  const lines = order.jobIds.flatMap((jobId) => jobOf(jobId)?.job.lines ?? []);
  if (lines.some(({ quantities }) => quantities.some(({ quantity }) => quantity > 0)))
    return piecesOfJob({ lines }, blanks, formatter);
  return order.askedPieces === null ? '' : `${formatter.count(order.askedPieces, 'piece')} asked`;
}

/** @returns what each order is found by, made when it is first searched for. */
export function orderSearch(
  { customers }: Pick<ReadyWorkspace, 'customers'>,
  formatter: Formatter,
): (order: BoardOrder) => string {
  const made = new Map<BoardOrder, string>();
  return (order) => {
    const known = made.get(order);
    if (known !== undefined) return known;
    const { customerId, wantedOn } = order.facts.order;
    const customer = customerId === null ? undefined : customers[customerId];
    const { enquiredOn, lastQuote, agreed } = order.standing;
    const dueOn = dayToKeep(order.facts.order, agreed);
    const days = [wantedOn, dueOn, enquiredOn, lastQuote?.body.issuedOn ?? null].flatMap((day) =>
      day === null ? [] : [formatter.day(day)],
    );
    const names = customer === undefined ? [] : [customer.name, ...customer.people.map(({ name }) => name)];
    const text = orderSearchText(order, names, days);
    made.set(order, text);
    return text;
  };
}
