import { piecesOf } from '@/lib/grid/fillLine';
import { sheetsOfBatch } from '@/lib/layout/batchSheets';
import type { LaidOutJob } from '@/lib/layout/layOutJob';

/** What is used up to the last place at a quantity. */
export type SpotReason =
  | { readonly kind: 'sheet'; readonly lineId: string; readonly placementId: string; readonly print: number }
  | { readonly kind: 'session' }
  | { readonly kind: 'pack'; readonly lineId: string; readonly size: string; readonly packSize: number };

/**
 * The quantities of a range at which sheets or a session are just used up, so that one piece more begins the next:
 * the steps of the curve. The mix is scaled in fractions.
 *
 * @param from first and last batch, pieces of the whole job
 * @returns reasons by quantity, rising; a sheet that holds one print only is no step
 */
export function usedUpAt(
  { job, prints }: LaidOutJob,
  from: number,
  to: number,
): ReadonlyMap<number, readonly SpotReason[]> {
  const asked = job.lines.reduce((sum, line) => sum + piecesOf(line), 0);
  const { piecesPerSession } = job.job;
  const found = new Map<number, readonly SpotReason[]>();
  for (let n = from; n <= to; n += 1) {
    const reasons: SpotReason[] = [];
    for (const { lineId, placementId, print, pieces, perSheet, ganged } of prints) {
      const group = ganged === undefined ? pieces : ganged.own + ganged.others;
      const sheetsAt = (quantity: number) => {
        const filled = (quantity * group) / asked / perSheet;
        return ganged === undefined ? Math.ceil(filled - 1e-9) : sheetsOfBatch(ganged, quantity, filled);
      };
      if (perSheet > 1 && sheetsAt(n + 1) > sheetsAt(n))
        reasons.push({ kind: 'sheet', lineId, placementId, print });
    }
    if (piecesPerSession !== null && n % piecesPerSession === 0) reasons.push({ kind: 'session' });
    if (reasons.length > 0) found.set(n, reasons);
  }
  return found;
}
