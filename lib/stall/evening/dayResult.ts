import { fromMinor, type MinorUnits } from '@/shared/money';
import type { StallPlan } from '@/shared/schemas/stallPapers';
import type { DayMoney } from './dayMoney';
import type { StockRow } from './stockRows';

/** What a day leaves, currency units, unrounded. Null where the cost of some goods, or how many are left, is not known. */
export interface DayResult {
  /** Takings without tax, less fees, packaging and the cost of what was sold. */
  readonly contribution: number | null;
  /** Of the day as it was, and of the batch; own pay among it. */
  readonly fixed: number;
  /** What lies there still, at cost. */
  readonly leftoverCost: number | null;
  /** What that loses of its cost by lying there. */
  readonly writtenDown: number | null;
  /** Cost of what was given, spoiled or is missing; seconds keep what leftovers keep. */
  readonly gone: number | null;
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
  const sold = sumOf(
    rows,
    (row) => row.sold,
    (goods) => goods.cost,
  );
  const packaging = rows.reduce((sum, row) => sum + row.sold * row.goods.packaging, 0);
  const leftoverCost = sumOf(
    rows,
    (row) => row.left ?? 0,
    (goods) => goods.cost,
  );
  const writtenDown = sumOf(rows, (row) => row.left ?? 0, lossOf);
  const gone = goneOf(rows);
  const isCounted = rows.every(({ left }) => left !== null);
  const contribution =
    sold === null || !isCounted ? null : units(money.net - money.fees - money.commission) - packaging - sold;
  const profit =
    contribution === null || writtenDown === null || gone === null
      ? null
      : contribution - fixed - spent - writtenDown - gone + tin;
  const allHours = hours + costs.benchHours;
  return {
    ...{ contribution, fixed, leftoverCost, writtenDown, gone, tin, spent, profit, hours },
    payPerHour: profit === null || allHours === 0 ? null : (profit + allHours * costs.wage) / allHours,
  };
}

/** @returns what a day costs whatever is sold, own pay, overhead and the batch among it. */
export const fixedOf = ({ costs }: Pick<StallPlan, 'costs'>, dayHours: number): number =>
  costs.cash + dayHours * (costs.wage + costs.overheadPerHour) + costs.batch;

// Helpers

type Goods = StockRow['goods'];

const lossOf = ({ cost, leftoverShare }: Goods): number | null =>
  cost === null ? null : cost * (1 - leftoverShare);

/** Goods of which there are none need no cost. */
function sumOf(
  rows: readonly StockRow[],
  pieces: (row: StockRow) => number,
  each: (goods: Goods) => number | null,
): number | null {
  return rows.reduce<number | null>((sum, row) => {
    const many = pieces(row);
    if (sum === null || many === 0) return sum;
    const one = each(row.goods);
    return one === null ? null : sum + many * one;
  }, 0);
}

function goneOf(rows: readonly StockRow[]): number | null {
  const whole = sumOf(
    rows,
    (row) => row.given + row.damaged - row.seconds + row.missing,
    ({ cost }) => cost,
  );
  const seconds = sumOf(rows, (row) => row.seconds, lossOf);
  return whole === null || seconds === null ? null : whole + seconds;
}
