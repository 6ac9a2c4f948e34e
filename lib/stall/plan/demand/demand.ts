import { poissonChances } from './poissonChances';

/** How many pieces of some goods are asked for. */
export interface Demand {
  /** Chance that no more than so many are; 0 below 0. */
  readonly chanceUpTo: (pieces: number) => number;
  /** Mean sold of so many brought: the mean of what is asked for, cut off at what there is. */
  readonly sold: (brought: number) => number;
  /** Fewer than this nobody ever asks for. */
  readonly least: number;
  /** From here on nobody asks for more. */
  readonly most: number;
}

/** A mixture of so many different counts is asked each of them. */
const MOST_TABLED = 4096;

/** A Poisson count of a mean, 0 or more. */
export function poissonDemand(mean: number): Demand {
  const { first, chances } = poissonChances(mean);
  const most = first + chances.length - 1;
  let reached = 0;
  const upTo = chances.map((chance) => {
    reached += chance;
    return Math.min(1, reached);
  });
  return tabled(first, most, (pieces) => upTo[pieces - first] ?? 1);
}

/**
 * A mixture of Poisson counts.
 *
 * @param parts each by its mean; their chances add to 1
 */
export const demandOf = (parts: readonly { readonly chance: number; readonly mean: number }[]): Demand =>
  mixedDemand(parts.map(({ chance, mean }) => ({ chance, demand: poissonDemand(mean) })));

/** @param parts their chances add to 1 */
export function mixedDemand(parts: readonly { readonly chance: number; readonly demand: Demand }[]): Demand {
  const least = Math.min(...parts.map(({ demand }) => demand.least));
  const most = Math.max(...parts.map(({ demand }) => demand.most));
  const mean = (of: (demand: Demand) => number) =>
    parts.reduce((sum, { chance, demand }) => sum + chance * of(demand), 0);
  const upTo = (pieces: number) =>
    Math.min(
      1,
      mean(({ chanceUpTo }) => chanceUpTo(pieces)),
    );
  if (most - least <= MOST_TABLED) return tabled(least, most, upTo);
  return {
    ...{ least, most },
    chanceUpTo: (pieces) => (pieces < least ? 0 : pieces > most ? 1 : upTo(pieces)),
    sold: (brought) => mean(({ sold }) => sold(brought)),
  };
}

// Helpers

function tabled(least: number, most: number, upTo: (pieces: number) => number): Demand {
  const chances = Float64Array.from({ length: most - least + 1 }, (_, at) => upTo(least + at));
  const sold = new Float64Array(most - least + 2);
  sold[0] = least;
  for (const [at, chance] of chances.entries()) sold[at + 1] = (sold[at] ?? 0) + Math.max(0, 1 - chance);
  return {
    ...{ least, most },
    chanceUpTo: (pieces) => (pieces < least ? 0 : (chances[pieces - least] ?? 1)),
    sold: (brought) =>
      brought <= least ? Math.max(0, brought) : (sold[Math.min(brought - least, sold.length - 1)] ?? 0),
  };
}
