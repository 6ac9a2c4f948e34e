import { goodsKey } from '@/lib/stall/count/goodsKey';
import { closeInForce, type DayPaper } from '@/lib/stall/evening/pastDaysOf';
import { finishedAtHome } from '@/lib/stock/finishedAtHome';
import type { Pile } from '@/lib/stock/foldStock';
import type { DayClose } from '@/shared/schemas/stallPapers';
import { type FixedPlan, plansOf } from './plansOf';

interface PapersOfDays {
  readonly stallPlan: readonly FixedPlan[];
  readonly dayClose: readonly DayPaper<'dayClose', DayClose>[];
}

type Finished = ReturnType<typeof finishedAtHome>;

/**
 * Finished pieces of first grade that a stall day is planned with: those at home, and from the fixing of its plan to
 * its close those that lie in the car for it too, so that loading the car makes nobody press them again.
 *
 * @returns goods of which nothing is known are left out, which is not 0
 */
export function finishedFor(
  stallDayId: string,
  piles: readonly Pile[],
  { stallPlan, dayClose }: PapersOfDays,
): Finished {
  const home = finishedAtHome(piles);
  const isLoaded =
    plansOf(stallPlan, stallDayId).counts !== null && closeInForce(dayClose, stallDayId) === null;
  if (!isLoaded) return home;
  const all = new Map(home.map((one) => [goodsKey(one), one]));
  for (const { item, place, grade, quantity } of piles) {
    if (item.kind !== 'finished' || place.kind !== 'van' || grade !== 'first') continue;
    const { jobId, lineId, size } = item;
    const key = goodsKey(item);
    all.set(key, { jobId, lineId, size, pieces: (all.get(key)?.pieces ?? 0) + quantity });
  }
  return [...all.values()];
}
