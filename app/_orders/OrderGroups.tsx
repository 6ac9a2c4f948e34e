'use client';

import { groupLine, turnHeadings } from '@/app/_words/orders/board/boardWords';
import type { BoardOrder } from '@/lib/orders/board/todayList';
import type { Workshop } from '@/shared/schemas/workshop';
import styles from './Board.module.css';
import { OrderRow } from './OrderRow';
import type { Repeatable } from './RepeatPanel';
import type { OrderActions } from './useOrderActions';

type OrderGroupsProps = Readonly<{
  /** All that were found, those of one turn together. */
  found: readonly BoardOrder[];
  /** How many of them are shown. */
  rows: number;
  /** Without headings where all are over. */
  isClosed: boolean;
  piecesOf: (order: BoardOrder) => string;
  today: string;
  workshop: Workshop;
  actions: OrderActions;
  repeat: () => Repeatable;
}>;

/** The orders by who must act: the maker, the customers, nobody. */
export function OrderGroups({ found, rows, isClosed, ...common }: OrderGroupsProps) {
  const shown = found.slice(0, rows);
  if (isClosed) {
    return (
      <section aria-label="Closed and put away">
        <Rows orders={shown} {...common} />
      </section>
    );
  }
  return turns.map((turn) => {
    const own = shown.filter((order) => order.turn.turn === turn);
    if (own.length === 0) return null;
    const all = found.filter((order) => order.turn.turn === turn).length;
    return (
      <section key={turn} className={styles.group} aria-labelledby={`orders-${turn}`}>
        <h2 className={styles.groupHead} id={`orders-${turn}`}>
          {turnHeadings[turn]} <span className={styles.groupLine}>{groupLine(turn, all)}</span>
        </h2>
        <Rows orders={own} {...common} />
      </section>
    );
  });
}

// Helpers

const turns = ['you', 'customer', 'nobody'] as const;

type RowsProps = Omit<OrderGroupsProps, 'found' | 'rows' | 'isClosed'> &
  Readonly<{ orders: readonly BoardOrder[] }>;

const Rows = ({ orders, piecesOf, today, workshop, actions, repeat }: RowsProps) => (
  <ul className={styles.rows}>
    {orders.map((order) => (
      <OrderRow
        key={order.facts.orderId}
        pieces={piecesOf(order)}
        {...{ order, today, workshop, actions, repeat }}
      />
    ))}
  </ul>
);
