import { broughtFromHome } from '@/lib/stall/broughtFromHome';
import { lossUnsold } from '@/lib/stall/lossUnsold';
import { fromMinor, type MinorUnits } from '@/shared/money';
import type { PlannedGoods, StallPlan } from '@/shared/schemas/stallPapers';
import type { DayMoney } from './dayMoney';
import { type DayResult, fixedOf } from './dayResult';
import { plannedOutcome } from './plannedOutcome';
import { leftOfBrought, type StockRow } from './stockRows';

/** What may stand between the plan and the day. */
export type BridgeStep =
  | 'pieces'
  | 'sets'
  | 'prices'
  | 'fees'
  | 'given'
  | 'damaged'
  | 'missing'
  | 'hours'
  | 'spent'
  | 'tin'
  | 'cashRounding';

/** The way from the profit of the plan to that of the day, currency units; the steps add up to the difference. */
export interface Bridge {
  /** The weather of the plan it starts from; null where it starts from the mean of all. */
  readonly weather: string | null;
  readonly from: number;
  readonly steps: readonly { readonly what: BridgeStep; readonly by: number }[];
  readonly to: number;
}

/**
 * Each step is worked out for itself: pieces and their mix as the plan would have paid for them, then what came
 * otherwise than planned. What was given, spoiled or is missing stands at what it costs in the result.
 *
 * @param weatherIds the weather of each day; null where nobody said
 * @returns null where the plan has no sum to start from, or some cost is not known
 */
export function bridgeOf(
  plan: StallPlan,
  rows: readonly StockRow[],
  money: DayMoney,
  result: DayResult,
  weatherIds: readonly string[] | null,
): Bridge | null {
  const start = startOf(plan, weatherIds);
  const asPlanned = profitAsPlanned(plan, rows);
  const { gone, goneAs } = result;
  if (start === null || asPlanned === null || gone === null || goneAs === null || result.profit === null)
    return null;
  const units = (minor: number) => fromMinor(minor as MinorUnits, plan.currency);
  const without = withoutTax(plan);
  const list = units(rows.reduce((sum, { sold, goods }) => sum + sold * goods.price, 0)) * without;
  const reductions = units(money.reductions) * without;
  const feesPlanned = rows.reduce((sum, { sold, goods }) => sum + sold * plannedFee(plan, goods), 0);
  return {
    weather: start.weather,
    from: start.profit,
    steps: [
      { what: 'pieces', by: asPlanned + gone - start.profit },
      { what: 'sets', by: 0 - reductions },
      { what: 'prices', by: units(money.net) - list + reductions },
      { what: 'fees', by: feesPlanned - units(money.fees + money.commission) },
      { what: 'given', by: 0 - goneAs.given },
      { what: 'damaged', by: 0 - goneAs.damaged },
      { what: 'missing', by: 0 - goneAs.missing },
      { what: 'hours', by: fixedOf(plan, plan.costs.hours) - result.fixed },
      { what: 'spent', by: 0 - result.spent },
      { what: 'tin', by: units(money.difference ?? 0) },
      { what: 'cashRounding', by: units(money.cashRounding) },
    ],
    to: result.profit,
  };
}

// Helpers

function startOf(plan: StallPlan, weatherIds: readonly string[] | null) {
  const outcome = plannedOutcome(plan, weatherIds);
  if (outcome !== null) return { weather: outcome.weather, profit: outcome.profit };
  return plan.weightedProfit === null ? null : { weather: null, profit: plan.weightedProfit };
}

const withoutTax = ({ taxMode, tax }: StallPlan): number => (taxMode === 'inside' ? 1 / (1 + tax) : 1);

/** Card fees and commission of a piece, at the mean share of cards and pieces a ticket. */
function plannedFee(plan: StallPlan, { price }: PlannedGoods): number {
  const written = fromMinor(price as MinorUnits, plan.currency);
  const paid = plan.taxMode === 'added' ? written * (1 + plan.tax) : written;
  const base = plan.commissionBase === 'withTax' ? paid : written * withoutTax(plan);
  const card = plan.cardFee * paid + plan.cardFixedFee / plan.piecesPerTicket;
  return plan.cardShare * card + plan.commission * base;
}

/**
 * What the plan would have left of the pieces that were sold and of those that came home, all that are accounted for
 * having been made or written down before: of what was found only what is sold or gone.
 */
function profitAsPlanned(plan: StallPlan, rows: readonly StockRow[]): number | null {
  let sum = 0 - fixedOf(plan, plan.costs.hours);
  for (const row of rows) {
    const { goods, sold, keptSold, brought, seconds } = row;
    const left = leftOfBrought(row);
    if (goods.cost === null) {
      if (brought === 0 && sold === 0) continue;
      return null;
    }
    const net = fromMinor(goods.price as MinorUnits, plan.currency) * withoutTax(plan);
    sum += sold * (net - plannedFee(plan, goods) - goods.packaging);
    const { cost, leftoverShare } = goods;
    const made = sold - keptSold + row.given + row.damaged + left + row.missing;
    sum += (left + seconds - keptSold) * leftoverShare * cost - made * cost;
    // What these lost they lost before, whatever became of them.
    sum += broughtFromHome(brought, goods.fromHome) * lossUnsold({ cost, leftoverShare });
  }
  return sum;
}
