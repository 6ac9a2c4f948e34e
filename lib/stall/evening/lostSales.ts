import { sellingTime, type WallClock } from '@/lib/stall/count/sellingTime';
import { openHours, openMinutes } from '@/lib/stall/days/openHours';
import { daysInOrder } from '@/lib/stall/sellingDays';
import type { StallPlan } from '@/shared/schemas/stallPapers';
import type { StockRow } from './stockRows';

/**
 * @returns minutes of selling until a moment, all days joined; null where the clock names no day of the plan
 */
export function sellingMinutesUntil(
  plan: Pick<StallPlan, 'days'>,
  at: number,
  clock: WallClock,
): number | null {
  const { day, minute, isOfPlan } = sellingTime(plan, clock(at));
  if (!isOfPlan) return null;
  let until = 0;
  for (const one of daysInOrder(plan)) {
    if (one.day < day) until += openMinutes(one);
    else if (one.day === day) until += Math.min(Math.max(0, minute - one.fromMinute), openMinutes(one));
  }
  return until;
}

/**
 * Pieces that would have sold after the last was gone, by how fast they went: the first q − 1 of q took until the
 * last, and the same pace goes on. One alone says nothing of a pace.
 *
 * @returns 0 while some are left, and where nobody can tell when the last went
 */
export function lostSales(
  plan: Pick<StallPlan, 'days'>,
  { left, sold, lastSoldAt }: Pick<StockRow, 'left' | 'sold' | 'lastSoldAt'>,
  clock: WallClock,
): number {
  if (left !== 0 || sold < 2 || lastSoldAt === null) return 0;
  const until = sellingMinutesUntil(plan, lastSoldAt, clock);
  if (until === null || until === 0) return 0;
  return ((sold - 1) / until) * (openHours(plan) * 60 - until);
}
