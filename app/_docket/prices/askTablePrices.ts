import type { TablePrice } from '@/lib/price/priceTable';
import { fromMinor, type MinorUnits } from '@/shared/money';
import type { Job } from '@/shared/schemas/job';

/**
 * Takes the prices of one break as the asked prices of its line: that of the base size for the piece, the others
 * as its up-charges, and what its orders pay once. Up-charges of sizes that the table does not price stay as they are.
 *
 * @param of a cell of the break
 */
export function askTablePrices(
  job: Job,
  table: readonly TablePrice[],
  of: Pick<TablePrice, 'lineId' | 'from'>,
  currency: string,
): Job {
  const cells = table.filter(({ lineId, from }) => lineId === of.lineId && from === of.from);
  const first = cells[0];
  if (first === undefined) return job;
  const priced = cells.map(({ size }) => size);
  const upCharges = cells
    .filter(({ upCharge }) => upCharge !== 0)
    .map(({ size, upCharge }) => ({ size, amount: fromMinor(upCharge, currency) }));
  return {
    ...job,
    lines: job.lines.map((line) =>
      line.id === of.lineId
        ? {
            ...line,
            askedPrice: fromMinor((first.price - first.upCharge) as MinorUnits, currency),
            askedStart: first.start > 0 ? fromMinor(first.start, currency) : null,
            upCharges: [...line.upCharges.filter(({ size }) => !priced.includes(size)), ...upCharges],
          }
        : line,
    ),
  };
}
