import type { BatchPoint } from '@/lib/studies/curve/batchPoint';
import { fromMinor, LARGEST_AMOUNT, toMinor } from '@/shared/money';
import { textCell } from '@/shared/textCell';

/**
 * A curve as comma-separated values with a header row: money of the whole batch and a piece without tax, in the
 * currency's own digits; margins as shares of the price, pay as money an hour. Numbers have a point and no groups.
 *
 * @param name of the job, in every row, so that several curves can stand in one sheet
 * @param currency ISO 4217 code
 */
export function curveCsv(name: string, currency: string, points: readonly BatchPoint[]): string {
  const money = (amount: number) =>
    Math.abs(amount) <= LARGEST_AMOUNT ? fromMinor(toMinor(amount, currency), currency) : Math.round(amount);
  const header = [
    'job',
    'pieces',
    `full cost (${currency})`,
    `full cost a piece (${currency})`,
    `price (${currency})`,
    `price a piece (${currency})`,
    `profit (${currency})`,
    'margin (share)',
    `pay an hour (${currency})`,
  ];
  const rows = points.map(({ n, fullCost, price, profit, margin, payPerHour }) => [
    textCell(name),
    n,
    money(fullCost),
    money(fullCost / n),
    money(price),
    money(price / n),
    money(profit),
    Number(margin.toFixed(4)),
    money(payPerHour),
  ]);
  return [header, ...rows].map((cells) => `${cells.join(',')}\r\n`).join('');
}
