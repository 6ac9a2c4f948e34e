import { stockKey } from '@/lib/stock/stockKey';
import type { SupplyOrder } from '@/shared/schemas/making/runPapers';
import type { SupplyItem } from '@/shared/schemas/making/supply';
import type { GoodsIn } from '@/shared/schemas/making/supplyEvents';

/**
 * @param order as it went out
 * @param deliveries in force that answer it
 * @returns what of it is still to come, each thing once, what came whole left out
 */
export function stillToCome(
  order: Pick<SupplyOrder, 'rows'>,
  deliveries: readonly Pick<GoodsIn, 'rows'>[],
): readonly { readonly item: SupplyItem; readonly quantity: number }[] {
  const open = new Map<string, { readonly item: SupplyItem; readonly quantity: number }>();
  const add = (item: SupplyItem, quantity: number) => {
    const known = open.get(stockKey(item));
    open.set(stockKey(item), { item, quantity: (known?.quantity ?? 0) + quantity });
  };
  for (const { item, quantity } of order.rows) add(item, quantity);
  for (const { item, counted } of deliveries.flatMap(({ rows }) => rows))
    if (open.has(stockKey(item))) add(item, -counted);
  return [...open.values()].filter(({ quantity }) => quantity > 0);
}
