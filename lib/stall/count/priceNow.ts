import type { PlannedGoods, StallPlan } from '@/shared/schemas/stallPapers';
import { isLastHour, type WallTime } from './sellingTime';

/** @returns the price of a piece at a moment, whole minor units */
export const priceNow = (plan: StallPlan, goods: PlannedGoods, wall: WallTime): number =>
  isLastHour(plan, wall) ? (goods.lastHourPrice ?? goods.price) : goods.price;
