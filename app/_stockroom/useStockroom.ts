'use client';

import { useMemo } from 'react';
import type { ReadyWorkspace } from '@/app/_keeping/WithWorkspace';
import { type Reserved, reserved, type StockNeed } from '@/lib/stock/reserved';
import { stockKey } from '@/lib/stock/stockKey';
import { type StockGroup, stockroom } from '@/lib/stock/stockroom';
import { type PileValue, stockValue } from '@/lib/stock/stockValue';

/** Everything that lies in stock, what it cost and what is kept for work. */
interface StockroomFacts {
  readonly groups: readonly StockGroup[];
  readonly values: readonly PileValue[];
  /** By the key of the thing; none of what no work asks for. */
  readonly reserved: ReadonlyMap<string, Reserved>;
}

/**
 * Worked out again only when something was noted or a document changed.
 *
 * @param needs of all open work
 */
export function useStockroom(workspace: ReadyWorkspace, needs: readonly StockNeed[]): StockroomFacts {
  const { piles, blanks, workshop, consumables, jobs, entries } = workspace;
  const { stockMove, stockTransfer, stockCount } = entries;
  const groups = useMemo(
    () => stockroom({ piles, blanks, workshop, consumables, jobs }),
    [piles, blanks, workshop, consumables, jobs],
  );
  const values = useMemo(
    () => stockValue([...stockMove, ...stockTransfer, ...stockCount]),
    [stockMove, stockTransfer, stockCount],
  );
  const kept = useMemo(
    () => new Map(reserved(piles, needs).map((one) => [stockKey(one.item), one])),
    [piles, needs],
  );
  return { groups, values, reserved: kept };
}
