import { goodsKey } from '@/lib/stall/count/goodsKey';
import { closeInForce, type DayPaper } from '@/lib/stall/evening/pastDaysOf';
import { finishedAtHome } from '@/lib/stock/finishedAtHome';
import type { DayClose } from '@/shared/schemas/stallPapers';
import type { CarStock } from './carMoves';
import { loadedFor } from './dayMoves';

type Finished = ReturnType<typeof finishedAtHome>;

/**
 * Finished pieces of first grade that a stall day is planned with: those at home, and from the fixing of its plan to
 * its close those that lie in the car for it too, so that loading the car makes nobody press them again. Where more was
 * loaded than there was, the days that were loaded last are short of it.
 *
 * @returns goods of which nothing is known are left out, which is not 0
 */
export function finishedFor(
  stallDayId: string,
  { piles, moves }: CarStock,
  { dayClose }: { readonly dayClose: readonly DayPaper<'dayClose', DayClose>[] },
): Finished {
  const loads = openLoads(moves, dayClose);
  return finishedAtHome(piles).map((goods) => {
    const all = [...(loads.get(goodsKey(goods))?.values() ?? [])];
    const at = all.findIndex((load) => load.stallDayId === stallDayId);
    const own = all[at]?.pieces ?? 0;
    const later = all.slice(at + 1).reduce((sum, { pieces }) => sum + Math.max(0, pieces), 0);
    const home = goods.pieces < 0 ? Math.min(0, goods.pieces + later) : goods.pieces;
    return { ...goods, pieces: own + home };
  });
}

// Helpers

interface Load {
  readonly stallDayId: string;
  readonly pieces: number;
}

/** What lies in the car by goods and day, the day that was loaded first before the others; closed days are left out. */
function openLoads(
  moves: CarStock['moves'],
  dayClose: readonly DayPaper<'dayClose', DayClose>[],
): ReadonlyMap<string, ReadonlyMap<string, Load>> {
  const loads = new Map<string, Map<string, Load>>();
  const inOrder = moves.toSorted((one, other) => one.at - other.at || (one.id < other.id ? -1 : 1));
  for (const { body } of inOrder) {
    const stallDayId = loadedFor(body);
    if (stallDayId === null || body.item.kind !== 'finished' || body.place.kind !== 'van') continue;
    if (closeInForce(dayClose, stallDayId) !== null) continue;
    const key = goodsKey(body.item);
    const days = loads.get(key) ?? new Map<string, Load>();
    const pieces = (days.get(stallDayId)?.pieces ?? 0) + body.quantity;
    loads.set(key, days.set(stallDayId, { stallDayId, pieces }));
  }
  return loads;
}
