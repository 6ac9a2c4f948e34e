import { foldedText, isFound } from '@/lib/drafts/jobSearch';
import type { BoardOrder } from '@/lib/orders/board/todayList';
import { orderNumberText } from '@/shared/orderNumberText';
import type { Customer } from '@/shared/schemas/customer';
import type { Order } from '@/shared/schemas/order';

/** An order as its customer's screen names it. */
export interface OrderOfCustomer {
  readonly id: string;
  readonly order: Order;
  /** Its number, or its name while it has none. */
  readonly called: string;
  /** YYYY-MM-DD; null where no enquiry is in force. */
  readonly enquiredOn: string | null;
}

type OrdersByCustomer = ReadonlyMap<string, readonly OrderOfCustomer[]>;

/** @returns the orders of each customer, the one asked for last first. */
export function ordersByCustomer(board: readonly BoardOrder[]): OrdersByCustomer {
  const sorted = new Map<string, OrderOfCustomer[]>();
  for (const { facts, standing } of board) {
    const { orderId: id, order } = facts;
    if (order.customerId === null) continue;
    const { number, enquiredOn } = standing;
    const called = number === null ? order.name : orderNumberText(number);
    sorted.set(order.customerId, [
      ...(sorted.get(order.customerId) ?? []),
      { id, order, called, enquiredOn },
    ]);
  }
  for (const [id, list] of sorted) sorted.set(id, list.toSorted(latestFirst));
  return sorted;
}

/** A customer as the list shows one. */
export interface CustomerRow {
  readonly id: string;
  readonly customer: Customer;
  readonly orders: readonly OrderOfCustomer[];
}

/**
 * @param text typed to find somebody; empty for all
 * @returns customers, whoever asked last first, then by name
 */
export function customersFound(
  customers: Readonly<Record<string, Customer>>,
  orders: OrdersByCustomer,
  text: string,
): readonly CustomerRow[] {
  return Object.entries(customers)
    .map(([id, customer]) => ({ id, customer, orders: orders.get(id) ?? [] }))
    .filter((row) => text.trim() === '' || isFound(searchedText(row), text))
    .sort(
      (one, other) =>
        dayOfLast(other).localeCompare(dayOfLast(one)) ||
        one.customer.name.localeCompare(other.customer.name),
    );
}

// Helpers

const latestFirst = (one: OrderOfCustomer, other: OrderOfCustomer): number =>
  (other.enquiredOn ?? '').localeCompare(one.enquiredOn ?? '') || other.called.localeCompare(one.called);

const dayOfLast = ({ orders }: CustomerRow): string => orders[0]?.enquiredOn ?? '';

const searchedText = ({ customer, orders }: CustomerRow): string =>
  foldedText(
    [
      customer.name,
      ...customer.people.flatMap(({ name, part, email, phone }) => [name, part, email, phone]),
      ...customer.addresses.map(({ text }) => text),
      customer.taxNumber,
      customer.exemption?.number ?? '',
      customer.note,
      ...orders.flatMap(({ order, called }) => [order.name, called]),
    ].join('\n'),
  );
