/** The part of a point that says whether a batch pays. */
interface Paying {
  readonly n: number;
  readonly profit: number;
}

export interface BreakEven {
  /** The first batch that leaves no loss. */
  readonly first: number;
  /** The batch from which no later one of the points makes a loss again; a step of sheets or sessions may. */
  readonly lasting: number | null;
}

/** Money this small is floating-point noise and no loss. */
const NOISE = 1e-9;

/**
 * Where a curve at a flat price stops losing money.
 *
 * @param points in rising order
 * @returns null where every batch of the points makes a loss
 */
export function breakEven(points: readonly Paying[]): BreakEven | null {
  const pays = ({ profit }: Paying) => profit >= -NOISE;
  const first = points.find(pays);
  if (first === undefined) return null;
  const lastLoss = points.findLastIndex((point) => !pays(point));
  return { first: first.n, lasting: points[lastLoss + 1]?.n ?? null };
}
