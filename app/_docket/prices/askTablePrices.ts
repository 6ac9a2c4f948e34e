import type { TablePrice } from '@/lib/price/priceTable';
import { askedLine, type SuggestedPrice } from '@/lib/price/suggestedPrice';
import type { MinorUnits } from '@/shared/money';
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
  return askPrice(
    job,
    {
      lineId: of.lineId,
      each: (first.price - first.upCharge) as MinorUnits,
      start: first.start,
      sizes: cells.map(({ size, upCharge }) => ({ size, more: upCharge })),
    },
    currency,
  );
}

/** @returns the job with a suggested price and its up-charges asked in its line. */
export const askPrice = (job: Job, price: SuggestedPrice, currency: string): Job => ({
  ...job,
  lines: job.lines.map((line) => (line.id === price.lineId ? askedLine(line, price, currency) : line)),
});
