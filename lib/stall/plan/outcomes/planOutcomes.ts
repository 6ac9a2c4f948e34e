import { broughtFromHome } from '@/lib/stall/broughtFromHome';
import { lossUnsold } from '@/lib/stall/lossUnsold';
import type { DayCosts } from '@/lib/stall/plan/costs/dayCosts';
import type { BatchCosts } from '@/lib/stall/plan/costs/makingCosts';
import type { Scenario } from '@/lib/stall/plan/demand/scenarios';
import type { GoodsReckoned } from '@/lib/stall/plan/goodsReckoned';
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
      soldOf(seen, ({ demands }, brought) => demands[at]?.sold(brought) ?? 0),
    ),
  }));

const noDay: DayCosts = { sunk: 0, avoidable: 0, hours: 0, wage: 0, overheadPerHour: 0 };
const noBatch: BatchCosts = { once: 0, benchHours: 0, benchPay: 0, cash: 0 };

type Figures = Omit<StallOutcome, 'weather' | 'weatherIds' | 'chance' | 'factor'>;

/** Mean pieces sold of some goods. */
interface Sold {
  readonly all: number;
  /** Of those from home. */
  readonly fromHome: number;
}

/** @param of mean sold of so many brought; what is sold of the first few is what would be sold of these alone */
export const soldOf = (
  { goods, bring }: Pick<PlanSeen, 'goods' | 'bring'>,
  of: (each: GoodsReckoned, brought: number) => number,
): readonly Sold[] =>
  goods.map((each, at) => {
    const brought = bring[at] ?? 0;
    const home = broughtFromHome(brought, each.finishedBefore);
    return { all: of(each, brought), fromHome: home > 0 ? of(each, home) : 0 };
  });

/**
 * Pieces from home were written down when they came home: sold they cost their leftover value, and unsold they lose
 * nothing more. In every weather that leaves what they lost then more than pieces made for the day would.
 *
 * @param sold by the order of the goods
 */
export function outcomeOf(seen: PlanSeen, sold: readonly Sold[]): Figures {
  const { goods, bring, day, batch } = seen;
  const sum = (of: (each: GoodsReckoned, sold: number, left: number) => number) =>
    goods.reduce((running, each, at) => {
      const pieces = sold[at]?.all ?? 0;
      return running + of(each, pieces, (bring[at] ?? 0) - pieces);
    }, 0);
  const lostBefore = goods.map((each, at) => {
    const [home, homeSold] = [broughtFromHome(bring[at] ?? 0, each.finishedBefore), sold[at]?.fromHome ?? 0];
    return { sold: lossUnsold(each) * homeSold, left: lossUnsold(each) * (home - homeSold) };
  });
  const lostOf = (what: 'sold' | 'left') => lostBefore.reduce((running, one) => running + one[what], 0);
  const netRevenue = sum(({ netPrice }, pieces) => netPrice * pieces);
  const contribution = sum((each, pieces) => each.contribution * pieces) + lostOf('sold');
  const fixed = fixedOf(seen);
  const writtenDown = sum((each, _, left) => lossUnsold(each) * left) - lostOf('left');
  const profit = contribution - fixed - writtenDown;
  const hours = day.hours + batch.benchHours;
  return {
    sold: sum((_, pieces) => pieces),
    takings: netRevenue * seen.withTax,
    netRevenue,
    fees: sum(({ fees }, pieces) => fees * pieces),
    contribution,
    fixed,
    leftoverCost: sum(({ cost }, _, left) => cost * left) - lostOf('left'),
    leftovers: sum((_, __, left) => left),
    profit,
    payPerHour: hours > 0 ? (profit + day.hours * day.wage + batch.benchPay) / hours : null,
  };
}

/** @returns mean of what pieces leave over all weathers, before day and batch: currency units */
export function profitOfPieces(goods: readonly GoodsReckoned[], bring: readonly number[]): number {
  const pieces = { goods, bring, scenarios: [], day: noDay, batch: noBatch, withTax: 1 };
  return outcomeOf(
    pieces,
    soldOf(pieces, ({ demand }, brought) => demand.sold(brought)),
  ).profit;
}

/** The mean over all weathers; what a working hour pays is that of the mean profit. */
export const weightedOutcome = (seen: PlanSeen): Figures =>
  outcomeOf(
    seen,
    soldOf(seen, ({ demands }, brought) =>
      seen.scenarios.reduce((sum, { chance }, at) => sum + chance * (demands[at]?.sold(brought) ?? 0), 0),
    ),
  );
