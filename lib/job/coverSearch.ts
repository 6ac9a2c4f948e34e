/** One blank more of a size. */
export interface Spare {
  /** Place of the size. */
  readonly size: number;
  /** What it adds to the logarithm of the chance that all is whole. */
  readonly gain: number;
}

/** Sizes at one price. */
export interface PriceGroup {
  readonly price: number;
  /** The spares in the order in which they are taken; each gains no more than the one before. */
  readonly spareAt: (place: number) => Spare;
}

interface Found {
  readonly spares: readonly Spare[];
  /** How much more it may cost than the cheapest, currency units. */
  readonly dearerAtMost: number;
}

/** Beside any price a piece weighs next to nothing, so that of sets at one cost the one of fewest pieces is taken. */
const PIECE_WEIGHT = 1e-9;
/** Weights that differ by less are one and the same. */
const SAME_WEIGHT = 1e-11;
/** A spare that gains less changes no chance that anybody could see. */
const LEAST_GAIN = 1e-15;
/** Ten times what eight sizes of 100,000 pieces at odd prices leave. */
const MOST_SETS = 20_000;

/**
 * Searches the cheapest spares that gain what is lacking. A set that costs no less than another and gains no more is
 * dropped, and so is one that costs too much even if all prices that are still to come could be bought in fractions.
 * What is left in the end is the cheapest; where too many sets are left on the way, the best of the quick ones is taken.
 *
 * @param lacking logarithm; 0 or less where nothing is
 * @param mostSets more sets side by side are not looked at: the gap they leave is told
 */
export function coverSearch(groups: readonly PriceGroup[], lacking: number, mostSets = MOST_SETS): Found {
  if (lacking <= 0 || groups.length === 0) return { spares: [], dearerAtMost: 0 };
  const largest = Math.max(...groups.map(({ price }) => price));
  const weights = groups.map(({ price }) => (largest === 0 ? 1 : price / largest + PIECE_WEIGHT));
  const quick = quickest(groups, weights, lacking);
  const lists = groups.map((group, at) => gainsOf(group, weights[at] ?? 1, quick.weight));
  const rests = groups.map((_, at) => restAfter(lists.slice(at + 1), weights.slice(at + 1)));
  const searched = searchSets({ lists, weights, rests, lacking, mostSets, most: quick.weight });
  const counts = searched ?? quick.counts;
  const spares = groups.flatMap(({ spareAt }, at) =>
    Array.from({ length: counts[at] ?? 0 }, (_, place) => spareAt(place)),
  );
  if (searched !== null) return { spares, dearerAtMost: 0 };
  const bound = restAfter(lists, weights)(lacking);
  return { spares, dearerAtMost: Math.max(0, quick.weight - bound) * largest };
}

// Helpers

interface Quick {
  readonly counts: readonly number[];
  readonly weight: number;
}

/** Takes what gains most for its price until nothing is lacking, then gives back what is not needed, dearest first. */
function quickest(groups: readonly PriceGroup[], weights: readonly number[], lacking: number): Quick {
  const counts = groups.map(() => 0);
  let left = lacking;
  const worth = (at: number) => (groups[at]?.spareAt(counts[at] ?? 0).gain ?? 0) / (weights[at] ?? 1);
  while (left > 0) {
    const best = groups.reduce((most, _, at) => (worth(at) > worth(most) ? at : most), 0);
    const gain = groups[best]?.spareAt(counts[best] ?? 0).gain ?? 0;
    // Nothing gains any more: the chance asked for is as near to 1 as numbers tell.
    if (gain <= 0) break;
    left -= gain;
    counts[best] = (counts[best] ?? 0) + 1;
  }
  for (const [at, { spareAt }] of groups.entries()) {
    for (let count = counts[at] ?? 0; count > 0; count -= 1) {
      const { gain } = spareAt(count - 1);
      if (left + gain > 0) break;
      left += gain;
      counts[at] = count - 1;
    }
  }
  return { counts, weight: counts.reduce((sum, count, at) => sum + count * (weights[at] ?? 1), 0) };
}

/** @returns gains of a price's spares, as many as could be paid and help at all. */
function gainsOf({ spareAt }: PriceGroup, weight: number, most: number): readonly number[] {
  const gains: number[] = [];
  while ((gains.length + 1) * weight <= most + SAME_WEIGHT) {
    const { gain } = spareAt(gains.length);
    if (gain < LEAST_GAIN) break;
    gains.push(gain);
  }
  return gains;
}

/** @returns what is paid at least for a gain by some prices, in fractions of spares; ∞ where they cannot. */
function restAfter(
  lists: readonly (readonly number[])[],
  weights: readonly number[],
): (gain: number) => number {
  const spares = lists
    .flatMap((gains, at) => gains.map((gain) => ({ gain, weight: weights[at] ?? 1 })))
    .sort((one, other) => other.gain / other.weight - one.gain / one.weight);
  const gained = [0];
  const paid = [0];
  for (const { gain, weight } of spares) {
    gained.push((gained.at(-1) ?? 0) + gain);
    paid.push((paid.at(-1) ?? 0) + weight);
  }
  return (gain) => {
    if (gain <= 0) return 0;
    const at = firstReaching(gained, gain);
    const spare = spares[at - 1];
    if (at === gained.length || spare === undefined) return Number.POSITIVE_INFINITY;
    return (paid[at - 1] ?? 0) + ((gain - (gained[at - 1] ?? 0)) / spare.gain) * spare.weight;
  };
}

/** What is searched, by price. */
interface Search {
  readonly lists: readonly (readonly number[])[];
  readonly weights: readonly number[];
  /** What is paid at least for what is still lacking once this price is chosen. */
  readonly rests: readonly ((gain: number) => number)[];
  readonly lacking: number;
  readonly mostSets: number;
  /** Weight of a set that is known. */
  readonly most: number;
}

/** A set of spares of the prices so far. */
interface SpareSet {
  readonly weight: number;
  readonly gained: number;
  readonly counts: readonly number[];
}

/** @returns how many of each price the cheapest has; null where there were too many sets to look at. */
function searchSets(search: Search): readonly number[] | null {
  let sets: readonly SpareSet[] = [{ weight: 0, gained: 0, counts: [] }];
  for (const price of search.lists.keys()) {
    sets = withoutWorse(sets.flatMap((set) => grown(set, price, search)));
    if (sets.length > search.mostSets) return null;
  }
  return best(sets)?.counts ?? null;
}

/** @returns a set with every number of spares of one price more that may still come to the cheapest. */
function grown(set: SpareSet, price: number, { lists, weights, rests, lacking, most }: Search): SpareSet[] {
  const gains = lists[price] ?? [];
  const sets: SpareSet[] = [];
  let { gained, weight } = set;
  for (let count = 0; count <= gains.length; count += 1) {
    if (count > 0) {
      gained += gains[count - 1] ?? 0;
      weight += weights[price] ?? 1;
    }
    if (weight > most + SAME_WEIGHT) break;
    const rest = rests[price]?.(lacking - gained) ?? 0;
    if (weight + rest <= most + SAME_WEIGHT) sets.push({ weight, gained, counts: [...set.counts, count] });
    if (gained >= lacking) break;
  }
  return sets;
}

/** @returns sets by weight, without those that another one matches at no more weight. */
function withoutWorse(sets: SpareSet[]): readonly SpareSet[] {
  sets.sort((one, other) => one.weight - other.weight || other.gained - one.gained);
  let gained = Number.NEGATIVE_INFINITY;
  return sets.filter((set) => {
    if (set.gained <= gained) return false;
    gained = set.gained;
    return true;
  });
}

const best = (sets: readonly SpareSet[]): SpareSet | undefined =>
  sets.reduce<SpareSet | undefined>((found, set) => {
    if (found === undefined || set.weight < found.weight - SAME_WEIGHT) return set;
    return set.weight <= found.weight + SAME_WEIGHT && set.gained > found.gained ? set : found;
  }, undefined);

/** @returns the first place at which a rising list reaches a value; its length where none does. */
function firstReaching(rising: readonly number[], value: number): number {
  let low = 0;
  let high = rising.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((rising[middle] ?? 0) >= value) high = middle;
    else low = middle + 1;
  }
  return low;
}
