import { enoughGood, type GoodOnes } from '@/lib/statistics/enoughGood';
import { coverSearch, type PriceGroup, type Spare } from './coverSearch';

/** A size of which every good piece is wanted. */
interface SizeToCover {
  /** Good pieces and the chance of a blank to end good; several where works that differ share the stack. */
  readonly wanted: readonly GoodOnes[];
  /** What a blank costs, 0 or more. */
  readonly price: number;
}

export interface Cover {
  /** By size, in the order given. */
  readonly blanks: readonly number[];
  /** How likely each size comes out whole, in the same order. */
  readonly chances: readonly number[];
  /** How likely it is that every size comes out whole; 0 where a blank hardly ever ends good. */
  readonly covered: number;
  /** How much more it may cost than the cheapest that covers as well; 0 where it is the cheapest. */
  readonly dearerAtMost: number;
}

/** Below this chance nobody asks for spares: the job itself is the trouble. */
const LEAST_CHANCE = 0.05;
/** Logarithms of chances that differ by less are one and the same. */
const SAME_LOG = 1e-12;

/**
 * The blanks that make every size whole with a wanted confidence: the cheapest that reach it, of those the fewest, of
 * those the ones that reach most. Sizes do not pool. The one way to it, whatever the confidence.
 *
 * No size may have fewer than cover it alone. From there on the chance of a size rises ever more slowly (its logarithm
 * is concave), so of sizes at one price the next spare goes where it helps most, and only prices are searched over.
 *
 * @param confidence above 0, below 1
 * @returns what is expected to be used where a size hardly ever ends good
 */
export function cheapestCover(sizes: readonly SizeToCover[], confidence: number): Cover {
  if (sizes.some(({ wanted }) => wanted.some(({ chance }) => chance < LEAST_CHANCE))) {
    return {
      blanks: sizes.map(({ wanted }) => Math.ceil(drawnFor(wanted) - 1e-9)),
      ...{ chances: sizes.map(() => 0), covered: 0, dearerAtMost: 0 },
    };
  }
  const reach = Math.log(confidence) - SAME_LOG;
  const alone = sizes.map(({ wanted }) => coverAlone(wanted, reach));
  const groups = [...new Set(sizes.map(({ price }) => price))]
    .sort((one, other) => other - one)
    .map((price): PriceGroup => {
      const members = sizes.flatMap((size, at) => (size.price === price ? [at] : []));
      return { price, spareAt: sparesOf(members, alone) };
    });
  const start = alone.reduce((sum, { logAt, least }) => sum + logAt(least), 0);
  const { spares, dearerAtMost } = coverSearch(groups, reach - start);
  const blanks = alone.map(({ least }) => least);
  for (const { size } of spares) blanks[size] = (blanks[size] ?? 0) + 1;
  const logs = alone.map(({ logAt }, at) => logAt(blanks[at] ?? 0));
  return {
    blanks,
    chances: logs.map(Math.exp),
    covered: Math.exp(logs.reduce((sum, log) => sum + log, 0)),
    dearerAtMost,
  };
}

/** @returns blanks expected to be drawn, unrounded. */
export const drawnFor = (wanted: readonly GoodOnes[]): number =>
  wanted.reduce((sum, { pieces, chance }) => sum + pieces / chance, 0);

// Helpers

interface Alone {
  readonly logAt: (blanks: number) => number;
  /** The fewest blanks that cover this size were it the only one. */
  readonly least: number;
}

function coverAlone(wanted: readonly GoodOnes[], reach: number): Alone {
  const logAt = enoughGood(wanted);
  let least = wanted.reduce((sum, { pieces }) => sum + pieces, 0);
  while (logAt(least) < reach) least += 1;
  return { logAt, least };
}

/** @returns the spares of sizes at one price, each where it helps most; worked out as far as they are asked for. */
function sparesOf(members: readonly number[], alone: readonly Alone[]): (place: number) => Spare {
  const spares: Spare[] = [];
  const next = members.flatMap((size) => {
    const found = alone[size];
    return found === undefined ? [] : [{ size, logAt: found.logAt, blanks: found.least }];
  });
  const gain = ({ logAt, blanks }: (typeof next)[number]) => logAt(blanks + 1) - logAt(blanks);
  return (place) => {
    while (spares.length <= place) {
      const best = next.reduce((most, one) => (gain(one) > gain(most) + SAME_LOG ? one : most));
      spares.push({ size: best.size, gain: gain(best) });
      best.blanks += 1;
    }
    return spares[place] ?? { size: 0, gain: 0 };
  };
}
