import { goodsKey } from '@/lib/stall/goodsKey';
import type { StallGoods } from '@/shared/schemas/stallDay';
import type { StockMove } from '@/shared/schemas/stock';
import type { LeftInCar } from './carHeld';
import type { CarStock } from './carMoves';
import { carNet, loadsOf, movesByGoods } from './dayMoves';

/**
 * What a plan brings of pieces that closed days left in the car: they go before those at home, and no further than what
 * the plan still has to load.
 *
 * @param goods each goods once
 * @param left of `carHeld`
 */
export function takenAlong(
  stallDayId: string,
  goods: readonly (StallGoods & { readonly bring: number })[],
  moves: CarStock['moves'],
  left: readonly LeftInCar[],
): readonly LeftInCar[] {
  const loads = movesByGoods(loadsOf(moves, stallDayId));
  const open = new Map(
    goods.map((one) => [goodsKey(one), one.bring - (carNet(loads(one), one) ?? 0)] as const),
  );
  return left.flatMap((one) => {
    const key = goodsKey(one);
    const pieces = Math.min(one.pieces, open.get(key) ?? 0);
    if (pieces <= 0) return [];
    open.set(key, (open.get(key) ?? 0) - pieces);
    return [{ ...one, pieces }];
  });
}

/**
 * Notes that they are the car's of their closed day no more: by way of home, from where the new plan loads all it brings.
 * A later close of that day finds what it left and is not asked to bring it home again.
 */
export const takenMoves = (taken: readonly LeftInCar[]): readonly StockMove[] =>
  taken.flatMap(({ stallDayId, jobId, lineId, size, pieces }): readonly StockMove[] => {
    const item = { kind: 'finished', jobId, lineId, size } as const;
    const reference = { kind: 'stallDay', id: stallDayId };
    const move = { item, grade: 'first', cause: 'used', reference, unitCost: null } as const;
    return [
      { ...move, place: { kind: 'van' }, quantity: -pieces },
      { ...move, place: { kind: 'home' }, quantity: pieces },
    ];
  });
