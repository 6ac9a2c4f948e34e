import { onHandOf } from '@/lib/job/onHandOf';
import type { StockNeed } from '@/lib/stock/reserved';
import { sameItem } from '@/lib/stock/stockKey';
import type { JobInput } from '@/shared/schemas/request';

/**
 * @param kept what of the stock is kept for other work
 * @returns blanks of a size at home that a run may take, below 0 only where more went out than was in; null where nobody
 *   counted
 */
export function freeAtHome(
  documents: Pick<JobInput, 'onHand'>,
  { blankId, size }: { readonly blankId: string; readonly size: string },
  kept: readonly Pick<StockNeed, 'item' | 'quantity'>[],
): number | null {
  const home = onHandOf(documents, blankId, size);
  if (home === null) return null;
  const promised = kept.reduce(
    (sum, { item, quantity }) =>
      sameItem(item, { kind: 'blank', blankId, size, lot: null }) ? sum + quantity : sum,
    0,
  );
  return Math.max(Math.min(0, home), home - promised);
}
