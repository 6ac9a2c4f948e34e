import { fromMinor, type MinorUnits } from '@/shared/money';
import type { RunStandard } from '@/shared/schemas/making/runPapers';
import { boughtInCost } from './boughtInCost';
import type { MadeSize } from './goodMade';

/** What of a run stays in stock, at what of each was bought: good pieces beyond what orders asked for, and seconds. */
export interface Spares {
  /** Good ones. */
  readonly pieces: number;
  readonly seconds: number;
  /** Currency units: what the stock has both at. */
  readonly cost: number;
}

/** Good pieces that nobody ordered, as for a stall day, are none of it: they are for sale, and count at their price. */
export function sparesOf(standard: RunStandard, made: readonly MadeSize[]): Spares {
  const ordered = new Set(standard.works.flatMap(({ jobId, orderId }) => (orderId === null ? [] : [jobId])));
  let [pieces, seconds, minor] = [0, 0, 0];
  for (const one of made) {
    const more = ordered.has(one.jobId) ? Math.max(0, one.good - one.wanted) : 0;
    pieces += more;
    seconds += one.seconds;
    minor += (boughtInCost(standard, one) ?? 0) * (more + one.seconds);
  }
  return { pieces, seconds, cost: fromMinor(minor as MinorUnits, standard.currency) };
}
