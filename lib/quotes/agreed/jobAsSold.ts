import type { Job } from '@/shared/schemas/job';
import type { QuoteAlternative } from '@/shared/schemas/paperParts';

type ChosenLine = Pick<QuoteAlternative['priced']['lines'][number], 'jobId' | 'lineId'> & {
  readonly sizes: readonly { readonly size: string; readonly quantity: number }[];
  readonly without: readonly string[];
};

/** @returns a job with the quantities and prints that are sold of it, as of an alternative that was accepted. */
export function jobAsSold(jobId: string, job: Job, sold: readonly ChosenLine[]): Job {
  const lines = job.lines.map((line) => {
    const found = sold.find((one) => one.jobId === jobId && one.lineId === line.id);
    if (found === undefined) return line;
    const sizes = [...new Set(found.sizes.map(({ size }) => size))];
    const quantities = sizes.map((size) => ({
      size,
      quantity: found.sizes.reduce((sum, one) => sum + (one.size === size ? one.quantity : 0), 0),
    }));
    const placements = line.placements.filter(({ id }) => !found.without.includes(id));
    const isAsMany = sumOf(quantities) === sumOf(line.quantities);
    // What the customer said in all, and names for single pieces, are of what was asked.
    const said = isAsMany ? {} : { orderedQuantity: null, nameList: '' };
    return { ...line, quantities, placements, ...said };
  });
  return { ...job, lines };
}

// Helpers

const sumOf = (all: readonly { readonly quantity: number }[]): number =>
  all.reduce((sum, { quantity }) => sum + quantity, 0);
