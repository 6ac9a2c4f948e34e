import type { BatchPoint } from './batchPoint';

/** Money this small is floating-point noise and no advantage. */
const NOISE = 1e-9;

/**
 * The batch from which another way of making the job costs less, at every later one of the points too.
 *
 * @param own and `other` in rising order; batches that only one of them has do not count
 * @returns pieces; null where it is not cheaper at the last of them
 */
export function betterFrom(own: readonly BatchPoint[], other: readonly BatchPoint[]): number | null {
  const costs = new Map(other.map(({ n, fullCost }) => [n, fullCost]));
  const compared = own.flatMap(({ n, fullCost }) => {
    const beside = costs.get(n);
    return beside === undefined ? [] : [{ n, isBetter: fullCost - beside > NOISE }];
  });
  const lastWorse = compared.findLastIndex(({ isBetter }) => !isBetter);
  return compared[lastWorse + 1]?.n ?? null;
}
