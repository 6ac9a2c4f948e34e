import type { ResolvedLine } from '@/lib/job/checkedJob';

import type { LineNeeds } from '@/lib/price/list/lineNeeds';

import { TARIFF_UP_TO } from '@/lib/studies/curve/batchTariffs';
import { fitTariff, type Tariff } from '@/lib/studies/curve/fitTariff';

export interface LineTariff extends Tariff {
  /** From so many pieces on the gap a piece is a tenth of the largest or less. */
  readonly smallFrom: number;
  /** The largest gap from there on, currency units a piece. */
  readonly smallError: number;
}

/**
 * “So much to start, so much a piece” for the pieces of one line in its mix of sizes, fitted to the target totals of
 * 1 to 100 pieces, of the orders that its list is judged by. Of a job of one line it is the tariff of the batch.
 *
 * @param needs what its list was made from
 * @returns null where totals are too few to fit
 */
export function lineTariff({ sizes }: ResolvedLine, needs: LineNeeds): LineTariff | null {
  const pieces = sizes.reduce((sum, { quantity }) => sum + quantity, 0);
  const totals = Array.from({ length: TARIFF_UP_TO }, (_, index) => {
    const n = index + 1;
    return {
      n,
      total: needs.sizes.reduce((sum, { size, target }) => sum + (n * size.quantity * target(n)) / pieces, 0),
    };
  });
  const tariff = fitTariff(totals);
  if (tariff === null) return null;
  const gaps = totals.map(({ n, total }) => Math.abs(total - tariff.start - tariff.each * n) / n);
  const lastLarge = gaps.findLastIndex((gap) => gap > tariff.largestError / 10);
  const smallFrom = Math.min(TARIFF_UP_TO, lastLarge + 2);
  return { ...tariff, smallFrom, smallError: Math.max(...gaps.slice(smallFrom - 1)) };
}
