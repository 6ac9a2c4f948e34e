import { type CostedJob, costJob } from '@/lib/grid/costJob';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { piecesOf } from '@/lib/grid/fillLine';
import { priceTable, type TablePrice } from '@/lib/price/priceTable';
import { suggestedPrice } from '@/lib/price/suggestedPrice';
import { fromMinor, type MinorUnits } from '@/shared/money';

/**
 * A job at the prices it would go out at: those that are asked, and where none is decided those of the list, on its
 * price ending. What a price pays and leaves is told of this job, so that no figure beside a price belongs to another.
 *
 * @param table the prices of the list, where they are made already
 * @returns the job itself where every price is decided, or where the sums at another price come out faulty
 */
export function offeredJob(
  costed: CostedJob,
  grid: Grid,
  table: () => readonly TablePrice[] = () => priceTable(costed, grid),
): CostedJob {
  const { laidOut, sheet } = costed;
  const { job } = laidOut;
  if (job.lines.every(({ line }) => line.askedPrice !== null)) return costed;
  const list = table();
  const lines = job.lines.map((line) => ({
    ...line,
    sizes: line.sizes.map((size) => {
      if (size.askedPrice !== null) return size;
      const price = suggestedPrice(list, { lineId: line.line.id, size: size.size, pieces: piecesOf(line) });
      if (price === null) return size;
      const start = list.find(({ lineId }) => lineId === line.line.id)?.start ?? 0;
      return {
        ...size,
        askedPrice: fromMinor(price, sheet.currency),
        // A typed start stands beside a price that nobody has decided yet.
        askedStart: size.askedStart ?? (start > 0 ? fromMinor(start as MinorUnits, sheet.currency) : null),
      };
    }),
  }));
  const again = costJob({ ...laidOut, job: { ...job, lines } }, grid);
  return again.kind === 'costed' ? again.job : costed;
}
