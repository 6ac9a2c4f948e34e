import { compareText } from '@/shared/compareText';
import { grouped } from '@/shared/grouped';
import type { Expense } from '@/shared/schemas/orderEvents';
import { sumOfRows, type YearRow } from './yearRow';
import type { DaySpan, YearSpan } from './yearSpan';

/** Money of one month or of all twelve, whole minor units. */
export interface SpanMoney extends DaySpan {
  readonly takingsMinor: number;
  readonly expensesMinor: number;
}

/** @returns sums of rows that count, whole minor units */
export function moneyOf(rows: readonly YearRow[]) {
  const of = (flow: YearRow['flow']) => rows.filter((row) => row.flow === flow);
  const machines = of('expense').filter(({ kind }) => kind === 'machine');
  const others = of('expense').filter(({ kind }) => kind !== 'machine');
  const ways = new Map<string, number>();
  for (const row of rows) {
    if (row.flow === 'taking') ways.set(row.sellingWay, (ways.get(row.sellingWay) ?? 0) + row.amountMinor);
  }
  const kinds = new Map<Expense['kind'], number>();
  for (const row of rows) {
    if (row.flow === 'expense') kinds.set(row.kind, (kinds.get(row.kind) ?? 0) - row.amountMinor);
  }
  return {
    takingsMinor: sumOfRows(of('taking')),
    ways: [...ways]
      .map(([sellingWay, minor]) => ({ sellingWay, minor }))
      .toSorted((one, other) => other.minor - one.minor || compareText(one.sellingWay, other.sellingWay)),
    feesMinor: sumOfRows(of('fee')),
    tinMinor: sumOfRows(of('tin')),
    expensesMinor: 0 - sumOfRows(others),
    machinesMinor: 0 - sumOfRows(machines),
    expenses: [...kinds]
      .map(([kind, minor]) => ({ kind, minor }))
      .toSorted((one, other) => other.minor - one.minor || compareText(one.kind, other.kind)),
  };
}

/** @returns tax in what came, as papers say, and takings of which none says it */
export function taxOf(rows: readonly YearRow[]): { readonly minor: number; readonly untoldMinor: number } {
  let [minor, untoldMinor] = [0, 0];
  for (const row of rows) {
    if (row.flow !== 'taking') continue;
    if (row.taxMinor === null) untoldMinor += row.amountMinor;
    else minor += row.taxMinor;
  }
  return { minor, untoldMinor };
}

/** @returns what came and went in each month */
export function monthsOf({ months }: YearSpan, rows: readonly YearRow[]): readonly SpanMoney[] {
  const monthIn = (day: string) => day.slice(0, 'YYYY-MM'.length);
  const byMonth = grouped(rows, ({ day }) => monthIn(day));
  return months.map(({ from, to }) => {
    const own = byMonth.get(monthIn(from)) ?? [];
    const of = (flow: YearRow['flow']) => sumOfRows(own.filter((row) => row.flow === flow));
    return { from, to, takingsMinor: of('taking'), expensesMinor: 0 - of('expense') };
  });
}

/** @returns what came and went in other currencies, each apart */
export function othersOf(rows: readonly YearRow[]): readonly {
  readonly currency: string;
  readonly cameMinor: number;
  readonly wentMinor: number;
}[] {
  const sums = new Map<string, { cameMinor: number; wentMinor: number }>();
  for (const { currency, amountMinor, leftOut } of rows) {
    if (leftOut?.why !== 'otherCurrency') continue;
    const sum = sums.get(currency) ?? { cameMinor: 0, wentMinor: 0 };
    if (amountMinor >= 0) sum.cameMinor += amountMinor;
    else sum.wentMinor -= amountMinor;
    sums.set(currency, sum);
  }
  return [...sums]
    .map(([currency, sum]) => ({ currency, ...sum }))
    .toSorted((one, other) => compareText(one.currency, other.currency));
}
