import { goodsKey } from '@/lib/stall/goodsKey';
import type { StallGoods } from '@/shared/schemas/stallDay';
import type { CarStock } from './carMoves';
import { carNet, loadsOf, movesByGoods } from './dayMoves';

/**
 * Seconds that a stall day can take along: those that lie at home, and from the fixing of its plan on those that lie in
 * the car for it.
 *
 * @returns goods of which there is 1 or more
 */
export function secondsFor(
  stallDayId: string,
  { piles, moves }: CarStock,
): readonly (StallGoods & { readonly pieces: number })[] {
  const loads = movesByGoods(loadsOf(moves, stallDayId));
  return piles.flatMap(({ item, place, grade, quantity }) => {
    if (item.kind !== 'finished' || place.kind !== 'home' || grade !== 'second') return [];
    const { jobId, lineId, size } = item;
    const pieces = Math.floor(quantity + (carNet(loads(item), item, 'second') ?? 0));
    return pieces < 1 ? [] : [{ jobId, lineId, size, pieces }];
  });
}

/** @returns reads how many seconds of some goods there are */
export function secondsOf(
  seconds: readonly (StallGoods & { readonly pieces: number })[],
): (goods: StallGoods) => number {
  const pieces = new Map(seconds.map((one) => [goodsKey(one), one.pieces]));
  return (goods) => pieces.get(goodsKey(goods)) ?? 0;
}
