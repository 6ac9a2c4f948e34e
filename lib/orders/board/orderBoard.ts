import { foldedText, isFound } from '@/lib/drafts/jobSearch';
import { dayToKeep } from '@/lib/orders/dayToKeep';
import type { OrderFacts } from '@/lib/orders/orderFacts';
import { type OrderStanding, orderStanding } from '@/lib/orders/orderStanding';
import { compareText } from '@/shared/compareText';
import { compareDays } from '@/shared/days';
import { orderNumberText } from '@/shared/orderNumberText';
import type { BoardOrder } from './todayList';
import { isOpen, type Turn, turnOf } from './turnOf';

/**
 * @param before the board as it was: of an order whose facts are the same object, nothing is folded again
 * @returns every order with its standing and whose turn it is, open ones and closed
 */
export function boardOrders(
  all: Iterable<OrderFacts>,
  today: string,
  before: readonly BoardOrder[] = [],
): readonly BoardOrder[] {
  const known = new Map(before.map((order) => [order.facts, order.standing]));
  return [...all].map((facts) => {
    const standing = known.get(facts) ?? orderStanding(facts);
    return { facts, standing, turn: turnOf(facts, standing, today) };
  });
}

interface BoardAsked {
  /** Words typed to find an order; empty for all. */
  readonly text: string;
  readonly turn: Turn | 'all';
  /** Those on the board, or those that are over or put away. */
  readonly shown: 'open' | 'closed';
}

/**
 * @param searched by order, everything it is found by
 * @returns those asked for: yours, the customers’, the rest, in each the nearest day first and then the lowest
 *   number; of those that are over the latest number first
 */
export function shownOrders(
  orders: readonly BoardOrder[],
  { text, turn, shown }: BoardAsked,
  searched: (order: BoardOrder) => string,
): readonly BoardOrder[] {
  const asked = orders.filter(
    (order) =>
      isOpen(order.facts, order.standing) === (shown === 'open') &&
      (turn === 'all' || order.turn.turn === turn) &&
      (text.trim() === '' || isFound(searched(order), text)),
  );
  if (shown === 'closed') {
    return asked.toSorted((one, other) => compareNumbers(other.standing, one.standing));
  }
  return asked.toSorted(
    (one, other) =>
      turns.indexOf(one.turn.turn) - turns.indexOf(other.turn.turn) ||
      compareDays(one.turn.dueOn, other.turn.dueOn) ||
      compareNumbers(one.standing, other.standing) ||
      compareText(one.facts.orderId, other.facts.orderId),
  );
}

/**
 * @param customer names of the customer and their people
 * @param days its days as the screen writes them; they are found in ISO 8601 all the same
 * @returns everything an order is found by
 */
export function orderSearchText(
  { facts, standing }: Pick<BoardOrder, 'facts' | 'standing'>,
  customer: readonly string[],
  days: readonly string[],
): string {
  const { number, enquiredOn, lastQuote, agreed } = standing;
  const { order } = facts;
  return foldedText(
    [
      order.name,
      ...customer,
      number === null ? '' : orderNumberText(number),
      enquiredOn ?? '',
      order.wantedOn ?? '',
      dayToKeep(order, agreed) ?? '',
      lastQuote?.body.issuedOn ?? '',
      ...days,
      order.asked,
      order.note,
    ].join('\n'),
  );
}

// Helpers

const turns: readonly Turn[] = ['you', 'customer', 'nobody'];

function compareNumbers({ number: one }: OrderStanding, { number: other }: OrderStanding): number {
  if (one === null || other === null) return (one === null ? 1 : 0) - (other === null ? 1 : 0);
  return one.year - other.year || one.count - other.count || compareText(one.letter, other.letter);
}
