import { isReady } from '@/lib/stock/isReady';
import { stockKey } from '@/lib/stock/stockKey';
import type { SupplyItem } from '@/shared/schemas/making/supply';
import type { BuyingAsked } from './buyingAsked';
import type { StockFor } from './buyingPlan';

/**
 * What lies at home in first grade and is promised to nobody. More promised than there is leaves nothing, and so does
 * less than nothing.
 */
export function stockFor(
  item: SupplyItem,
  { piles, reserved }: Pick<BuyingAsked, 'piles' | 'reserved'>,
): StockFor {
  const key = stockKey(item);
  const own = piles.filter(
    (pile) => pile.item.kind !== 'finished' && isReady(pile) && stockKey(pile.item) === key,
  );
  const promised = sumOf(
    reserved.filter((one) => stockKey(one.item) === key).map(({ quantity }) => quantity),
  );
  if (own.length === 0) return { kind: 'notCounted', reserved: promised };
  const onHand = sumOf(own.map(({ quantity }) => quantity));
  return { kind: 'counted', onHand, reserved: promised, free: Math.max(0, onHand - promised) };
}

/** @returns what of it may be taken; what nobody counted is not there to be taken. */
export const freeOf = (stock: StockFor): number => (stock.kind === 'counted' ? stock.free : 0);

const sumOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0);
