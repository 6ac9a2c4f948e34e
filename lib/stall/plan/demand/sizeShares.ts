import type { SizeMix } from '@/shared/schemas/sizeMix';
import { stallSizeCurves } from '@/shared/tables/sizeCurves';

/** How many pieces of its own sales a usual mix weighs as much as. Common practice. */
export const PRIOR_PIECES = 50;

/**
 * The mix of sizes that a crowd asks for: the usual one, and what was asked for before, by orders that the mix has and
 * at stalls, the usual one counted like 50 pieces (the mean of a Dirichlet distribution).
 *
 * @param wanted pieces asked for at stalls before, by size
 * @param sizes those the blank comes in; what others were asked for is set aside
 * @returns shares of the sizes, which add to 1; none where no size has any
 */
export function sizeShares(
  mix: SizeMix,
  wanted: ReadonlyMap<string, number>,
  sizes: readonly string[],
): ReadonlyMap<string, number> {
  const prior = priorOf(mix);
  const usual = sum(prior.values());
  const ordered = new Map((mix.ordered ?? []).map(({ size, pieces }) => [size, pieces]));
  const asked = sum(wanted.values()) + sum(ordered.values());
  const blended = sizes.map((size) => {
    const share = usual > 0 ? (prior.get(size) ?? 0) / usual : 0;
    const own = (wanted.get(size) ?? 0) + (ordered.get(size) ?? 0);
    return [size, (PRIOR_PIECES * share + own) / (PRIOR_PIECES + asked)] as const;
  });
  const made = sum(blended.map(([, share]) => share));
  return new Map(made > 0 ? blended.map(([size, share]) => [size, share / made]) : []);
}

// Helpers

const priorOf = (mix: SizeMix): ReadonlyMap<string, number> =>
  new Map(
    mix.from === 'audience'
      ? Object.entries(stallSizeCurves[mix.audience])
      : mix.shares.map(({ size, share }) => [size, share]),
  );

const sum = (values: Iterable<number>): number => [...values].reduce((running, value) => running + value, 0);
