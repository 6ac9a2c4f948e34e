import { stockKey } from '@/lib/stock/stockKey';
import type { SupplyOrder } from '@/shared/schemas/making/runPapers';
import type { SupplyItem } from '@/shared/schemas/making/supply';
import type { GoodsIn } from '@/shared/schemas/making/supplyEvents';

/** A thing of which several deliveries brought more than their order asks for. */
export interface CameBeyond {
  readonly item: SupplyItem;
  readonly ordered: number;
  /** Faulty ones left out: what comes for them is none too many. */
  readonly usable: number;
}

/**
 * Two who note one delivery, each on a device of its own, both count: nothing that happened is thrown away. So it is
 * told.
 *
 * @param order as it went out
 * @param deliveries in force that answer it
 * @returns nothing where a single delivery answers it: what that brings too many of is told at its row
 */
export function cameBeyond(
  order: Pick<SupplyOrder, 'rows'>,
  deliveries: readonly Pick<GoodsIn, 'rows'>[],
): readonly CameBeyond[] {
  if (deliveries.length < 2) return [];
  const sums = new Map<string, CameBeyond>();
  for (const { item, quantity } of order.rows) {
    const ordered = (sums.get(stockKey(item))?.ordered ?? 0) + quantity;
    sums.set(stockKey(item), { item, ordered, usable: 0 });
  }
  for (const { item, counted, faulty } of deliveries.flatMap(({ rows }) => rows)) {
    const known = sums.get(stockKey(item));
    if (known !== undefined) sums.set(stockKey(item), { ...known, usable: known.usable + counted - faulty });
  }
  return [...sums.values()].filter(({ ordered, usable }) => usable > ordered);
}
