import type { CostedJob } from '@/lib/grid/costJob';
import type { Grid } from '@/lib/grid/evaluateGrid';
import { piecesOf } from '@/lib/grid/fillLine';
import type { LaidOutJob } from '@/lib/layout/layOutJob';
import { batchEvaluator } from './batchEvaluator';
import { type SpotReason, usedUpAt } from './usedUpAt';

export interface QuantitySpot {
  readonly n: number;
  readonly reasons: readonly SpotReason[];
  /** What the pieces beyond the asked ones add to the full cost of the whole job, unrounded. */
  readonly addedCost: number;
  readonly fullCostEach: number;
}

/** How far ahead spots are looked for: nobody doubles an order to fill a sheet. */
const AT_MOST_TIMES = 2;

/**
 * The next quantities above the asked one at which a sheet, a session or a pack of blanks is just used up: one piece
 * more begins the next. Sheets and sessions count the mix in fractions; a pack fills up with pieces of its own size.
 *
 * @param count how many spots
 * @returns rising; none where neither sheets, sessions nor packs hold more than one piece
 */
export function quantitySpots({ laidOut }: CostedJob, grid: Grid, count = 3): readonly QuantitySpot[] {
  const asked = laidOut.job.lines.reduce((sum, line) => sum + piecesOf(line), 0);
  const reasons = reasonsAhead(laidOut, asked);
  const next = [...reasons.keys()].sort((a, b) => a - b).slice(0, count);
  const [now, ...points] = batchEvaluator(
    laidOut,
    grid,
  )([asked, ...next].map((n) => ({ n, priceEach: null })));
  return next.flatMap((n, index): readonly QuantitySpot[] => {
    const point = points[index];
    if (now == null || point == null) return [];
    return [
      {
        n,
        reasons: reasons.get(n) ?? [],
        addedCost: point.fullCost - now.fullCost,
        fullCostEach: point.fullCost / n,
      },
    ];
  });
}

function reasonsAhead(laidOut: LaidOutJob, asked: number): ReadonlyMap<number, readonly SpotReason[]> {
  const found = new Map(usedUpAt(laidOut, Math.floor(asked) + 1, AT_MOST_TIMES * asked + 1));
  for (const line of laidOut.job.lines) {
    for (const { size, quantity } of line.sizes) {
      const packSize = line.blank.sizes.find(({ name }) => name === size)?.packSize ?? 1;
      const short = packSize * Math.ceil(quantity / packSize - 1e-9) - quantity;
      if (packSize > 1 && short > 0) {
        const n = asked + short;
        found.set(n, [...(found.get(n) ?? []), { kind: 'pack', lineId: line.line.id, size, packSize }]);
      }
    }
  }
  return found;
}
