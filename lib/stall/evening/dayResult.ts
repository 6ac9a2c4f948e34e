import { lossUnsold } from '@/lib/stall/lossUnsold';
import { fromMinor, type MinorUnits } from '@/shared/money';
import type { StallPlan } from '@/shared/schemas/stallPapers';
import type { DayMoney } from './dayMoney';
import type { StockRow } from './stockRows';
import { type Became, whatBecame } from './whatBecame';

/** What a day leaves, currency units, unrounded. Null where the cost of some goods, or how many are left, is not known. */
export interface DayResult {
  /** Takings without tax, less fees, packaging and the cost of what was sold; from home it is the leftover value. */
  readonly contribution: number | null;
  /** Of the day as it was, and of the batch; own pay among it. */
  readonly fixed: number;
  /** What lies there still, at cost less what pieces from home were written down before; what was found and nobody knows where from is left out. */
  readonly leftoverCost: number | null;
  /** What that loses of its cost by lying there; pieces from home lose nothing more. */
  readonly writtenDown: number | null;
  /** Cost of what was given, spoiled or is missing, as of what was sold, together. */
  readonly gone: number | null;
  /** The same one by one. */
  readonly goneAs: GoneCosts | null;
  /** What the tin has more than it should, and what rounding coins brought. */
  readonly tin: number;
  /** From the tin, on what no plan knew of. */
  readonly spent: number;
  readonly profit: number | null;
  /** Of the day as it was. */
  readonly hours: number;
  /** For these and the hours at the bench. Null where it took no time. */
  readonly payPerHour: number | null;
}

/** Cost of pieces that brought nothing, currency units. */
interface GoneCosts {
  readonly given: number;
  /** Seconds keep what leftovers keep. */
  readonly damaged: number;
  readonly missing: number;
}

/** @param typedHours of the day as it was; null as planned */
export function dayResult(
  plan: StallPlan,
  rows: readonly StockRow[],
  money: DayMoney,
  typedHours: number | null,
): DayResult {
  const { costs } = plan;
  const units = (minor: number) => fromMinor(minor as MinorUnits, plan.currency);
  const hours = typedHours ?? costs.hours;
  const fixed = fixedOf(plan, hours);
  const tin = units((money.difference ?? 0) + money.cashRounding);
  const spent = units(money.spent);
  const [firsts, kept] = [costOf(rows, 'sold'), costOf(rows, 'keptSold')];
  const sold = firsts === null || kept === null ? null : firsts + kept;
  const packaging = rows.reduce((sum, row) => sum + row.sold * row.goods.packaging, 0);
  const leftoverCost = costOf(rows, 'left');
  const writtenDown = lossOf(rows, 'left');
  const goneAs = goneOf(rows);
  const gone = goneAs === null ? null : goneAs.given + goneAs.damaged + goneAs.missing;
  const isCounted = rows.every(({ left }) => left !== null);
  const contribution =
    sold === null || !isCounted ? null : units(money.net - money.fees - money.commission) - packaging - sold;
  const profit =
    contribution === null || writtenDown === null || gone === null
      ? null
      : contribution - fixed - spent - writtenDown - gone + tin;
  const allHours = hours + costs.benchHours;
  return {
    ...{ contribution, fixed, leftoverCost, writtenDown, gone, goneAs, tin, spent, profit, hours },
    payPerHour: profit === null || allHours === 0 ? null : (profit + allHours * costs.wage) / allHours,
  };
}

/** @returns what a day costs whatever is sold, own pay, overhead and the batch among it. */
export const fixedOf = ({ costs }: Pick<StallPlan, 'costs'>, dayHours: number): number =>
  costs.cash + dayHours * (costs.wage + costs.overheadPerHour) + costs.batch;

// Helpers

/** What pieces cost the day: those from home their leftover value, for the rest of their cost was lost before. */
const costOf = (rows: readonly StockRow[], became: Became): number | null =>
  sumOf(rows, became, ({ all, fromHome }, goods) => all * goods.cost - fromHome * lossUnsold(goods));

/** What pieces lose by not being sold; those from home nothing more. */
const lossOf = (rows: readonly StockRow[], became: Became): number | null =>
  sumOf(rows, became, ({ all, fromHome }, goods) => (all - fromHome) * lossUnsold(goods));

/** Goods of which there are none need no cost. */
const sumOf = (
  rows: readonly StockRow[],
  became: Became,
  of: (
    pieces: ReturnType<typeof whatBecame>[Became],
    goods: { readonly cost: number; readonly leftoverShare: number },
  ) => number,
): number | null =>
  rows.reduce<number | null>((sum, row) => {
    const pieces = whatBecame(row)[became];
    const { cost, leftoverShare } = row.goods;
    if (sum === null || pieces.all === 0) return sum;
    return cost === null ? null : sum + of(pieces, { cost, leftoverShare });
  }, 0);

function goneOf(rows: readonly StockRow[]): GoneCosts | null {
  const [given, missing] = [costOf(rows, 'given'), costOf(rows, 'missing')];
  const [spoiled, seconds] = [costOf(rows, 'damaged'), lossOf(rows, 'seconds')];
  return given === null || spoiled === null || seconds === null || missing === null
    ? null
    : { given, damaged: spoiled + seconds, missing };
}
