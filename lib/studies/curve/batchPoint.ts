import type { ColumnValues } from '@/lib/grid/evaluateGrid';
import { pricedRows } from '@/lib/price/pricedRows';

/** A whole job in a batch of n, currency units without tax, unrounded. */
export interface BatchPoint {
  /** Good pieces of the whole job. */
  readonly n: number;
  readonly fullCost: number;
  /** Price of the whole batch at the target margin. */
  readonly targetTotal: number;
  /** Price of the whole batch at the price asked for the point. */
  readonly price: number;
  readonly fees: number;
  readonly profit: number;
  /** Profit as a share of the price. */
  readonly margin: number;
  /** Profit and own pay over the paid hours, money an hour. */
  readonly payPerHour: number;
  /** Minutes paid for. */
  readonly paidMinutes: number;
}

/** What part of all pieces a column of the grid stands for. */
export interface Share {
  /** 0 to 1; the shares of a point add to 1. */
  readonly share: number;
}

/**
 * Adds columns of single pieces to a batch, as the whole-job column of the cost sheet does. Margin and pay an hour
 * are the columns' own, weighed by price and by paid time, which is their quotient for the whole.
 *
 * @returns null where a column lacks a value
 */
export function batchPoint(
  n: number,
  columns: readonly (Share & { readonly values: ColumnValues })[],
): BatchPoint | null {
  if (columns.some(({ values }) => pricedRows.some((id) => values[id] === undefined))) return null;
  const total = (of: (values: ColumnValues) => number) =>
    columns.reduce((sum, { share, values }) => sum + of(values) * share * n, 0);
  const row = (id: string) => total((values) => values[id] ?? 0);
  const weighed = (id: string, by: string) =>
    columns.length === 1
      ? (columns[0]?.values[id] ?? 0)
      : total((values) => (values[id] ?? 0) * (values[by] ?? 0)) / row(by);
  return {
    n,
    fullCost: row('fullCost'),
    targetTotal: row('target'),
    price: row('price'),
    fees: row('fees'),
    profit: row('profit'),
    margin: weighed('margin', 'price'),
    payPerHour: weighed('payPerHour', 'attended'),
    paidMinutes: row('attended'),
  };
}
