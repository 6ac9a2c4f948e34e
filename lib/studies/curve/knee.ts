interface Earning {
  readonly n: number;
  /** Profit as a share of the price. */
  readonly margin: number;
}

/** Doubling a batch is worth the talk while it adds this much of the price. */
const KNEE_POINTS = 0.1;

export interface Knee {
  readonly n: number;
  /** What doubling adds there, as a share of the price. */
  readonly doublingAdds: number;
}

/**
 * The knee of a curve at a flat price: the first batch from which on doubling adds fewer than ten margin points.
 * Looked for among the batches whose double is a point too.
 *
 * @param points every batch of a range, in rising order
 * @returns null where doubling still adds as much at the last of them, or none has a double
 */
export function knee(points: readonly Earning[]): Knee | null {
  const margins = new Map(points.map(({ n, margin }) => [n, margin]));
  const gains = points.flatMap(({ n, margin }): readonly Knee[] => {
    const doubled = margins.get(2 * n);
    return doubled === undefined ? [] : [{ n, doublingAdds: doubled - margin }];
  });
  const lastWorth = gains.findLastIndex(({ doublingAdds }) => doublingAdds >= KNEE_POINTS);
  return gains[lastWorth + 1] ?? null;
}
