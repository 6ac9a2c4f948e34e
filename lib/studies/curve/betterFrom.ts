import type { BatchPoint } from './batchPoint';

export interface BetterFrom {
  /** The first batch that costs less the other way. */
  readonly first: number;
  /** The batch from which every later one of the points costs less; null where that does not last. */
  readonly lasting: number | null;
}

/** Money this small is floating-point noise and no advantage. */
const NOISE = 1e-9;

/**
 * The batches at which another way of making the job costs less, and at the same price leaves more.
 *
 * @param own and `other` in rising order; batches that only one of them has do not count
 * @returns null where it never does
 */
export function betterFrom(own: readonly BatchPoint[], other: readonly BatchPoint[]): BetterFrom | null {
  const costs = new Map(other.map(({ n, fullCost }) => [n, fullCost]));
  const compared = own.flatMap(({ n, fullCost }) => {
    const beside = costs.get(n);
    return beside === undefined ? [] : [{ n, isBetter: fullCost - beside > NOISE }];
  });
  const first = compared.find(({ isBetter }) => isBetter);
  if (first === undefined) return null;
  const lastWorse = compared.findLastIndex(({ isBetter }) => !isBetter);
  return { first: first.n, lasting: compared[lastWorse + 1]?.n ?? null };
}
