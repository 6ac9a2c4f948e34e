'use client';

import { useEffect, useMemo, useRef, useState } from 'react';
import { today } from '@/app/_clock/useToday';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import type { BoardOrder } from '@/lib/orders/board/todayList';

/** What can be done with an order of the board; the same object for as long as the board stands. */
export interface OrderActions {
  readonly putAway: (order: BoardOrder, away: boolean) => void;
  /** Notes that something missing is here. */
  readonly itemCame: (order: BoardOrder, itemId: string) => void;
}

interface BoardActions {
  readonly actions: OrderActions;
  /** What left the board last, while undo would bring it back. */
  readonly goneName: string | null;
}

/**
 * @param onBack when a row goes back on the board, with the button that has the focus
 * @returns what the board does, each as one step to undo
 */
export function useOrderActions(workspace: ReadyWorkspace, onBack: () => void): BoardActions {
  const [gone, setGone] = useState<{ readonly name: string; readonly label: string } | null>(null);
  const latest = useRef({ ...workspace, onBack });
  useEffect(() => {
    latest.current = { ...workspace, onBack };
  });
  const actions = useMemo<OrderActions>(
    () => ({
      putAway: ({ facts: { orderId, order } }, away) => {
        const label = away ? `Put ${order.name} away` : `Put ${order.name} back on the board`;
        // Away and back are two steps, however quickly one follows the other.
        latest.current.changeOrder(orderId, label, (now) => ({ ...now, archivedOn: away ? today() : null }));
        if (!away) latest.current.onBack();
        setGone(away ? { name: order.name, label } : null);
      },
      itemCame: ({ facts: { orderId, order } }, itemId) => {
        const item = order.openItems.find(({ id }) => id === itemId);
        if (item === undefined) return;
        latest.current.changeOrder(orderId, `${item.what} is here`, (now) => ({
          ...now,
          openItems: now.openItems.map((one) => (one.id === itemId ? { ...one, doneOn: today() } : one)),
        }));
      },
    }),
    [],
  );
  return { actions, goneName: gone !== null && workspace.undoLabel === gone.label ? gone.name : null };
}
