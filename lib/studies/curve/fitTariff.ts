/** “So much to start, so much a piece”: start + each × n, currency units, unrounded. */
export interface Tariff {
  readonly start: number;
  readonly each: number;
  /** Largest gap between the line and a total, over the pieces of that batch: money a piece. */
  readonly largestError: number;
  /** The batch with the largest gap. */
  readonly largestErrorAt: number;
}

interface BatchTotal {
  readonly n: number;
  readonly total: number;
}

/**
 * The straight line through totals with the least sum of squared gaps.
 *
 * @param totals at least two batches of different size
 * @returns null for fewer
 */
export function fitTariff(totals: readonly BatchTotal[]): Tariff | null {
  if (new Set(totals.map(({ n }) => n)).size < 2) return null;
  const mean = (of: (point: BatchTotal) => number) =>
    totals.reduce((sum, point) => sum + of(point), 0) / totals.length;
  const n = mean((point) => point.n);
  const total = mean((point) => point.total);
  const each = mean((point) => (point.n - n) * (point.total - total)) / mean((point) => (point.n - n) ** 2);
  const start = total - each * n;
  const errors = totals.map((point) => ({
    at: point.n,
    error: Math.abs(point.total - start - each * point.n) / point.n,
  }));
  const largest = errors.reduce((worst, next) => (next.error > worst.error ? next : worst));
  return { start, each, largestError: largest.error, largestErrorAt: largest.at };
}
