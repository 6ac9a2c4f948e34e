import type { GoodsReckoned } from '@/lib/stall/plan/goodsReckoned';
import type { StallPlanned } from '@/lib/stall/plan/stallPlanned';
import type { StallDay } from '@/shared/schemas/stallDay';
import { breakEvens } from './breakEvens';
import { goOrStay } from './goOrStay';
import { type PlanSeen, planOutcomes, weightedOutcome } from './planOutcomes';
import { planSpread } from './planSpread';

/**
 * One set of numbers, seen through from the table to the last hour's pay.
 *
 * @param paid what of the day's costs is paid already and no limit holds back, currency units
 */
export function seePlan(seen: PlanSeen, limits: StallDay['limits'], paid: number): StallPlanned {
  const { goods, bring, day, batch } = seen;
  const sum = (of: (each: GoodsReckoned, brought: number) => number) =>
    goods.reduce((running, each, at) => running + of(each, bring[at] ?? 0), 0);
  const pressed = ({ finishedBefore }: GoodsReckoned, brought: number) =>
    Math.max(0, brought - finishedBefore);
  const pieces = sum((_, brought) => brought);
  const cashBefore = day.sunk + day.avoidable + batch.cash;
  const cashBeforeWithPackaging = cashBefore + sum(({ packaging }, brought) => packaging * brought);
  const is = { tablePieces: pieces, cash: cashBeforeWithPackaging - paid, benchHours: batch.benchHours };
  return {
    bring: goods.map(({ jobId, lineId, size, rangeId }, at) => ({
      jobId,
      lineId,
      size,
      rangeId,
      bring: bring[at] ?? 0,
    })),
    pieces,
    made: sum(pressed),
    outcomes: planOutcomes(seen),
    weighted: weightedOutcome(seen),
    spread: planSpread(seen),
    breakEven: breakEvens(seen),
    goOrStay: goOrStay(seen),
    cashBefore,
    cashBeforeWithPackaging,
    paid,
    makingCost: sum((each, brought) => each.cost * pressed(each, brought)),
    batch: batch.once,
    benchHours: batch.benchHours,
    dayHours: day.hours,
    over: (['tablePieces', 'cash', 'benchHours'] as const).flatMap((limit) => {
      const most = limits[limit];
      return most !== null && is[limit] > most + 1e-9 ? [{ limit, is: is[limit], most }] : [];
    }),
  };
}
