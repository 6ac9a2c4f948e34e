import { useMemo } from 'react';
import type { DocumentsState } from '@/app/_store/documentsState';
import { approvedVersions } from '@/lib/artwork/approvedVersions';
import type { DocumentBodies } from '@/lib/kinds/kinds';
import { foldStock, type Pile } from '@/lib/stock/foldStock';
import { onHand } from '@/lib/stock/onHand';
import type { JobInput } from '@/shared/schemas/request';

/** What is worked out from what was noted; the same objects while nothing further is. */
export interface Noted extends Pick<JobInput, 'onHand' | 'approvedVersions'> {
  /** What lies where. */
  readonly piles: readonly Pile[];
}

export function useNoted({ entries }: Pick<DocumentsState<DocumentBodies>, 'entries'>): Noted {
  const { stockMove, stockTransfer, stockCount, approval } = entries;
  const stock = useMemo(() => {
    const piles = foldStock([...stockMove, ...stockTransfer, ...stockCount]);
    return { piles, onHand: onHand(piles) };
  }, [stockMove, stockTransfer, stockCount]);
  const approved = useMemo(() => approvedVersions(approval), [approval]);
  return useMemo(() => ({ ...stock, approvedVersions: approved }), [stock, approved]);
}
