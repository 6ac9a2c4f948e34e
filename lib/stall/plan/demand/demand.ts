import { poissonChances } from './poissonChances';

/** How many pieces of some goods are asked for. */
export interface Demand {
  /** Chance that no more than so many are; 0 below 0. */
  readonly chanceUpTo: (pieces: number) => number;
  /** Mean sold of so many brought: the mean of what is asked for, cut off at what there is. */
  readonly sold: (brought: number) => number;
  /** From here on nobody asks for more. */
  readonly most: number;
}

/** A Poisson count in each scenario, by its mean and chance. */
interface Part {
  readonly chance: number;
  readonly mean: number;
}

/**
 * A mixture of Poisson counts.
 *
 * @param parts their chances add to 1
 */
export function demandOf(parts: readonly Part[]): Demand {
  const each = parts.map(({ chance, mean }) => ({ chance, counts: poissonChances(mean) }));
  const most = Math.max(0, ...each.map(({ counts }) => counts.length - 1));
  const upTo: number[] = [];
  const sold: number[] = [0];
  let reached = 0;
  for (let pieces = 0; pieces <= most; pieces += 1) {
    reached += each.reduce((sum, { chance, counts }) => sum + chance * (counts[pieces] ?? 0), 0);
    upTo.push(Math.min(1, reached));
    sold.push((sold[pieces] ?? 0) + Math.max(0, 1 - reached));
  }
  return {
    most,
    chanceUpTo: (pieces) => (pieces < 0 ? 0 : (upTo[pieces] ?? 1)),
    sold: (brought) => sold[Math.min(brought, sold.length - 1)] ?? 0,
  };
}
