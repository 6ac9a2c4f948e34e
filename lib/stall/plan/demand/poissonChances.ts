/** Chances further out than this against the likeliest count are nothing beside the noise of a sum. */
const NEGLIGIBLE = 1e-19;

/** Chances of counts that lie side by side; all others are nothing. */
interface CountChances {
  /** The count that the first chance is of. */
  readonly first: number;
  readonly chances: readonly number[];
}

/**
 * Chances of a Poisson count, from its likeliest count outwards: no power, factorial or exponential that could leave the
 * range of a double, so it holds for a mean of millions as for one of a hundredth.
 *
 * @param mean 0 or more
 * @returns chances of as many counts as are not negligible; they add to 1
 */
export function poissonChances(mean: number): CountChances {
  if (!(mean > 0)) return { first: 0, chances: [1] };
  const likeliest = Math.floor(mean);
  const below: number[] = [];
  for (let count = likeliest, chance = 1; count > 0 && chance > NEGLIGIBLE; count -= 1) {
    chance *= count / mean;
    below.push(chance);
  }
  const above: number[] = [];
  for (let count = likeliest + 1, chance = 1; chance > NEGLIGIBLE; count += 1) {
    chance *= mean / count;
    above.push(chance);
  }
  // The small ones first, so that none is lost beside a large one.
  const added = (sum: number, chance: number) => sum + chance;
  const total = below.reduceRight(added, 0) + above.reduceRight(added, 0) + 1;
  const relative = [...below.reverse(), 1, ...above];
  return { first: likeliest - below.length, chances: relative.map((chance) => chance / total) };
}
