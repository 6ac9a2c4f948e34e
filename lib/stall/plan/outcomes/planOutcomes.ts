import type { GoodsReckoned } from '@/lib/stall/plan/advice/goodsReckoned';
import type { DayCosts } from '@/lib/stall/plan/costs/dayCosts';
import type { BatchCosts } from '@/lib/stall/plan/costs/makingCosts';
import type { Scenario } from '@/lib/stall/plan/demand/scenarios';
import type { StallOutcome } from '@/lib/stall/plan/stallPlanned';

/** What a plan is seen through with. */
export interface PlanSeen {
  readonly goods: readonly GoodsReckoned[];
  /** By the order of the goods. */
  readonly bring: readonly number[];
  readonly scenarios: readonly Scenario[];
  readonly day: DayCosts;
  readonly batch: BatchCosts;
  /** Price with tax ÷ price without. */
  readonly withTax: number;
}

/** What a plan costs whatever is sold: the day, own hours, their overhead, and the batch. */
export const fixedOf = ({ day, batch }: Pick<PlanSeen, 'day' | 'batch'>): number =>
  day.sunk + day.avoidable + day.hours * (day.wage + day.overheadPerHour) + batch.once;

/** What comes of a plan in each weather: exact means, no draws. */
export const planOutcomes = (seen: PlanSeen): readonly StallOutcome[] =>
  seen.scenarios.map(({ weatherIds, name, chance, factor }, at) => ({
    weather: name,
    weatherIds,
    chance,
    factor,
    ...outcomeOf(
      seen,
      seen.goods.map(({ demands }, index) => demands[at]?.sold(seen.bring[index] ?? 0) ?? 0),
    ),
  }));

type Figures = Omit<StallOutcome, 'weather' | 'weatherIds' | 'chance' | 'factor'>;

/** @param sold mean pieces sold, by the order of the goods */
export function outcomeOf(seen: PlanSeen, sold: readonly number[]): Figures {
  const { goods, bring, day, batch } = seen;
  const sum = (of: (each: GoodsReckoned, sold: number, left: number) => number) =>
    goods.reduce((running, each, at) => {
      const pieces = sold[at] ?? 0;
      return running + of(each, pieces, (bring[at] ?? 0) - pieces);
    }, 0);
  const netRevenue = sum(({ netPrice }, pieces) => netPrice * pieces);
  const contribution = sum((each, pieces) => each.contribution * pieces);
  const fixed = fixedOf(seen);
  const profit = contribution - fixed - sum((each, _, left) => (1 - each.leftoverShare) * each.cost * left);
  const hours = day.hours + batch.benchHours;
  return {
    sold: sum((_, pieces) => pieces),
    takings: netRevenue * seen.withTax,
    netRevenue,
    fees: sum(({ fees }, pieces) => fees * pieces),
    contribution,
    fixed,
    leftoverCost: sum(({ cost }, _, left) => cost * left),
    leftovers: sum((_, __, left) => left),
    profit,
    payPerHour: hours > 0 ? (profit + day.hours * day.wage + batch.benchPay) / hours : null,
  };
}

/** The mean over all weathers; what a working hour pays is that of the mean profit. */
export function weightedOutcome(seen: PlanSeen): Figures {
  const sold = seen.goods.map(({ demands }, index) =>
    seen.scenarios.reduce(
      (sum, { chance }, at) => sum + chance * (demands[at]?.sold(seen.bring[index] ?? 0) ?? 0),
      0,
    ),
  );
  return outcomeOf(seen, sold);
}
