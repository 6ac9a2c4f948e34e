import type { Grid } from '@/lib/grid/evaluateGrid';
import type { BuyingAsked } from './buyingAsked';
import type { BuyingPlan } from './buyingPlan';

/**
 * What is to be bought for some jobs: needs, stock first, the cheapest suppliers, by when, what is left.
 *
 * @param grid the thread's formula grid
 */
export function planBuying(asked: BuyingAsked, _grid: Grid): BuyingPlan {
  return {
    currency: asked.currency,
    works: asked.works.map(({ jobId, name }) => ({ jobId, name, isCosted: false })),
    covers: [],
    atUpperScrap: null,
    rows: [],
    asked: [],
    ink: [],
    suppliers: [],
    cash: { goodsMinor: 0, freightMinor: 0, totalMinor: 0, unpriced: 0, dearerAtMostMinor: 0 },
    left: { worthMinor: 0 },
    apart: null,
    troubles: [],
  };
}
