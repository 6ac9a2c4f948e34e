import { standardFor } from '@/lib/making/standard/standardFor';
import type { RunStandard, StandardWork } from '@/shared/schemas/making/runPapers';
import type { MadeSize } from './goodMade';

/** Good pieces beyond what orders asked for: they lie in stock, at what one more of each takes by the standard. */
export interface Spares {
  readonly pieces: number;
  /** Currency units, unrounded. */
  readonly cost: number;
}

/** What came beyond the orders of a run; pieces that nobody ordered, as for a stall day, are none of it. */
export function sparesOf(standard: RunStandard, made: readonly MadeSize[]): Spares {
  const works = standard.works.filter(({ orderId }) => orderId !== null);
  const jobs = new Set(works.map(({ jobId }) => jobId));
  const ordered = made.map((one) => ({ ...one, good: Math.min(one.good, one.wanted) }));
  const costOf = (output: readonly MadeSize[]) =>
    standardFor({ ...standard, works }, output).works.reduce((sum, { fullCost }) => sum + fullCost, 0);
  return {
    pieces: made.reduce(
      (sum, { jobId, good, wanted }) => sum + (jobs.has(jobId) ? Math.max(0, good - wanted) : 0),
      0,
    ),
    cost: costOf(made) - costOf(ordered),
  };
}

/**
 * @returns what one more of a size takes by the standard, currency units; what an order, a design and a heating-up take is
 * borne by the order. Null where the standard does not know the size.
 */
export function costOfOneMore(
  standard: RunStandard,
  work: StandardWork,
  lineId: string,
  size: string,
): number | null {
  const wanted = work.lines.flatMap((line) =>
    line.sizes.map((one) => ({ jobId: work.jobId, lineId: line.lineId, size: one.size, good: one.wanted })),
  );
  if (!wanted.some((one) => one.lineId === lineId && one.size === size)) return null;
  const more = wanted.map((one) =>
    one.lineId === lineId && one.size === size ? { ...one, good: one.good + 1 } : one,
  );
  const [grown] = standardFor({ ...standard, works: [work] }, more).works;
  return grown === undefined ? null : grown.fullCost - work.fullCost;
}
