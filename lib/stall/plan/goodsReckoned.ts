import type { PieceCosts } from '@/lib/stall/plan/costs/makingCosts';
import { type Demand, mixedDemand, poissonDemand } from '@/lib/stall/plan/demand/demand';
import type { GoodsAsked } from '@/lib/stall/plan/demand/goodsAsked';
import type { Scenario } from '@/lib/stall/plan/demand/scenarios';
import type { DayPrice } from '@/shared/schemas/stallDay';
import type { Channel } from '@/shared/schemas/workshop';

/** Goods with what a piece of them brings and costs, and how many are asked for. Currency units, unrounded. */
export interface GoodsReckoned extends GoodsAsked, PieceCosts {
  readonly price: DayPrice['price'];
  readonly netPrice: number;
  readonly fees: number;
  /** What a piece sold leaves over its cost. */
  readonly contribution: number;
  /** Lost by a sale that is missed, and by a piece that stays; the overhead of its minutes counts as cost in both. */
  readonly underage: number;
  readonly overage: number;
  /** 0 to 1. */
  readonly criticalRatio: number;
  /** Over all weathers, and in each of them. */
  readonly demand: Demand;
  readonly demands: readonly Demand[];
}

/** @param price as the way of selling writes it */
export function reckonGoods(
  goods: GoodsAsked,
  costs: PieceCosts,
  price: number,
  { taxMode, tax }: Pick<Channel, 'taxMode' | 'tax'>,
  scenarios: readonly Pick<Scenario, 'chance' | 'factor'>[],
): GoodsReckoned {
  const netPrice = taxMode === 'inside' ? price / (1 + (tax?.value ?? 0)) : price;
  const fees = netPrice * costs.feeShare + costs.cardFixed;
  const kept = netPrice - fees - costs.packaging;
  const leftover = goods.leftoverShare * costs.costWithOverhead;
  const underage = kept - costs.costWithOverhead;
  const overage = costs.costWithOverhead - leftover;
  const demands = scenarios.map(({ factor }) => poissonDemand(goods.expected * factor));
  return {
    ...goods,
    ...costs,
    price,
    netPrice,
    fees,
    contribution: kept - costs.cost,
    underage,
    overage,
    criticalRatio: underage > 0 ? underage / (underage + overage) : 0,
    demand: mixedDemand(demands.map((demand, at) => ({ chance: scenarios[at]?.chance ?? 0, demand }))),
    demands,
  };
}
