/** Chances further out than this against the likeliest count are nothing beside the noise of a sum. */
const NEGLIGIBLE = 1e-19;

/**
 * Chances of a Poisson count, from its likeliest count outwards: no power, factorial or exponential that could leave the
 * range of a double, so it holds for a mean of thousands as for one of a hundredth.
 *
 * @param mean 0 or more
 * @returns chances of 0, 1, 2 … up to where they are negligible; they add to 1
 */
export function poissonChances(mean: number): readonly number[] {
  if (!(mean > 0)) return [1];
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
  const nothing = Array.from({ length: likeliest - below.length }, () => 0);
  const relative = [...nothing, ...below.reverse(), 1, ...above];
  // The small ones first, so that none is lost beside a large one.
  const total = Float64Array.from(relative)
    .sort()
    .reduce((sum, chance) => sum + chance, 0);
  return relative.map((chance) => chance / total);
}
