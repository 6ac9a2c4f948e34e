'use client';

import { startTransition, useDeferredValue, useMemo, useState } from 'react';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { formatterFor } from '@/app/_words/formatter';
import { shownOrders } from '@/lib/orders/board/orderBoard';
import type { BoardOrder } from '@/lib/orders/board/todayList';
import type { OrdersWanted } from './BoardFinder';
import { orderSearch } from './boardEntries';

/** As many rows come at once, the next when they are asked for: hundreds would hold the page up. */
const ROWS = 40;

interface FoundOrders {
  /** As it is typed; what is found follows it. */
  readonly wanted: OrdersWanted;
  readonly look: (wanted: OrdersWanted) => void;
  readonly found: readonly BoardOrder[];
  /** How many more the words find among those that are not looked at. */
  readonly elsewhere: number;
  /** What was found is of those that are over. */
  readonly isClosed: boolean;
  /** Rows are there, or there are none: what stands below them stays where it is from now on. */
  readonly isDrawn: boolean;
  readonly rows: number;
  readonly step: number;
  readonly showMore: () => void;
}

/** @returns the orders one looks for, some at a time. */
export function useFoundOrders(
  board: readonly BoardOrder[],
  { customers, workshop }: Pick<ReadyWorkspace, 'customers' | 'workshop'>,
): FoundOrders {
  const [wanted, setWanted] = useState<OrdersWanted>({ text: '', turn: 'all', shown: 'open' });
  const [rows, setRows] = useState(ROWS);
  // The letters typed come first, the rows after them.
  const looked = useDeferredValue(wanted);
  // biome-ignore lint/correctness/useExhaustiveDependencies: what is found by belongs to the orders as they are
  const searched = useMemo(
    () => orderSearch({ customers }, formatterFor(workshop)),
    [board, customers, workshop],
  );
  // All else of the page stands before the rows, which are drawn between the keys.
  const isDrawn = useDeferredValue(true, false);
  const found = useMemo(
    () => (isDrawn ? shownOrders(board, looked, searched) : []),
    [isDrawn, board, looked, searched],
  );
  const elsewhere = useMemo(() => {
    if (looked.text.trim() === '') return 0;
    const shown = looked.shown === 'open' ? 'closed' : 'open';
    return shownOrders(board, { text: looked.text, turn: 'all', shown }, searched).length;
  }, [board, looked, searched]);
  return {
    ...{ wanted, found, elsewhere, isDrawn, rows },
    isClosed: looked.shown === 'closed',
    step: ROWS,
    look: (to) => {
      setWanted(to);
      setRows(ROWS);
    },
    showMore: () => startTransition(() => setRows(rows + ROWS)),
  };
}
