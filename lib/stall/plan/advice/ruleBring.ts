import type { GoodsReckoned } from '@/lib/stall/plan/goodsReckoned';
import { stockFor } from './stockFor';

/** Where a piece that stays costs nothing, as many as serve all who ask on all but one day in ten thousand. */
const MOST_RATIO = 0.9999;

/** @returns how many to bring of each goods by the critical ratio alone. */
export const ruleBring = ({ criticalRatio, demand }: GoodsReckoned): number =>
  stockFor(Math.min(criticalRatio, MOST_RATIO), demand.chanceUpTo, demand.most);
