import { goodsKey } from '@/lib/stall/goodsKey';
import type { StallGoods } from '@/shared/schemas/stallDay';
import type { StockMove } from '@/shared/schemas/stock';
import { type CarStock, carMoves } from './carMoves';
import { loadsOf } from './dayMoves';

/**
 * What moves so that the car holds what one plan of a stall day brings, and nothing else for that day: goods that an
 * earlier plan loaded and this one does not name come home.
 *
 * @param goods all of the plan, each once; none where no plan is left
 */
export function planMoves(
  stallDayId: string,
  goods: readonly (StallGoods & { readonly bring: number; readonly seconds?: number })[],
  stock: CarStock,
): readonly StockMove[] {
  const named = new Set(goods.map(goodsKey));
  const dropped = new Map<string, StallGoods & { readonly bring: number; readonly seconds: number }>();
  for (const { body } of loadsOf(stock.moves, stallDayId)) {
    if (body.item.kind !== 'finished' || named.has(goodsKey(body.item))) continue;
    const { jobId, lineId, size } = body.item;
    dropped.set(goodsKey(body.item), { jobId, lineId, size, bring: 0, seconds: 0 });
  }
  return carMoves(
    stallDayId,
    [...goods.map((one) => ({ ...one, seconds: one.seconds ?? 0 })), ...dropped.values()],
    stock,
  );
}
