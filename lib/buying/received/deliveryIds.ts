import type { Entry } from '@/shared/schemas/happened';
import type { GoodsIn } from '@/shared/schemas/making/supplyEvents';
import type { StockMove } from '@/shared/schemas/stock';

/**
 * @param moves in force
 * @returns the ids of a delivery and of what it laid into stock in the same step: they are taken back together
 */
export const deliveryIds = (
  delivery: Pick<Entry<'goodsIn', GoodsIn>, 'id' | 'device' | 'at'>,
  moves: readonly Entry<'stockMove', StockMove>[],
): readonly string[] => [
  delivery.id,
  ...moves.flatMap(({ id, device, at, body }) =>
    device === delivery.device && at === delivery.at && body.cause === 'bought' ? [id] : [],
  ),
];
