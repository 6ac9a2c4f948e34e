import type { Grid } from '@/lib/grid/evaluateGrid';
import type { PricedJob } from '@/lib/quotes/pricedJob';
import type { AlternativeProblem } from '@/lib/quotes/quoteObstacle';
import { type SoldLine, soldSize } from '@/lib/quotes/soldLine';
import { placementCharge } from '@/lib/studies/charges/placementCharge';
import { type MinorUnits, toMinor } from '@/shared/money';
import { failed, ok, type Result } from '@/shared/result';

/**
 * A line without one of its prints: at the maker's own price of a piece, to which sizes add what they added, or at the
 * asked price less what the print adds to it.
 *
 * @param each as the way of selling writes it, currency units; null where it is worked out
 */
export function withOnePrintLess(
  asked: SoldLine,
  { placementId, each }: { readonly placementId: string; readonly each: number | null },
  { costed }: PricedJob,
  grid: Grid,
  written: (amount: MinorUnits) => MinorUnits,
): Result<SoldLine, AlternativeProblem> {
  const { job } = costed.laidOut;
  const line = job.lines.find((one) => one.line.id === asked.lineId);
  const hasIt = line?.placements.some(({ placement }) => placement.id === placementId) === true;
  if (line === undefined || !hasIt) return failed({ kind: 'gone' });
  if (line.placements.length < 2) return failed({ kind: 'onlyPrint' });
  const own = each === null ? null : written(toMinor(each, job.workshop.currency));
  const less = own === null ? worth(asked, placementId, { costed }, grid, written) : lessFor(asked, own);
  if (less === null) return failed({ kind: 'stopped', why: null });
  const sizes = asked.sizes.map((one) => soldSize(one.size, one.quantity, (one.each - less) as MinorUnits));
  if (sizes.some((one) => one.each <= 0)) return failed({ kind: 'noPrice' });
  return ok({ ...asked, sizes, without: [placementId] });
}

// Helpers

/** The size that adds least is the one that a price of a piece is told for. */
const lessFor = ({ sizes }: SoldLine, own: MinorUnits): number =>
  Math.min(...sizes.map(({ each }) => each)) - own;

function worth(
  { lineId }: SoldLine,
  placementId: string,
  { costed }: Pick<PricedJob, 'costed'>,
  grid: Grid,
  written: (amount: MinorUnits) => MinorUnits,
): number | null {
  const charge = placementCharge(costed, grid, lineId, placementId);
  return charge.ok ? written(charge.value.written) : null;
}
