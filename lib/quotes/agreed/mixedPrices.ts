import { isListed } from './isListed';
import { soldAt } from './soldAt';
import { type SoldOfQuote, soldIn } from './soldIn';
import { type OfAgreed, writingOf } from './writingOf';

/** A line of a job. */
interface LineOfJob {
  readonly jobId: string;
  readonly lineId: string;
}

/**
 * Lines whose job asks a price that nobody was ever told: made of two by `soldAt`, or of what stood beside the pieces,
 * so that the job comes to what was accepted. Of the next order it says nothing.
 *
 * @returns nothing where the maker typed another price since, or none can be compared
 */
export function mixedPrices(of: OfAgreed): readonly LineOfJob[] {
  const sold = soldIn(of.quote, of.alternativeId);
  const writing = writingOf(of);
  if (writing === null) return [];
  return of.jobs.flatMap(({ jobId, job }) =>
    job.lines.flatMap((line) => {
      const found = sold.find((one) => one.jobId === jobId && one.lineId === line.id);
      if (found === undefined || isListed(of.order, jobId, line.id) || isOnePriceASize(found)) return [];
      return soldAt(line, found, writing) === null ? [{ jobId, lineId: line.id }] : [];
    }),
  );
}

// Helpers

const isOnePriceASize = ({ sizes, beside }: SoldOfQuote): boolean =>
  beside === 0 &&
  sizes.every(({ size, each }) => sizes.every((other) => other.size !== size || other.each === each));
