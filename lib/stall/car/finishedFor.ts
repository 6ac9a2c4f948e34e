import { goodsKey } from '@/lib/stall/goodsKey';
import { finishedAtHome } from '@/lib/stock/finishedAtHome';
import type { CarHeld } from './carHeld';
import type { CarStock } from './carMoves';

type Finished = ReturnType<typeof finishedAtHome>;

/**
 * Finished pieces of first grade that a stall day is planned with: those at home, and from the fixing of its plan to
 * its close those that lie in the car for it too, so that loading the car makes nobody press them again. What closed days
 * left in the car uncounted lies there for whichever day is next. Where more was loaded than there was, the days that
 * were loaded last are short of it.
 *
 * @returns goods of which nothing is known are left out, which is not 0
 */
export function finishedFor(stallDayId: string, piles: CarStock['piles'], { open, left }: CarHeld): Finished {
  const leftOf = new Map<string, number>();
  for (const one of left) leftOf.set(goodsKey(one), (leftOf.get(goodsKey(one)) ?? 0) + one.pieces);
  return finishedAtHome(piles).map((goods) => {
    const key = goodsKey(goods);
    const all = [...(open.get(key)?.values() ?? [])];
    const at = all.findIndex((load) => load.stallDayId === stallDayId);
    const own = all[at]?.pieces ?? 0;
    const later = all.slice(at + 1).reduce((sum, { pieces }) => sum + Math.max(0, pieces), 0);
    const home = goods.pieces < 0 ? Math.min(0, goods.pieces + later) : goods.pieces;
    return { ...goods, pieces: own + home + (leftOf.get(key) ?? 0) };
  });
}
