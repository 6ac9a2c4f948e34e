import type { Job, Line } from '@/shared/schemas/job';
import { isListed } from './isListed';
import { jobAsSold } from './jobAsSold';
import { soldAt } from './soldAt';
import { soldIn } from './soldIn';
import { type OfAgreed, writingOf } from './writingOf';

/** What of a line is not as it was accepted. */
export interface AgreedChange {
  readonly lineId: string;
  readonly line: string;
  /** Null where as many are made as were accepted, size by size. */
  readonly pieces: { readonly before: number; readonly after: number } | null;
  /** Names of prints that were accepted to be left out. */
  readonly without: readonly string[];
  readonly isPriceOther: boolean;
}

/** A job that is not as it was accepted. */
export interface AgreedJob {
  readonly jobId: string;
  /** As it was accepted. */
  readonly job: Job;
  readonly changes: readonly AgreedChange[];
}

/**
 * Jobs brought to what was accepted: its quantities, without the prints that it goes without, at a price by which it
 * comes to the same sum again. Names of single pieces stay, for only the maker knows whose piece is gone.
 *
 * @returns those that differ from it
 */
export function jobsAsAgreed(of: OfAgreed): readonly AgreedJob[] {
  const sold = soldIn(of.quote, of.alternativeId);
  const writing = writingOf(of);
  return of.jobs.flatMap(({ jobId, job }) => {
    const changes: AgreedChange[] = [];
    const asSold = jobAsSold(jobId, job, sold);
    const lines = job.lines.map((before, index) => {
      const found = sold.find((one) => one.jobId === jobId && one.lineId === before.id);
      const as = asSold.lines[index];
      if (found === undefined || as === undefined) return before;
      const priced =
        writing === null || isListed(of.order, jobId, before.id) ? null : soldAt(before, found, writing);
      const change = changeOf(before, as, priced !== null);
      if (change === null) return before;
      changes.push(change);
      const count = piecesOf(as);
      const isAsMany = count === piecesOf(before);
      return {
        ...before,
        placements: as.placements,
        quantities: change.pieces === null ? before.quantities : as.quantities,
        orderedQuantity: before.orderedQuantity === null || isAsMany ? before.orderedQuantity : count,
        ...priced,
      };
    });
    return changes.length === 0 ? [] : [{ jobId, job: { ...job, lines }, changes }];
  });
}

// Helpers

function changeOf(before: Line, after: Line, isPriceOther: boolean): AgreedChange | null {
  const isAsMany = sameQuantities(before, after);
  const kept = new Set(after.placements.map(({ id }) => id));
  const without = before.placements.filter(({ id }) => !kept.has(id)).map(({ name }) => name);
  if (isAsMany && without.length === 0 && !isPriceOther) return null;
  return {
    ...{ lineId: before.id, line: before.name, without, isPriceOther },
    pieces: isAsMany ? null : { before: piecesOf(before), after: piecesOf(after) },
  };
}

function sameQuantities(one: Line, other: Line): boolean {
  const textOfAll = (line: Line) =>
    [...new Set(line.quantities.map(({ size }) => size))]
      .map((size) => [size, piecesOf(line, size)] as const)
      .filter(([, quantity]) => quantity > 0)
      .map((entry) => JSON.stringify(entry))
      .toSorted()
      .join();
  return textOfAll(one) === textOfAll(other);
}

const piecesOf = ({ quantities }: Pick<Line, 'quantities'>, size?: string): number =>
  quantities.reduce((sum, one) => sum + (size === undefined || one.size === size ? one.quantity : 0), 0);
